import { marksStanding } from './marks-standing';
import { ANSWER_MARK, BLANK_MARK, bareMark, columnsWritten, isHeading, markIn } from './memory';
import { oncePer } from './once-per';
import type { BlockContent } from './read-block';

/** Column that each standing column was written as; undefined for one of the grower's. */
export type Columns = readonly (number | undefined)[];

/**
 * For each column that stands, the column it was written as; undefined for one that was put in. Columns are known
 * again by their headings, which are their ids, and by what stands in them as marked, wherever they stand now; one
 * that holds too little to be known by stands right of the one that it was written right of. Without a memory they are
 * as they stand.
 */
export const alignColumns = /* @__PURE__ */ oncePer((block: BlockContent): Columns => {
  const { values, memory } = block;
  const standing = values[0]?.length ?? 0;
  const all = Array.from({ length: standing }, (_, c) => c);
  if (!memory) return all;
  const { rows } = memory;
  const written = columnsWritten(memory);
  const headed = (w: number): boolean =>
    rows.some((row, r) => isHeading(row?.marks[w] ?? '') && bareMark(row!.marks[w]!) === markIn(block, r, w));
  if (standing === written && all.every(headed)) return all;
  const marks = marksStanding(block);
  const counts = all.map(() => new Array<number>(written).fill(0));
  const filled = new Array<number>(written).fill(0);
  for (const [r, row] of rows.entries()) {
    const columns = columnsByMark(row?.marks ?? []);
    for (const w of [...columns.values()].flat()) filled[w]! += 1;
    for (const c of all)
      for (const w of columns.get(marks[r]?.[c] ?? BLANK_MARK) ?? [])
        counts[c]![w]! += isHeading(row!.marks[w]!) ? rows.length : 1;
  }
  const pairs = counts.flatMap((row, c) => row.map((count, w) => ({ c, w, count })));
  const own = all.map((c) => pairs[c * written + c]?.count ?? 0);
  const isAsWritten =
    standing === written && pairs.every(({ c, w, count }) => count <= Math.max(own[c]!, own[w]!));
  if (isAsWritten) return all;
  const found: (number | undefined)[] = all.map(() => undefined);
  const taken = new Set<number>();
  const pair = (c: number, w: number): void => {
    found[c] = w;
    taken.add(w);
  };
  const alikeFirst = pairs
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.count - a.count || Math.abs(a.c - a.w) - Math.abs(b.c - b.w));
  for (const { c, w } of alikeFirst) if (found[c] === undefined && !taken.has(w)) pair(c, w);
  for (const w of filled.keys()) {
    const c = w === 0 ? 0 : found.indexOf(w - 1) + 1;
    const hasLittle = filled[w]! <= MOST_UNKNOWN && !taken.has(w);
    if (hasLittle && (w === 0 || c > 0) && c < standing && found[c] === undefined) pair(c, w);
  }
  return found;
});

/** A heading alone, which may have been typed over, is too little to know a column by. */
const MOST_UNKNOWN = 1;

/** The columns of a row that were filled, by what was written there. */
function columnsByMark(marks: readonly string[]): ReadonlyMap<string, readonly number[]> {
  const columns = new Map<string, number[]>();
  for (const [w, mark] of marks.entries()) {
    const bare = bareMark(mark);
    if (bare === BLANK_MARK || bare === ANSWER_MARK) continue;
    columns.set(bare, [...(columns.get(bare) ?? []), w]);
  }
  return columns;
}

/** What is remembered of a cell, by row and column as it stands; undefined where nothing was written. */
export function markAt(block: BlockContent, row: number, column: number): string | undefined {
  return block.memory?.rows[row]?.marks[alignColumns(block)[column] ?? -1];
}
