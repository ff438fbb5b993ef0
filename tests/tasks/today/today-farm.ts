/** A farm of two groups with a rotation table of four stays laid out by hand, and today's page over it. All invented. */
import type { BlockInfo, BlockRule } from '../../../shared/contract';
import { dayFromIso } from '../../../shared/core/calendar/day';
import type { PlanRules } from '../../../shared/plan/model';
import type { HerdSource } from '../../../shared/table/herd-formulas';
import { rotationBlock } from '../../../shared/table/rotation-block';
import { boundHerd } from '../../../shared/tasks/herd/bound-herd';
import { HERD_BLOCK, type HerdEntry, herdBlock, herdRow } from '../../../shared/tasks/herd/herd-block';
import { boundTable } from '../../../shared/tasks/today/bound-table';
import { TODAY_BLOCK } from '../../../shared/tasks/today/tick-words';
import { todayBlock } from '../../../shared/tasks/today/today-block';
import { withLogs } from '../../../shared/tasks/today/working-rows';
import { openWorkbook, type StartCell, type Workbook, type WorkbookOptions } from '../../../src/headless';
import { BLOCK_NAME, readFarm } from '../../table/farm-in-sheet';
import { scriptText } from '../script-text';
import { readAsWritten, writeInSheet } from '../sheet-block';

export const day = (iso: string): number => dayFromIso(iso)!;

const RULES: PlanRules = {
  seasonStart: day('2026-05-01'),
  seasonEnd: day('2026-05-22'),
  rest: { kind: 'fixed', days: 30 },
  shortestStayDays: 3,
  longestStayDays: 7,
  moveWeekdays: [true, true, true, true, true, true, true],
  noMoveDays: [],
};

/** Reds: 10 head of 60 lb on 1 May, 1.5 lb a day. Greens come in on 8 May. */
const TABS: Record<string, StartCell[][]> = {
  Ground: [
    ['Paddock', 'Area (ac)'],
    ['North', 0.5],
    ['South', 0.5],
    ['East', 0.5],
    ['Pen*', 0.5],
  ],
  Pigs: [
    ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'Daily gain (lb)', 'From', 'Until'],
    ['Reds', 10, 60, { d: '2026-05-01' }, 1.5, { d: '2026-05-01' }, { d: '2026-05-22' }],
    [{ text: '=Greens*' }, 6, 80, { d: '2026-05-08' }, 1, { d: '2026-05-08' }, { d: '2026-05-22' }],
  ],
};

/** Group and paddock by their places in the lists. */
const STAYS = [
  { group: 0, paddock: 0, inDay: day('2026-05-01'), outDay: day('2026-05-08') },
  { group: 0, paddock: 1, inDay: day('2026-05-08'), outDay: day('2026-05-15') },
  { group: 1, paddock: 3, inDay: day('2026-05-08'), outDay: day('2026-05-22') },
  { group: 0, paddock: 2, inDay: day('2026-05-15'), outDay: day('2026-05-22') },
];
const SCORE = { total: 0, restShortDays: 0, overLimitDays: 0, moves: 4, strides: 0 };

/** Rows of the moves in the table, from 1 in the order of `STAYS`. */
export const ROTATION = { firstRow: 6, movedIn: 'D' } as const;

export interface TodayFarm {
  readonly book: Workbook;
  readonly info: BlockInfo;
  /** Colour rules of the rotation table. */
  readonly rules: readonly BlockRule[];
}

interface Options extends Pick<WorkbookOptions, 'locale' | 'timeZone' | 'modes'> {
  /** Days moved in, in the order of `STAYS`. */
  readonly moved?: readonly (string | undefined)[];
  readonly tab?: string;
  /** Rows of a herd log; the rotation table was written before it. */
  readonly herd?: readonly HerdEntry[];
}

export async function openToday(
  today: string,
  { moved = [], herd = [], tab = 'Rotation', ...workbook }: Options = {},
): Promise<TodayFarm> {
  const book = await openWorkbook({ tabs: TABS, codeJs: await scriptText(), today, ...workbook });
  const farm = readFarm({ book, tabs: Object.keys(TABS), system: 'US', rules: RULES });
  const plan = { stays: STAYS, score: SCORE };
  const table = rotationBlock({ ...farm, plan, corner: { row: 1, column: 1 }, warnings: [] });
  const at = writeInSheet(book, BLOCK_NAME, table, { at: 'new-tab', tab });
  for (const [i, iso] of moved.entries()) if (iso) type(book, i, iso, tab);
  const rows = herd.map((entry) => herdRow(entry, '', 'US'));
  const place = { at: 'new-tab', tab: 'Herd log' } as const;
  const log =
    herd.length > 0
      ? writeInSheet(book, HERD_BLOCK, herdBlock(rows, 'US', { row: 1, column: 1 }), place)
      : undefined;
  return { book, rules: table.rules, info: writeToday(book, at, log && boundHerd(readAsWritten(book, log))) };
}

/** Types a day moved in. */
export function type(book: Workbook, move: number, iso: string, tab = 'Rotation'): void {
  book.type(tab, `${ROTATION.movedIn}${ROTATION.firstRow + move}`, iso);
}

export function writeToday(book: Workbook, rotation: BlockInfo, herd?: HerdSource): BlockInfo {
  const table = boundTable(readAsWritten(book, rotation));
  if ('problem' in table) throw new Error(table.problem);
  const block = todayBlock(withLogs(table, { herd }), { row: 1, column: 1 });
  return writeInSheet(book, TODAY_BLOCK, block, { at: 'new-tab', tab: 'Today', before: rotation.tab });
}

/** Rows of a group's card by their labels: what shows in the second and the third column, and the box. */
export function card(
  book: Workbook,
  group: string,
): Record<string, { shown: string; beside: string; a1: string }> {
  const rows = book.shownValues('Today');
  const top = rows.findIndex(([first]) => first === group);
  const end = rows.findIndex(([first], r) => r > top && first === 'Carry');
  const lines = rows
    .slice(top + 1, end + 1)
    .map(([label, shown = '', beside = ''], i) => [label, { shown, beside, a1: `B${top + 2 + i}` }] as const);
  // The line above the box says what is to be done; it has no label.
  const toDo = lines[lines.findIndex(([label]) => label === 'Moved') - 1]![0] ?? '';
  return { ...Object.fromEntries(lines), 'To do': { shown: toDo, beside: '', a1: '' } };
}

export function shown(book: Workbook, group: string, ...labels: readonly string[]): readonly string[] {
  return labels.map((label) => card(book, group)[label]!.shown);
}
