import type { WireCell } from '../contract';
import { BLANK_MARK, bareMark, isYours, markOfStanding, type RowMemory } from './memory';

type Rows = readonly (RowMemory | undefined)[];

/**
 * What is remembered of each row that stands. A sort that left the memory behind shows in the first cells: a row whose
 * first cell is that of another row is that row. A first cell that is new is a new row where the grower had typed
 * another one, else a label that was typed over or a free row that was filled. A row that stands twice is remembered
 * once.
 */
export function matchRows(
  values: readonly (readonly WireCell[])[],
  formulas: readonly (readonly string[])[],
  rows: Rows,
): Rows {
  const byId = new Map(rows.flatMap((row) => (row ? [[row.id, row] as const] : [])));
  const counts = new Map<string, number>();
  const taken = new Set<string>();
  const once = (row: RowMemory | undefined): RowMemory | undefined => {
    if (!row || taken.has(row.id)) return undefined;
    taken.add(row.id);
    return row;
  };
  return rows.map((row, r) => {
    const first = markOfStanding(values[r]?.[0] ?? '', formulas[r]?.[0] ?? '');
    const count = (counts.get(first) ?? 0) + 1;
    counts.set(first, count);
    const written = row?.marks[0] ?? BLANK_MARK;
    if (!row || bareMark(written) === first) return once(row);
    const same = first === BLANK_MARK ? undefined : byId.get(count === 1 ? first : `${first}.${count}`);
    const isOther = isYours(written) && bareMark(written) !== BLANK_MARK;
    return once(same ?? (isOther ? undefined : row));
  });
}
