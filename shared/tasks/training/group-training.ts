/** Whether the training log says that a group is ready: for a page in words, for a table as a formula. */
import { fixedA1, quotedTab } from '../../block/a1';
import type { Book } from '../../block/book';
import { headingRow } from '../../block/heading-row';
import { dayFromIso } from '../../core/calendar/day';
import { nameKey } from '../../lists/read-list-cell';
import { standingOf } from '../standing';
import { LOG_BLOCK } from './log-block';
import { LOG_HEADINGS, NOT_READY } from './log-headings';
import { logStates } from './read-log';
import * as words from './words';

/** Rows below the log that are looked at too: it grows when it is written anew. */
const SPARE_ROWS = 20;

/** What the log says of a group by its name; undefined where it is ready, or is not in the log. Else its batch's row counts. */
export function trainingWords(book: Book): (group: string) => string | undefined {
  const log = standingOf(book, LOG_BLOCK, 'down')?.reading;
  const today = dayFromIso(book.overview.today) ?? 0;
  const states = log ? logStates(log) : [];
  return (group) => {
    const named = (field: 'group' | 'name') => states.filter((one) => nameKey(one[field]) === nameKey(group));
    const rows = named('group').length > 0 ? named('group') : named('name');
    const open = rows.filter(({ readyFrom }) => readyFrom === undefined);
    if (open.length > 0) {
      const missing = open.map((row) => `${row.name}: ${row.missing}`).join(', ');
      return `${words.NOT_READY_BY_LOG} (${missing})`;
    }
    const wait = Math.max(0, ...rows.map(({ readyFrom = 0 }) => readyFrom - today));
    return wait > 0 ? `${words.DAYS_TO_WAIT}${wait}` : undefined;
  };
}

/** Two formula bodies over a cell with the group's name: what the log holds for it, and that in words. */
export interface TrainingFormulas {
  /** The day from which the group is ready, "not ready", or 0 where the log does not name it. */
  readonly ready: (nameCell: string) => string;
  /** `readyCell`: where that stands. '' where nothing is to be said. */
  readonly says: (readyCell: string) => string;
}

/** Undefined without a log, or where formulas cannot refer to it. */
export function trainingFormulas(book: Book): TrainingFormulas | undefined {
  const log = standingOf(book, LOG_BLOCK)?.block;
  const at = log ? headingRow(log.values, LOG_HEADINGS) : -1;
  if (!log || at < 0 || log.info.tab.includes("'")) return undefined;
  const { info, values } = log;
  const columnOf = (heading: (typeof LOG_HEADINGS)[number]): number =>
    info.column + values[at]!.indexOf(heading);
  const [first, last] = [info.row + at, info.row + info.rows - 1 + SPARE_ROWS];
  const top = (heading: (typeof LOG_HEADINGS)[number]): string =>
    `${quotedTab(info.tab)}!${fixedA1(first, columnOf(heading))}`;
  const down = (heading: (typeof LOG_HEADINGS)[number]): string =>
    `${top(heading)}:${fixedA1(last, columnOf(heading))}`;
  // Spaces around a name do not count, and no sign in it stands for others: MATCH would take both otherwise.
  const found = (
    names: 'Group' | 'Pig or batch',
    nameCell: string,
    answers: string,
    otherwise: string,
  ): string => {
    const row = `(ROW(${down(names)})-ROW(${top(names)})+1)`;
    const place = `SUMPRODUCT(MAX((TRIM(${down(names)})=TRIM(${nameCell}))*${row}))`;
    return `IF(${place}>0;INDEX(${answers};${place});${otherwise})`;
  };
  return {
    ready: (nameCell) =>
      found(
        'Group',
        nameCell,
        down('Group ready from'),
        found('Pig or batch', nameCell, down('Ready from'), '0'),
      ),
    says: (ready) =>
      `IF(${ready}="${NOT_READY}";"${words.NOT_READY_BY_LOG}";IF(ISNUMBER(${ready});IF(${ready}>TODAY();"${words.DAYS_TO_WAIT}"&(${ready}-TODAY());"");""))`,
  };
}
