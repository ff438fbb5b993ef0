import { cellA1 } from '../block/a1';
import { formulaShape } from '../block/formula-shape';
import type { BlockContent } from '../block/read-block';
import type { BlockCell, WireCell } from '../contract';
import { isRefusalSentence } from '../refusals';
import { shownCell, valueKey } from './cell-value';
import { rowsAgain } from './rows-again';

type Cells = readonly (readonly BlockCell[])[];

/**
 * Cells of a block that somebody typed and that would be gone after a rebuild: each as `A7 ("ring Bea")`.
 *
 * A refusal that a cell function shows was not typed. A typed text, date or tick counts as kept if the new block holds
 * it as often. A typed number too, but a number where the new block has a number beside the same label (second to
 * fourth column) is a setting or a size, which the sidebar has read and may have changed on purpose. A formula is the
 * grower's if its column has none of its shape in the new block or in `variants`, blocks that the same builder makes
 * by other settings.
 */
export function lostCells(
  old: BlockContent,
  next: Cells,
  variants: readonly Cells[] = [],
): readonly string[] {
  const left = countedValues(next);
  const shapes = shapesByColumn([next, ...variants]);
  const again = rowsAgain(old, next);
  return old.values.flatMap((row, r) =>
    row.flatMap((value, c) => {
      const formula = old.formulas[r]?.[c] ?? '';
      const nextRow = next[again[r] ?? -1];
      const now = nextRow?.[c];
      const where = `${cellA1(old.info.row + r, old.info.column + c)} (${formula === '' ? shownCell(value) : formula})`;
      if (formula !== '') return isOursOrKept(formula, c, now, value, shapes) ? [] : [where];
      if (value === '' || isRefusalSentence(value)) return [];
      const isSetting = typeof value === 'number' && isSettingAt(c, nextRow);
      const count = left.get(JSON.stringify(value)) ?? 0;
      left.set(JSON.stringify(value), count - 1);
      return count > 0 || isSetting ? [] : [where];
    }),
  );
}

/** A number in the second to fourth column; the second may be a setting that was left blank, with words beside it. */
function isSettingAt(column: number, row: Cells[number] = []): boolean {
  const now = row[column];
  const isLeftBlank = column === 1 && now?.k === 'blank' && (row[2]?.k === 't' || row[3]?.k === 't');
  return (now?.k === 'n' && column >= 1 && column <= 3) || isLeftBlank;
}

function countedValues(next: Cells): Map<string, number> {
  const left = new Map<string, number>();
  for (const cell of next.flat()) {
    const key = valueKey(cell);
    if (key === undefined) continue;
    left.set(key, (left.get(key) ?? 0) + 1);
  }
  return left;
}

function shapesByColumn(blocks: readonly Cells[]): ReadonlySet<string> {
  const shapes = new Set<string>();
  for (const row of blocks.flat()) {
    for (const [c, cell] of row.entries()) if (cell.k === 'f') shapes.add(`${c} ${formulaShape(cell.v)}`);
  }
  return shapes;
}

/** A formula in a setting cell whose number the sidebar has changed has done its work. */
function isOursOrKept(
  formula: string,
  column: number,
  now: BlockCell | undefined,
  value: WireCell,
  shapes: ReadonlySet<string>,
): boolean {
  const isChangedSetting = now?.k === 'n' && now.v !== value;
  return isChangedSetting || shapes.has(`${column} ${formulaShape(formula)}`);
}
