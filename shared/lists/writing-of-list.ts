import type { TabContent } from '../contract';
import { OPEN_DAYS } from '../plan/open-days';
import type { GrowerList } from './model';
import type { RowReader } from './read-list-cell';
import { orderGivenAway } from './text-day';

const DATES: readonly string[] = [...OPEN_DAYS, 'lastUsed', 'weighedOn', 'from', 'until', 'since'];
/** "0,25" or "28,5 kg": a comma before one or two digits is a decimal sign. */
const DECIMAL_COMMA = /^\D*\d+,\d{1,2}(?!\d)/;

/**
 * How numbers and dates are written in a list: as in the spreadsheet's locale, unless what stands there contradicts it.
 * Then commas are decimal signs, and dates that may be two days are asked.
 */
export function writingOfList(
  tab: TabContent,
  list: GrowerList,
  { comma, dates }: Pick<RowReader, 'comma' | 'dates'>,
): Pick<RowReader, 'comma' | 'dates'> {
  const columns = Object.entries(list.columns);
  const rows = tab.values.slice(list.firstRow - 1, list.lastRow);
  const texts = (isWanted: (field: string) => boolean): string[] =>
    columns
      .filter(([field]) => isWanted(field))
      .flatMap(([, column]) => rows.map((row) => row[column - 1]))
      .filter((cell) => typeof cell === 'string');
  const given = new Set(
    texts((field) => DATES.includes(field)).flatMap((text) => orderGivenAway(text) ?? []),
  );
  const [own] = given;
  const isOne = given.size === 1 && (dates.order === undefined || dates.order === own);
  const order = given.size === 0 ? dates.order : isOne ? own : undefined;
  const amounts = texts((field) => field !== 'name' && field !== 'adjoining' && !DATES.includes(field));
  return { comma: comma || amounts.some((text) => DECIMAL_COMMA.test(text)), dates: { ...dates, order } };
}
