import type { BlockContent } from '../../block/read-block';
import type { WireCell } from '../../contract';
import type { Day } from '../../core/calendar/day';
import { dayIn } from '../../lists/read-list-cell';
import { typedRows } from '../end-line';
import { nameBlankHeadings } from '../name-blank-headings';
import { readSettings, type SettingsRead } from '../settings';
import { LOG_SETTINGS, type LogRow } from './log-block';
import { LOG_HEADINGS, LOG_INPUTS, LOG_REMARKS, LOG_RESULTS } from './log-headings';

export interface LogRead {
  readonly settings: SettingsRead<'minimumDays'>;
  /** Blank rows between filled ones stay where they are. */
  readonly rows: readonly LogRow[];
  /** In the order that they stand in, columns of the grower's own and free ones ('') included. */
  readonly headings: readonly string[];
  /** Lines under the headings. */
  readonly lines: number;
}

/**
 * What was typed in a training log that stands already, in its free columns too. Columns that the grower put in stay
 * where they are by themselves.
 */
export function readLog(standing: BlockContent): LogRead {
  const block = nameBlankHeadings(standing, LOG_HEADINGS, standing.values.length);
  const { headings, rows, lines } = typedRows(block, LOG_HEADINGS);
  const results: readonly string[] = LOG_RESULTS;
  const typed = headings.flatMap((heading, c) =>
    heading === '' || results.includes(heading) || headings.indexOf(heading) < c ? [] : [{ heading, c }],
  );
  const filled = rows.map((row) => typed.some(({ c }) => row[c]?.k !== 'blank')).lastIndexOf(true);
  return {
    settings: readSettings(block, LOG_SETTINGS),
    rows: rows
      .slice(0, filled + 1)
      .map((row) => new Map(typed.flatMap(({ heading, c }) => (row[c] ? [[heading, row[c]]] : [])))),
    headings,
    lines,
  };
}

export interface LogState {
  readonly sheetRow: number;
  /** '' where it is missing. */
  readonly name: string;
  readonly group: string;
  readonly status: string;
  readonly missing: string;
  /** Undefined: not ready. */
  readonly readyFrom: Day | undefined;
}

/** What each filled row of the log says, rows without a name among them. */
export function logStates(block: BlockContent): readonly LogState[] {
  const { headings, rows, sheetRows } = typedRows(block, LOG_HEADINGS);
  const typed = [...LOG_INPUTS, ...LOG_REMARKS].map((heading) => headings.indexOf(heading));
  return rows.flatMap((row, i) => {
    if (typed.every((c) => row[c]?.k === 'blank')) return [];
    const sheetRow = sheetRows[i]!;
    const cell = (heading: (typeof LOG_HEADINGS)[number]): WireCell =>
      block.values[sheetRow - block.info.row]![headings.indexOf(heading)] ?? '';
    const shown = (heading: (typeof LOG_HEADINGS)[number]): string => String(cell(heading)).trim();
    return [
      {
        sheetRow,
        name: shown('Pig or batch'),
        group: shown('Group'),
        status: shown('Status'),
        missing: shown('Still missing'),
        readyFrom: dayIn(cell('Ready from')),
      },
    ];
  });
}
