import { formulaShape } from '../block/formula-shape';
import { isFilled } from '../block/is-filled';
import type { BlockContent } from '../block/read-block';
import { CALLS } from './cell-function-calls';
import { COLUMNS, type ColumnKey, columnOfHeading } from './columns';
import { keptAt } from './kept-at';
import { cellWords } from './kept-lines';
import { knownShapes } from './known-shapes';
import type { BlockColumn, ExtraColumn, OwnParts } from './model';

/** Ours by their headings, or by their places between ours; the others as extra columns; blank ones at the right end are none. */
export function standingColumns(block: BlockContent, headingRow: number, endRow: number) {
  const columns = new Map<ColumnKey, number>();
  const extras: { column: number; extra: ExtraColumn }[] = [];
  const order: BlockColumn[] = [];
  const rows = Array.from({ length: endRow }, (_, r) => r);
  const headings = block.values[headingRow] ?? [];
  const used = headings.map((_, c) => rows.some((r) => isFilled(block, r, c)));
  const standing = headings.slice(0, used.lastIndexOf(true) + 1);
  const keys = standing.map((heading, c) => {
    const key = typeof heading === 'string' ? columnOfHeading(heading) : undefined;
    return key && !standing.slice(0, c).some((one) => typeof one === 'string' && columnOfHeading(one) === key)
      ? key
      : undefined;
  });
  const renamed = renamedColumns(keys, (key, c) => mayBe(block, key, c, headingRow, endRow));
  for (const [c, heading] of standing.entries()) {
    const key = keys[c] ?? renamed.get(c);
    if (key) {
      columns.set(key, c);
      order.push({ key });
    } else {
      order.push({ extra: extras.length });
      extras.push({ column: c, extra: { heading: cellWords(heading) } });
    }
  }
  const ownHeadings: NonNullable<OwnParts['headings']> = new Map(
    [...renamed].map(([c, key]) => [key, keptAt(block, headingRow, c)]),
  );
  return { columns, extras, order, ownHeadings };
}

/**
 * Columns of ours under another heading, by their places: as many unknown headings stand between two of ours as are
 * missing there.
 */
function renamedColumns(
  keys: readonly (ColumnKey | undefined)[],
  mayBeColumn: (key: ColumnKey, column: number) => boolean,
): ReadonlyMap<number, ColumnKey> {
  const order: readonly ColumnKey[] = COLUMNS.map(({ key }) => key);
  const renamed = new Map<number, ColumnKey>();
  for (let c = 0; c < keys.length; c++) {
    if (keys[c] !== undefined) continue;
    const next = keys.findIndex((key, at) => at > c && key !== undefined);
    const end = next < 0 ? keys.length : next;
    const before = c === 0 ? -1 : order.indexOf(keys[c - 1]!);
    const after = next < 0 ? order.length : order.indexOf(keys[next]!);
    const missing = order.slice(before + 1, Math.max(before + 1, after));
    const isGap = missing.length === end - c && missing.every((key) => !keys.includes(key));
    if (isGap && missing.every((key, i) => mayBeColumn(key, c + i)))
      for (const [i, key] of missing.entries()) renamed.set(c + i, key);
    c = end;
  }
  return renamed;
}

/** Whether nothing in a column speaks against its being that column of ours. */
function mayBe(
  { formulas }: BlockContent,
  key: ColumnKey,
  column: number,
  headingRow: number,
  endRow: number,
) {
  const filled = formulas.slice(headingRow + 1, endRow).flatMap((row) => row[column] || []);
  const call = CALLS[key];
  if (call) return filled.some((formula) => call.test(formula));
  const known = knownShapes(key);
  return (
    known === undefined || filled.length === 0 || filled.some((formula) => known.has(formulaShape(formula)))
  );
}
