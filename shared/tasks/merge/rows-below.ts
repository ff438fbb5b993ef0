import { cellA1 } from '../../block/a1';
import type { Columns } from '../../block/align-columns';
import { BLANK, text } from '../../block/cells';
import { isRecordId, NAMING_CELLS } from '../../block/compose-block';
import type { BlockContent } from '../../block/read-block';
import type { BlockCell, BlockStyle } from '../../contract';
import { shiftFormula } from '../../table/shift-formula';
import { shownCell } from '../cell-value';
import { keptCell } from '../kept-cell';
import type { Slot } from './place-columns';
import type { StandingCell as Cell, Stay } from './standing-cell';
import * as words from './words';

type Grid = { cells: BlockCell[][]; styles: BlockStyle[][] };

/** Ids of the rows below the table; what stands in them is the grower's. */
export const KEPT_ID = '!';

interface Placing {
  readonly slots: readonly Slot[];
  /** Where each column that stands comes to stand; -1 for nowhere. */
  readonly places: readonly number[];
  readonly columns: Columns;
  /** Lines of records begin with the cells that say which it was. */
  readonly isRecord: boolean;
}

/** Adds rows below the block for what has no other place, each cell in its column; gives those that are new there. */
export function addBelow(
  old: BlockContent,
  left: readonly Cell[],
  { cells, styles }: Grid,
  ids: string[],
  { slots, places, columns, isRecord }: Placing,
): readonly Stay[] {
  const idOfRow = (row: number): string => old.memory?.rows[row]?.id ?? '';
  const all = left.filter(({ value }) => value !== words.KEPT_BELOW);
  const { overMemory = [] } = old;
  if (all.length + overMemory.length === 0) return [];
  const placeOf = ({ column }: Cell): number => (places[column]! < 0 ? column : places[column]!);
  const width = Math.max(slots.length, ...all.map((cell) => placeOf(cell) + 1));
  const add = (row: readonly BlockCell[], style: BlockStyle): void => {
    cells.push([...row]);
    styles.push(row.map(() => style));
    ids.push(`${KEPT_ID}${cells.length}`);
  };
  const added: Stay[] = [];
  add([BLANK], 'plain');
  add([text(words.KEPT_BELOW)], 'heading');
  for (const row of new Set(all.map((cell) => cell.row))) {
    const at = cells.length;
    const line = Array.from({ length: width }, (): BlockCell => BLANK);
    const naming = isRecord && isRecordId(idOfRow(row)) ? NAMING_CELLS : 0;
    for (let w = 0; w < naming; w++) {
      line[slots.findIndex((slot) => 'ours' in slot && slot.ours === w)] = keptCell(
        old.values[row]?.[columns.indexOf(w)] ?? '',
        '',
      );
    }
    for (const cell of all.filter((one) => one.row === row)) {
      const { column, value, formula } = cell;
      line[placeOf(cell)] = { ...keptCell(value, shiftFormula(formula, at - row)), from: [row, column] };
      if (!idOfRow(row).startsWith(KEPT_ID)) added.push([cell, at, placeOf(cell)]);
    }
    add(line, 'input');
  }
  for (const cell of overMemory) {
    added.push([{ ...cell, column: old.info.columns }, cells.length, 0]);
    add([keptCell(cell.value, shiftFormula(cell.formula, cells.length - cell.row))], 'input');
  }
  for (const [r, row] of cells.entries()) {
    while (row.length < width) row.push(BLANK);
    while (styles[r]!.length < width) styles[r]!.push('plain');
  }
  return added;
}

export function named({ info }: BlockContent, { row, column, value, formula }: Cell): string {
  return `${cellA1(info.row + row, info.column + column)} (${formula === '' ? shownCell(value) : formula})`;
}
