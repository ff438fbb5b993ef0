import { isFilled } from '../block/is-filled';
import type { BlockContent } from '../block/read-block';
import { type ColumnKey, columnOfHeading } from './columns';
import { cellWords } from './kept-lines';
import type { BlockColumn, ExtraColumn } from './model';

/** Ours by their headings, the others as extra columns; blank ones at the right end are none. */
export function standingColumns(block: BlockContent, headingRow: number, endRow: number) {
  const columns = new Map<ColumnKey, number>();
  const extras: { column: number; extra: ExtraColumn }[] = [];
  const order: BlockColumn[] = [];
  const rows = Array.from({ length: endRow }, (_, r) => r);
  const headings = block.values[headingRow]!;
  const used = headings.map((_, c) => rows.some((r) => isFilled(block, r, c)));
  for (const [c, heading] of headings.slice(0, used.lastIndexOf(true) + 1).entries()) {
    const key = typeof heading === 'string' ? columnOfHeading(heading) : undefined;
    if (key && !columns.has(key)) {
      columns.set(key, c);
      order.push({ key });
    } else {
      order.push({ extra: extras.length });
      extras.push({ column: c, extra: { heading: cellWords(heading) } });
    }
  }
  return { columns, extras, order };
}
