/** A small farm: its tables have every kind of cell, and few of each. */
import { ROTATION_NAME } from '../../shared/block/own-words';
import type { UnitSystem } from '../../shared/units/units';
import type { StartCell, Workbook } from '../../src/headless';
import type { Book } from '../../src/sidebar/parts/use-book';
import { cellUnder } from '../cell-under';
import { shownMoves } from './check-table';
import { contentOf } from './task-in-memory';

const SEASON_START = Date.parse('2026-04-01') / 86_400_000;
const SEASON_DAYS = 12;
export const FARM_RULES = {
  rest: { kind: 'fixed', days: 3 },
  shortestStayDays: 2,
  longestStayDays: 5,
  moveWeekdays: [true, true, true, true, true, true, true],
  noMoveDays: [],
  seasonStart: SEASON_START,
  seasonEnd: SEASON_START + SEASON_DAYS,
} as const;

const UNITS = {
  US: { area: 'Acres', weight: 'Weight (lb)', gain: 'ADG (lb/day)', scale: 1 },
  metric: { area: 'Hectares', weight: 'Weight (kg)', gain: 'ADG (kg/day)', scale: 0.45 },
} as const;
const NAMES = ['North', 'South', 'Oak', 'Hill'];

export function farmToType(units: UnitSystem): Record<string, StartCell[][]> {
  const { area, weight, gain, scale } = UNITS[units];
  const weighed = { d: '2026-03-28' };
  return {
    Paddocks: [
      ['Paddock', area],
      ...NAMES.map((name, i): StartCell[] => [{ text: name }, (0.4 + i / 20) * scale]),
    ],
    Pigs: [
      ['Group', 'Head', weight, 'Weighed on', gain],
      ['Reds', 10, 60 * scale, weighed, 1.5 * scale],
      ['Blacks', 8, 90 * scale, weighed, 1.6 * scale],
    ],
  };
}

/** Three moves that happened on the day planned, with a note each; it is the day of the last of them. */
export function typeMoves(workbook: Workbook, book: Book): void {
  const { info } = contentOf(book, ROTATION_NAME);
  for (const [i, { row, cell }] of shownMoves(workbook, info).slice(0, 3).entries()) {
    const { d } = cell('Planned in') as { d: string };
    workbook.type(info.tab, cellUnder(workbook, 'Moved in', row, info.tab), d);
    workbook.type(info.tab, cellUnder(workbook, 'Note', row, info.tab), `seen ${i}`);
    workbook.state.now = () => new Date(`${d}T12:00:00Z`);
  }
}
