/** Reads the fence walk log: the rows as typed, and those that make a reading. */
import { cellA1 } from '../../block/a1';
import { BLANK } from '../../block/cells';
import type { BlockContent } from '../../block/read-block';
import type { BlockCell } from '../../contract';
import { dayIn } from '../../lists/read-list-cell';
import { typedRows } from '../end-line';
import { textOf } from '../rows-between';
import { readSettings, type SettingsRead } from '../settings';
import { WALK_HEADINGS, WALK_SETTINGS, type WalkRow } from './walk-block';
import type { Reading } from './walk-log';

export interface WalkRead {
  /** Blank rows between filled ones stay where they are. */
  readonly rows: readonly WalkRow[];
  readonly readings: readonly Reading[];
  readonly settings: SettingsRead<'level'>;
  /** Rows that are kept but cannot be counted, each with its cell. */
  readonly problems: readonly string[];
  /** Lines under the headings. */
  readonly lines: number;
}

const TYPED = WALK_HEADINGS.slice(0, 4);

export function readWalk(block: BlockContent): WalkRead {
  const problems: string[] = [];
  const { headings, rows, sheetRows, lines } = typedRows(block, WALK_HEADINGS);
  const columns = TYPED.map((heading) => headings.indexOf(heading));
  const typed = rows.map((row) => columns.map((c) => row[c] ?? BLANK) as unknown as WalkRow);
  const filled = typed.map((row) => row.some(({ k }) => k !== 'blank'));
  return {
    rows: typed.slice(0, filled.lastIndexOf(true) + 1),
    readings: typed.flatMap((row, i) =>
      filled[i] ? readReading(row, { block, sheetRow: sheetRows[i] ?? 0, columns }, problems) : [],
    ),
    settings: readSettings(block, WALK_SETTINGS),
    problems,
    lines,
  };
}

interface Where {
  readonly block: BlockContent;
  readonly sheetRow: number;
  /** Columns of the typed headings, from 0. */
  readonly columns: readonly number[];
}

function readReading(
  [date, place, volts, found]: WalkRow,
  { block: { info }, sheetRow, columns }: Where,
  problems: string[],
): Reading[] {
  const day = dayOf(date);
  const where = (typed: number): string =>
    `${info.tab}!${cellA1(sheetRow, info.column + (columns[typed] ?? 0))}`;
  if (day === undefined)
    problems.push(`${where(0)}: date must be a date (a date cell, or text such as "2026-04-20")`);
  if (volts.k !== 'n') problems.push(`${where(2)}: volts must be a number`);
  if (day === undefined || volts.k !== 'n') return [];
  return [{ day, place: textOf(place), volts: volts.v, found: textOf(found) }];
}

function dayOf(cell: BlockCell): number | undefined {
  if (cell.k === 'd') return dayIn({ d: cell.v });
  return cell.k === 't' ? dayIn(cell.v) : undefined;
}
