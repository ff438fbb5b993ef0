import type { WireCell } from '../contract';
import { BLANK_MARK, bareMark, isYours, type Memory, markOfStanding, type RowMemory } from './memory';

/**
 * What is remembered of each row that stands. A sort that left the memory behind shows in the first cells: a row whose
 * first cell is that of another row is that row. A first cell that is new is another name of the row where the grower
 * types the first cell, else a label that was typed over. A row that stands twice is remembered once. Rows with another stamp are
 * left as they are: a write that was cut short has left them.
 */
export function matchRows(
  values: readonly (readonly WireCell[])[],
  formulas: readonly (readonly string[])[],
  { rows, stamp }: Memory,
): Memory['rows'] {
  const isLeft = (row: RowMemory): boolean => stamp !== '' && row.stamp !== stamp;
  const byId = new Map(rows.flatMap((row) => (row && !isLeft(row) ? [[row.id, row] as const] : [])));
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
    if (row && isLeft(row)) return row;
    const written = row?.marks[0] ?? BLANK_MARK;
    if (!row || bareMark(written) === first) return once(row);
    const same = first === BLANK_MARK ? undefined : byId.get(idOf(first, count));
    if (same) return once(same);
    // A free row that was filled in, or a name that was changed: the row is the same, under another id.
    const id = first === BLANK_MARK || !isYours(written) ? row.id : idOf(first, count);
    return once({ ...row, id });
  });
}

/** As rowIds() gives it. */
function idOf(first: string, count: number): string {
  return count === 1 ? first : `${first}.${count}`;
}
