import { fixedA1, quotedTab } from '../../block/a1';
import { headingRow } from '../../block/heading-row';
import type { BlockContent } from '../../block/read-block';
import { LOG_HEADINGS } from './log-headings';

/**
 * Formula for a group list: the day from which a group is ready, found by its name, which stands in `nameCell`. A link
 * to a cell of the log would mean another group once the log was sorted. Undefined where the log lacks a heading.
 */
export function readyLookup({ info, values }: BlockContent, nameCell: string): string | undefined {
  const at = headingRow(values, LOG_HEADINGS);
  const head = values[at];
  if (!head) return undefined;
  const range = (heading: (typeof LOG_HEADINGS)[number]): string => {
    const column = info.column + head.indexOf(heading);
    const last = info.row + info.rows - 1;
    return `${quotedTab(info.tab)}!${fixedA1(info.row + at, column)}:${fixedA1(last, column)}`;
  };
  return `=INDEX(${range('Group ready from')};MATCH(${nameCell};${range('Group')};0))`;
}
