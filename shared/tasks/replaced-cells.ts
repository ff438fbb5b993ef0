import { cellA1 } from '../block/a1';
import type { BlockContent } from '../block/read-block';
import type { BlockCell, WireCell } from '../contract';
import { shownCell, valueKey } from './cell-value';
import { rowsAgain } from './rows-again';

type Row = readonly BlockCell[];

/**
 * Values of a block in whose place the new one has another, each as `B7 (12)`: names, days and distances that come from
 * lists or choices. They cannot be told from typed ones, so the page names them once the new block is written.
 *
 * Left out: sentences that stand alone in their row, settings, which the page shows in its fields, and answers of
 * cell functions.
 */
export function replacedCells(old: BlockContent, next: readonly Row[]): readonly string[] {
  const again = rowsAgain(old, next);
  return old.values.flatMap((row, r) => {
    const at = again[r];
    const isGone = (value: WireCell, c: number): boolean =>
      at === undefined ? c === 0 && isName(old, r) : isReplaced(value, c, next[at] ?? []);
    return row.flatMap((value, c) =>
      value !== '' && (old.formulas[r]?.[c] ?? '') === '' && isGone(value, c)
        ? [`${cellA1(old.info.row + r, old.info.column + c)} (${shownCell(value)})`]
        : [],
    );
  });
}

/** Blank cells of the new block are filled by a cell function, formulas are refused where they were typed over. */
function isReplaced(value: WireCell, column: number, row: Row): boolean {
  const now = row[column];
  if (now === undefined || now.k === 'blank' || now.k === 'f') return false;
  const isSetting = column === 1 && now.k === 'n' && [row[2], row[3]].some((cell) => cell?.k === 't');
  return !isSetting && row.every((cell) => valueKey(cell) !== JSON.stringify(value));
}

/** A text with something beside it, unless it is an answer of a cell function above it. */
function isName({ values, formulas }: BlockContent, row: number): boolean {
  const [first = '', ...others] = values[row] ?? [];
  let above = row - 1;
  while (above >= 0 && values[above]?.[0] !== '' && !formulas[above]?.[0]) above--;
  const isAnswer = (formulas[above]?.[0] ?? '') !== '';
  return typeof first === 'string' && !isAnswer && others.some((cell) => cell !== '');
}
