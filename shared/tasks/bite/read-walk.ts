/** Reads the fence walk log: the rows as typed, and those that make a reading. */
import type { BlockContent } from '../../block/read-block';
import { dayOf, typedTable } from '../end-line';
import { textOf } from '../rows-between';
import { readSettings, type SettingsRead } from '../settings';
import { WALK_HEADINGS, WALK_SETTINGS, type WalkRow } from './walk-block';
import type { Reading } from './walk-log';
import * as words from './words';

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

/** Date, place, volts, what was found. */
const TYPED = 4;

export function readWalk(block: BlockContent): WalkRead {
  const problems: string[] = [];
  const { typed, filled, rows, cellOf, lines } = typedTable<WalkRow>(block, WALK_HEADINGS, TYPED);
  const readings = typed.flatMap(([date, place, volts, found], row): Reading[] => {
    if (!filled[row]) return [];
    const day = dayOf(date);
    if (day === undefined) problems.push(words.badDay(cellOf(row, 0)));
    if (volts.k !== 'n') problems.push(words.badVolts(cellOf(row, 2)));
    if (day === undefined || volts.k !== 'n') return [];
    return [{ day, place: textOf(place), volts: volts.v, found: textOf(found) }];
  });
  return { rows, readings, settings: readSettings(block, WALK_SETTINGS), problems, lines };
}
