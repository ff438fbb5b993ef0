import type { BlockInfo } from '../contract';
import type { FoundList } from './model';

/** Further apart no two columns of one list stand. Judgement. */
export const COLUMNS_APART = 3;

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

/** The same without the headings that a gap parts from it: those of a list beside it. */
export function ownArea(list: FoundList): BlockInfo {
  const known = new Set(list.headings.map(({ column }) => column));
  const columns = Object.values(list.columns);
  let [first, last] = [Math.min(...columns), Math.max(...columns)];
  while (known.has(first - 1)) first -= 1;
  while (known.has(last + 1)) last += 1;
  return listArea({
    ...list,
    headings: list.headings.filter(({ column }) => column >= first && column <= last),
  });
}
