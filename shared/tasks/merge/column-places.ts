/** Where the columns of a block that stands come to be in the new one: each is known by its id, the heading above it. */
import { alignColumns, type Columns } from '../../block/align-columns';
import type { ComposedBlock } from '../../block/composed-block';
import { columnsWritten, isHeading, markWithRole } from '../../block/memory';
import type { BlockContent } from '../../block/read-block';
import { numberedId } from '../../block/row-ids';

export interface ColumnPlaces {
  /** Column of the new block that each standing column as a whole is, by the block's widest table. */
  readonly columns: Columns;
  /** Whether the old block never had that column of the new one. */
  readonly isNew: (column: number) => boolean;
  /** Column of the new block of a cell, by its row as it stands and the column that it was written in. */
  readonly placeOf: (row: number, written: number) => number | undefined;
}

/** `rows`: the row of the new block that each row that stands is. */
export function columnPlaces(
  old: BlockContent,
  { cells, styles }: ComposedBlock,
  rows: readonly (number | undefined)[],
): ColumnPlaces {
  const written = alignColumns(old);
  const width = cells[0]?.length ?? 0;
  if (!old.memory) {
    const columns = written.map((w) => (w! < width ? w : undefined));
    return { columns, isNew: () => false, placeOf: (_, w) => w };
  }
  const was = idsAbove(old.memory.rows.map((row) => row?.marks ?? []));
  const now = idsAbove(cells.map((row, r) => row.map((cell, c) => markWithRole(cell, styles[r]?.[c]))));
  const placeOf = (row: number, w: number): number | undefined =>
    placeNow(was[row] ?? [], now[rows[row] ?? -1] ?? [], w);
  const counts = was.map((ids, r) => (rows[r] === undefined ? 0 : ids.filter((id) => id !== '').length));
  const widest = counts.indexOf(Math.max(0, ...counts));
  const again = Array.from({ length: columnsWritten(old.memory) }, (_, w) => placeOf(widest, w));
  return {
    columns: written.map((w) => (w === undefined ? w : again[w])),
    isNew: (column) => !again.includes(column),
    placeOf,
  };
}

/** For each row the ids of the columns of its table: '' where there is no heading. */
function idsAbove(marks: readonly (readonly string[])[]): readonly (readonly string[])[] {
  let ids: readonly string[] = [];
  return marks.map((row) => {
    const counts = new Map<string, number>();
    const numbered = (mark: string): string => {
      const count = (counts.get(mark) ?? 0) + 1;
      counts.set(mark, count);
      return numberedId(mark, count);
    };
    if (row.some(isHeading)) ids = row.map((mark) => (isHeading(mark) ? numbered(mark) : ''));
    return ids;
  });
}

/** One without a heading stands beside the one left of it. Undefined where the new table has no such column. */
function placeNow(was: readonly string[], now: readonly string[], w: number): number | undefined {
  const id = was[w] ?? '';
  if (id === now[w]) return w;
  if (id === '') {
    const left = w === 0 ? -1 : placeNow(was, now, w - 1);
    return left === undefined ? undefined : left + 1;
  }
  const place = now.indexOf(id);
  if (place >= 0) return place;
  // Another heading in its place, unless that is one of another column: it was worded anew.
  const is = now[w] ?? '';
  return is !== '' && was.includes(is) ? undefined : w;
}
