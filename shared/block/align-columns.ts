import { ANSWER_MARK, BLANK_MARK, bareMark, type Memory, markOfStanding } from './memory';
import type { BlockContent } from './read-block';

/** Column that each standing column was written as; undefined for one of the grower's. */
export type Columns = readonly (number | undefined)[];

/**
 * For each column that stands, the column it was written as; undefined for one that was put in. Columns are known
 * again by what stands in them as marked, wherever they stand now; one that holds too little to be known by stands
 * right of the one that it was written right of. Without a memory they are as they stand.
 */
export function alignColumns(block: BlockContent, wanted: number): Columns {
  const { values, memory } = block;
  const all = Array.from({ length: values[0]?.length ?? 0 }, (_, c) => c);
  if (!memory) return all.map((c) => (c < wanted ? c : undefined));
  const known = aligned.get(block) ?? alignedTo(block, memory);
  aligned.set(block, known);
  return known;
}

/** Blocks never change, and many ask. */
const aligned = new WeakMap<BlockContent, Columns>();

function alignedTo({ values, formulas }: BlockContent, memory: Memory): Columns {
  const standing = values[0]?.length ?? 0;
  const all = Array.from({ length: standing }, (_, c) => c);
  const written = Math.max(0, ...memory.rows.map((row) => row?.marks.length ?? 0));
  const marks = memory.rows.map((row) => row?.marks.map(says) ?? []);
  const stands = values.map((row, r) => row.map((value, c) => markOfStanding(value, formulas[r]?.[c] ?? '')));
  const alike = (c: number, w: number): number =>
    marks.filter((row, r) => row[w] !== undefined && row[w] === stands[r]?.[c]).length;
  const filled = Array.from(
    { length: written },
    (_, w) => marks.filter((row) => row[w] !== undefined).length,
  );
  const pairs = all.flatMap((c) => filled.map((_, w) => ({ c, w, count: alike(c, w) })));
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
}

/** A heading alone, which may have been typed over, is too little to know a column by. */
const MOST_UNKNOWN = 1;

function says(mark: string): string | undefined {
  const bare = bareMark(mark);
  return bare === BLANK_MARK || bare === ANSWER_MARK ? undefined : bare;
}
