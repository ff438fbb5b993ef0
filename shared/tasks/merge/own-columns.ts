/** Columns of the grower's in a block of ours. */
import type { Columns } from '../../block/align-columns';
import { isRecordId } from '../../block/compose-block';
import type { ComposedBlock } from '../../block/composed-block';
import type { BlockContent } from '../../block/read-block';
import type { BlockCell } from '../../contract';
import { shiftFormula } from '../../table/shift-formula';
import { keptCell } from '../kept-cell';
import { CALL } from './answers-in';
import type { Slot } from './place-columns';
import type { StandingCell } from './standing-cell';

/** Columns that were put in: those with something of the grower's, and blank ones between others. */
export function ownColumns(
  { values }: BlockContent,
  want: ComposedBlock,
  columns: Columns,
  left: readonly StandingCell[],
): ReadonlySet<number> {
  const isBlank = (c: number): boolean => values.every((row) => (row[c] ?? '') === '');
  return new Set(
    columns.flatMap((written, c) => {
      if (written !== undefined) return [];
      const next = columns.find((one, at) => at > c && one !== undefined);
      const isOwn = left.some(({ column }) => column === c) || (next !== undefined && isBlank(c));
      return isOwn && !(next !== undefined && isAnsweredAcross(want, next)) ? [c] : [];
    }),
  );
}

/** Whether an answer spills into that column from the one left of it: nothing can stand between the two. */
function isAnsweredAcross({ cells }: ComposedBlock, column: number): boolean {
  const isRoom = (cell: BlockCell | undefined): boolean => cell?.k === 'blank' && cell.answer === true;
  const isCall = (cell: BlockCell | undefined): boolean => cell?.k === 'f' && CALL.test(cell.v);
  return cells.some((row, r) => {
    const above = cells[r - 1]?.[column];
    return isRoom(row[column]) && !isRoom(above) && !isCall(above);
  });
}

/** Fills the grower's columns. A record that is new takes over the column's formula, if most records have one. */
export function fillOwn(
  old: BlockContent,
  cells: BlockCell[][],
  slots: readonly Slot[],
  rows: readonly (number | undefined)[],
  ids: readonly string[],
  left: readonly StandingCell[],
): void {
  const isRecord = (at: number): boolean => isRecordId(ids[at]);
  for (const [place, slot] of slots.entries()) {
    if ('ours' in slot) continue;
    const { own } = slot;
    const formulaIn = (r: number): string => old.formulas[r]?.[own] ?? '';
    const put = (at: number, { row, value, formula }: StandingCell): void => {
      cells[at]![place] = { ...keptCell(value, shiftFormula(formula, at - row)), from: [row, own] };
    };
    for (const cell of left) if (cell.column === own) put(rows[cell.row]!, cell);
    const records = [...rows.entries()].flatMap(([r, at]) => (at !== undefined && isRecord(at) ? [r] : []));
    const models = records.filter((r) => formulaIn(r) !== '');
    const [model] = models;
    if (model === undefined || 2 * models.length <= records.length) continue;
    const known = new Set(rows);
    for (const at of ids.keys())
      if (isRecord(at) && !known.has(at))
        put(at, { row: model, column: own, value: '', formula: formulaIn(model) });
  }
}
