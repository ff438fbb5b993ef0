import type { BlockContent } from '../../block/read-block';
import { nameBlankHeadings } from '../name-blank-headings';
import { rowsBetween } from '../rows-between';
import { readSettings, type SettingsRead } from '../settings';
import { LOG_HEADINGS, LOG_INPUTS, LOG_REMARKS, LOG_RESULTS, LOG_SETTINGS, type LogRow } from './log-block';

export interface LogRead {
  readonly settings: SettingsRead<'minimumDays'>;
  /** Blank rows between filled ones stay where they are. */
  readonly rows: readonly LogRow[];
  readonly addedHeadings: readonly string[];
}

/** What was typed in a training log that stands already, columns of the grower's own included. */
export function readLog(standing: BlockContent): LogRead {
  const block = nameBlankHeadings(standing, LOG_HEADINGS, standing.values.length);
  const head = block.values.find((row) => LOG_HEADINGS.every((heading) => row.includes(heading))) ?? [];
  const addedHeadings = head.filter(
    (cell): cell is string =>
      typeof cell === 'string' && cell !== '' && !(LOG_HEADINGS as readonly string[]).includes(cell),
  );
  const results: readonly string[] = LOG_RESULTS;
  const typed = [...LOG_INPUTS, ...LOG_REMARKS, ...addedHeadings].filter((one) => !results.includes(one));
  const all = rowsBetween(block, LOG_HEADINGS);
  const filled = all.map((row) => !row.emptyUnder(typed)).lastIndexOf(true);
  return {
    settings: readSettings(block, LOG_SETTINGS),
    rows: all.slice(0, filled + 1).map((row) => new Map(typed.map((one) => [one, row.kept(one)]))),
    addedHeadings,
  };
}
