import type { BlockInfo } from '../contract';
import type { FoundList } from './model';

/** The rectangle that a list takes: every heading near it down to its last row. */
export function listArea({ tab, kind, headingRow, lastRow, headings, columns }: FoundList): BlockInfo {
  const all = [...headings.map(({ column }) => column), ...Object.values(columns)];
  const column = Math.min(...all);
  return {
    name: kind,
    tab,
    row: headingRow,
    column,
    rows: lastRow - headingRow + 1,
    columns: Math.max(...all) - column + 1,
  };
}
