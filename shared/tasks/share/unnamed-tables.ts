import { headingRow } from '../../block/heading-row';
import { TITLES } from '../../block/own-words';
import type { TabContent, WireCell } from '../../contract';
import { PRIVATE_COLUMNS } from './private-columns';
import { withoutUnit } from './without-unit';

/**
 * Tabs that hold a table of this tool although none of its named ones stands there: one of an earlier season, or a
 * copied tab. Nothing in them is found or cleared.
 */
export function unnamedTables(tabs: readonly TabContent[], named: ReadonlySet<string>): readonly string[] {
  const known = PRIVATE_COLUMNS.map(({ headings }) =>
    headings.map((heading) => String(withoutUnit(heading))),
  );
  const isOurs = (values: readonly (readonly WireCell[])[]): boolean =>
    known.some((headings) => headingRow(values, headings) >= 0) ||
    values.flat().some((cell) => typeof cell === 'string' && cell.startsWith(TITLES.picture));
  return tabs
    .filter(({ name, values }) => !named.has(name) && isOurs(values.map((row) => row.map(withoutUnit))))
    .map(({ name }) => name);
}
