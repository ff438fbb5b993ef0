import { COLUMNS } from './columns';
import type { BlockColumn } from './model';

/** Columns of ours that a table does not have. */
export function missingColumns(standing: readonly BlockColumn[]): readonly (typeof COLUMNS)[number][] {
  const there = new Set(standing.flatMap((column) => ('key' in column ? [column.key] : [])));
  return COLUMNS.filter(({ key }) => !there.has(key));
}
