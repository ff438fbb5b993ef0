/** Which rows of a rotation block are what: by their ids, wherever they stand. */

import { alignColumns } from '../block/align-columns';
import { idOf, RECORD_ID } from '../block/compose-block';
import { hashText } from '../block/hash-text';
import { ANSWER_MARK, bareMark, markOfStanding } from '../block/memory';
import type { BlockContent } from '../block/read-block';
import { type Day, isoFromDay } from '../core/calendar/day';
import { nameKey } from '../lists/read-list-cell';
import { COLUMNS, type ColumnKey, headingOf } from './columns';
import { SETTINGS_TITLE } from './settings-rows';

/** Names of single rows. */
export const HEADINGS = 'headings of the moves';
export const ANCHOR = 'row under the headings';
export const SPACE = 'row below the moves';

/** The columns in the order in which they were written, by the ids that their headings are. */
export function keysOf(block: BlockContent): readonly (ColumnKey | undefined)[] {
  const ids = block.memory?.rows[rowNamed(block, HEADINGS)]?.marks;
  return ids?.map((id) => KEY_OF.get(bareMark(id))) ?? COLUMNS.map(({ key }) => key);
}

const KEY_OF: ReadonlyMap<string, ColumnKey> = /* @__PURE__ */ new Map(
  COLUMNS.flatMap((column) =>
    (['US', 'metric'] as const).map(
      (system) => [markOfStanding(headingOf(column, system), ''), column.key] as const,
    ),
  ),
);

/** Column of each of ours, from 0 as it stands. */
export function columnsOf(block: BlockContent): ReadonlyMap<ColumnKey, number> {
  const keys = keysOf(block);
  return new Map(
    alignColumns(block).flatMap((w, c) => {
      const key = keys[w ?? -1];
      return key ? [[key, c] as const] : [];
    }),
  );
}

/** Row of that name, from 0 within the block; -1 for none. */
export function rowNamed({ memory }: BlockContent, name: string): number {
  return memory?.rows.findIndex((row) => row?.id === idOf(name)) ?? -1;
}

/** Rows under the headings, those of the moves and others, down to the settings. */
export function rowsOfMoves(block: BlockContent): readonly number[] {
  const first = Math.max(rowNamed(block, HEADINGS), rowNamed(block, ANCHOR));
  const end = rowNamed(block, SETTINGS_TITLE);
  return block.values.flatMap((_, r) => (r > first && (end < 0 || r < end) ? [r] : []));
}

/** A new id for a move, unlike those that are taken. */
export function moveId(
  { group, paddock, inDay }: { readonly group: string; readonly paddock: string; readonly inDay: Day },
  taken: Set<string>,
): string {
  const key = JSON.stringify([nameKey(group), nameKey(paddock), isoFromDay(inDay)]);
  const base = RECORD_ID + hashText(key).toString(36);
  let id = base;
  for (let count = 2; taken.has(id); count++) id = `${base}.${count}`;
  taken.add(id);
  return id;
}

/** Whether something stands in a cell that was not written there. */
export function isTypedAt(
  block: BlockContent,
  row: number,
  column: number,
  mark: string | undefined,
): boolean {
  const [value, formula] = [block.values[row]?.[column] ?? '', block.formulas[row]?.[column] ?? ''];
  if ((value === '' && formula === '') || mark === ANSWER_MARK) return false;
  return mark === undefined || bareMark(mark) !== markOfStanding(value, formula);
}
