/** Reads the fence walk log: the rows as typed, and those that make a reading. */
import { cellA1 } from '../../block/a1';
import type { BlockContent } from '../../block/read-block';
import type { BlockCell } from '../../contract';
import { dayIn } from '../../lists/read-list-cell';
import { type KeptRow, rowsBetween, textOf } from '../rows-between';
import { readSettings, type SettingsRead } from '../settings';
import { WALK_HEADINGS, WALK_SETTINGS, type WalkRow } from './walk-block';
import type { Reading } from './walk-log';

export interface WalkRead {
  readonly rows: readonly WalkRow[];
  readonly readings: readonly Reading[];
  readonly settings: SettingsRead<'level'>;
  /** Rows that are kept but cannot be counted, each with its cell. */
  readonly problems: readonly string[];
}

const TYPED = WALK_HEADINGS.slice(0, 4);

export function readWalk(block: BlockContent): WalkRead {
  const problems: string[] = [];
  const rows = rowsBetween(block, WALK_HEADINGS).filter((row) => !row.emptyUnder(TYPED));
  return {
    rows: rows.map((row) => TYPED.map((heading) => row.kept(heading)) as unknown as WalkRow),
    readings: rows.flatMap((row) => readReading(row, block, problems)),
    settings: readSettings(block, WALK_SETTINGS),
    problems,
  };
}

function readReading(row: KeptRow, { info }: BlockContent, problems: string[]): Reading[] {
  const day = dayOf(row.kept('Date'));
  const volts = row.kept('Volts');
  const where = (column: number): string => `${info.tab}!${cellA1(row.sheetRow, info.column + column)}`;
  if (day === undefined)
    problems.push(`${where(0)}: date must be a date (a date cell, or text such as "2026-04-20")`);
  if (volts.k !== 'n') problems.push(`${where(2)}: volts must be a number`);
  if (day === undefined || volts.k !== 'n') return [];
  return [
    { day, place: textOf(row.kept('Place')), volts: volts.v, found: textOf(row.kept('What was found')) },
  ];
}

function dayOf(cell: BlockCell): number | undefined {
  if (cell.k === 'd') return dayIn({ d: cell.v });
  return cell.k === 't' ? dayIn(cell.v) : undefined;
}
