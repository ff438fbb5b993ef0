/** An invented farm of two groups and eight paddocks, and two ways to record what happens on it: typing, and the page. */
import type { Page } from 'playwright-core';
import { dayFromIso, isoFromDay } from '../../shared/core/calendar/day';
import type { PlanRules } from '../../shared/plan/model';
import { HERD_TASK } from '../../shared/tasks/herd/herd-task';
import { openWorkbook, portOf, runTask, type StartCell, type Workbook } from '../../src/headless';
import { planned } from '../browser/planned';
import { buildRotation } from '../hard-use/rotation-task';
import { isoShown } from '../iso-shown';
import { scriptText } from '../tasks/script-text';
import type { AnsweringSheet } from './open-sidebar';

export const FIRST_DAY = '2026-04-01';
const LAST_DAY = '2026-06-10';
/** Short stays and rests, so that a short season has moves enough. */
const RULES: PlanRules = {
  rest: { kind: 'fixed', days: 18 },
  shortestStayDays: 2,
  longestStayDays: 6,
  evenness: 0.25,
  moveWeekdays: [true, true, true, true, true, true, true],
  noMoveDays: [],
  seasonStart: dayFromIso(FIRST_DAY)!,
  seasonEnd: dayFromIso(LAST_DAY)!,
};

const tabs = (last: string): Record<string, StartCell[][]> => ({
  Paddocks: [
    ['Paddock', 'Acres', 'Shut from', 'Shut until'],
    ...['North', 'South', 'Oak', 'Hill', 'Creek', 'Barn', 'Rise', 'Long', 'Far'].map(
      (name, i): StartCell[] => [name, 0.5 + (i % 3) / 10],
    ),
  ],
  Pigs: [
    ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)', 'From', 'Until'],
    ['Reds', 10, 60, { d: '2026-03-28' }, 1.5, { d: FIRST_DAY }, { d: last }],
    ['Blacks', 8, 90, { d: '2026-03-28' }, 1.6, { d: FIRST_DAY }, { d: last }],
  ],
});

export async function openFarm(last = LAST_DAY): Promise<Workbook> {
  const book = await openWorkbook({ tabs: tabs(last), codeJs: await scriptText(), today: FIRST_DAY });
  await rebuilt(book, { ...RULES, seasonEnd: dayFromIso(last)! });
  return book;
}

export function setToday(book: Workbook, iso: string): void {
  book.state.now = () => new Date(`${iso}T12:00:00Z`);
}

async function rebuilt(book: Workbook, rules?: PlanRules): Promise<void> {
  const outcome = await buildRotation(book, {
    units: 'US',
    explain: true,
    fully: true,
    ...(rules && { rules }),
  });
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome).slice(0, 500));
}

/** The page's way to the script of a workbook. */
export function sheetOf(book: Workbook): AnsweringSheet {
  return { answer: (name, text) => ({ reply: JSON.stringify(book.ask(name, JSON.parse(text))) }) };
}

/** A row of the rotation table as it shows, read by its headings and no reader of ours. */
export interface Row {
  readonly row: number;
  readonly group: string;
  readonly paddock: string;
  readonly planned: string;
  readonly moved: string;
  readonly days: number;
  readonly out: string;
  readonly head: number;
  readonly rest: string;
}

export const COLUMNS = { group: 'A', paddock: 'B', moved: 'D', days: 'E', cover: 'Q' } as const;

export function rowsOf(book: Workbook): Row[] {
  const shown = book.shownValues('Rotation');
  const top = shown.findIndex((row) => row[0] === 'Group' && row[3] === 'Moved in');
  const end = shown.findIndex((row) => row[0] === 'Settings of this table');
  return shown.slice(top + 2, end).flatMap((cells, i): Row[] => {
    const [group = '', paddock = '', plannedIn = '', moved = '', days = '', out = '', head = ''] = cells;
    if (group === '') return [];
    const rest = cells[11] ?? '';
    return [
      {
        row: top + 3 + i,
        group,
        paddock,
        planned: isoShown(plannedIn),
        moved: isoShown(moved),
        days: Number(days),
        out: isoShown(out),
        head: Number(head),
        rest,
      },
    ];
  });
}

/** Moves of a group that nobody has recorded, in the order of days. */
export function openRows(book: Workbook, group: string): Row[] {
  const own = rowsOf(book).filter((row) => row.group === group && row.moved !== 'skipped');
  const last = own.filter(({ moved }) => moved !== '').sort((a, b) => (a.moved < b.moved ? 1 : -1))[0];
  return own
    .filter(({ moved, planned: day }) => moved === '' && (!last || day >= last.planned))
    .sort((a, b) => (a.planned < b.planned ? -1 : 1));
}

/** What a person does; each on the move of that row. */
export interface Recorder {
  moved(move: Row, day: string, paddock?: string): Promise<void>;
  unplanned(group: string, day: string, paddock: string): Promise<void>;
  skipped(move: Row): Promise<void>;
  notYet(move: Row, day: string): Promise<void>;
  cover(stay: Row, percent: number): Promise<void>;
  beginLog(): Promise<void>;
  herd(group: string, day: string, head: string, weight: string, note: string): Promise<void>;
  shut(paddock: string, from: string, until: string): Promise<void>;
  asPlanned(): Promise<void>;
  rebuild(): Promise<void>;
}

/** By typing into the sheet, as README says. */
export function typist(book: Workbook): Recorder {
  const type = (cell: string, value: string): void => book.type('Rotation', cell, value);
  return {
    moved: async ({ row, paddock: was }, day, paddock = was) => {
      if (paddock !== was) type(`${COLUMNS.paddock}${row}`, paddock);
      type(`${COLUMNS.moved}${row}`, day);
    },
    unplanned: async (group, day, paddock) => {
      const row = Math.max(...rowsOf(book).map((one) => one.row)) + 1;
      type(`${COLUMNS.group}${row}`, group);
      type(`${COLUMNS.paddock}${row}`, paddock);
      type(`${COLUMNS.moved}${row}`, day);
    },
    skipped: async ({ row }) => type(`${COLUMNS.moved}${row}`, 'skipped'),
    notYet: async (move, day) => {
      const own = rowsOf(book).filter(({ group, moved }) => group === move.group && moved !== 'skipped');
      const dayIn = (one: Row): string => one.moved || one.planned;
      const stay = own
        .filter((one) => one !== move && dayIn(one) < move.planned)
        .sort((a, b) => (dayIn(a) < dayIn(b) ? 1 : -1))[0]!;
      if (stay.moved === '') type(`${COLUMNS.moved}${stay.row}`, stay.planned);
      type(`${COLUMNS.days}${stay.row}`, String(dayFromIso(day)! - dayFromIso(dayIn(stay))!));
    },
    cover: async ({ row }, percent) => type(`${COLUMNS.cover}${row}`, `${percent}%`),
    beginLog: async () => {
      const outcome = await runTask(portOf(book), HERD_TASK);
      if (outcome.kind !== 'written') throw new Error(outcome.kind);
    },
    herd: async (group, day, head, weight, note) => {
      const log = book.shownValues('Herd log');
      const top = log.findIndex((cells) => cells[0] === 'Group');
      const row = log.findIndex((cells, r) => r > top && cells.slice(0, 5).every((cell) => cell === '')) + 1;
      const cells = [group, day, head, weight, note];
      for (const [c, value] of cells.entries())
        if (value !== '') book.type('Herd log', `${'ABCDE'[c]}${row}`, value);
    },
    shut: async (paddock, from, until) => {
      const row = book.shownValues('Paddocks').findIndex(([name]) => name === paddock) + 1;
      book.type('Paddocks', `C${row}`, from);
      if (until !== '') book.type('Paddocks', `D${row}`, until);
    },
    asPlanned: async () => {
      const today = isoFromDay(Math.floor(book.state.now().getTime() / 86_400_000));
      for (const group of ['Reds', 'Blacks']) {
        const due = openRows(book, group)
          .filter(({ planned: day }) => day <= today)
          .pop();
        if (due) type(`${COLUMNS.moved}${due.row}`, due.planned);
      }
    },
    rebuild: async () => rebuilt(book),
  };
}

const WAIT = { timeout: 60_000 };

/** Through the sidebar. */
export function clicker(page: Page): Recorder & { takeBack(): Promise<void>; home(): Promise<void> } {
  const home = async (): Promise<void> => {
    const back = page.getByRole('button', { name: 'All tasks' });
    if (await back.isVisible()) await back.click();
    await page.getByRole('heading', { name: 'What do you want to do?' }).waitFor();
  };
  const task = async (): Promise<void> => {
    await home();
    await page.getByRole('button', { name: 'What happened', exact: true }).click();
    await page.getByRole('heading', { name: 'The whole farm' }).waitFor(WAIT);
  };
  const press = async (name: string): Promise<void> =>
    page.getByRole('button', { name, exact: true }).click();
  const write = async (): Promise<void> => {
    await page.getByText('Working out what changes…').waitFor({ state: 'hidden', ...WAIT });
    const told = await page.locator('.answer .problem-text, .answer .notice').allInnerTexts();
    if (told.length > 0) throw new Error(told.join(' '));
    await press('Write it');
    await page.getByRole('button', { name: 'Take it back' }).waitFor(WAIT);
    await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden', ...WAIT });
    // In sight, wherever the form stood.
    await page.locator('.notice.done:focus').waitFor(WAIT);
  };
  const choose = async (label: string, { paddock, planned: day }: Row): Promise<void> => {
    const options = await page.getByLabel(label).locator('option').allInnerTexts();
    const number = String(Number(day.slice(8)));
    const text = options.find((one) => one.startsWith(`${paddock}, `) && one.split(' ').includes(number));
    if (!text) throw new Error(`${paddock} ${day} is none of ${options.join('; ')}`);
    await page.getByLabel(label).selectOption({ label: text });
  };
  return {
    home,
    takeBack: async () => {
      await press('Take it back');
      await page.getByText('Taken back.').waitFor(WAIT);
      await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden', ...WAIT });
    },
    moved: async (move, day, paddock) => {
      await task();
      await press(`Moved: ${move.group}`);
      await choose('Which move', move);
      if (paddock) await page.getByLabel('Into').selectOption(paddock);
      await page.getByLabel('On', { exact: true }).fill(day);
      await write();
    },
    unplanned: async (group, day, paddock) => {
      await task();
      await press(`Moved: ${group}`);
      await page.getByLabel('Which move').selectOption({ label: 'One that is not in the plan' });
      await page.getByLabel('Into').selectOption(paddock);
      await page.getByLabel('On', { exact: true }).fill(day);
      await write();
    },
    skipped: async (move) => {
      await task();
      await press(`Skipped: ${move.group}`);
      await choose('Which move was left out', move);
      await write();
    },
    notYet: async (move, day) => {
      await task();
      await press(`Not moved yet: ${move.group}`);
      await choose('Which move', move);
      await page.getByLabel('It will be on').fill(day);
      await write();
    },
    cover: async (stay, percent) => {
      await task();
      await press(`Cover left: ${stay.group}`);
      await choose('After the stay in', { ...stay, planned: stay.moved || stay.planned });
      await page.getByLabel('Cover left (%)').fill(String(percent));
      await write();
    },
    beginLog: async () => {
      await task();
      await press('Head or weight: Reds');
      await press('Begin the herd log');
      await page.getByLabel('Head from then on').waitFor(WAIT);
    },
    herd: async (group, day, head, weight, note) => {
      await task();
      await press(`Head or weight: ${group}`);
      await page.getByLabel('From which day on').fill(day);
      await page.getByLabel('Head from then on').fill(head);
      if (head === '0') await page.getByLabel('All of them have gone').check();
      await page.getByLabel(/Weight each/).fill(weight);
      await page.getByLabel('Note').fill(note);
      await write();
    },
    shut: async (paddock, from, until) => {
      await task();
      await press('A paddock is shut');
      await page.getByLabel('Paddock').selectOption(paddock);
      await page.getByLabel('Shut from').fill(from);
      await page.getByLabel('Shut up to').fill(until);
      await write();
    },
    asPlanned: async () => {
      await task();
      await press('All as planned up to today');
      await write();
    },
    rebuild: async () => {
      // What was recorded last offers the way.
      const anew = page.getByRole('button', { name: 'Plan the rest anew' });
      if (await anew.isVisible()) await anew.click();
      else {
        await home();
        await press('Plan the moves');
      }
      await planned(page, 120_000);
      await press('Write the table anew');
      await page.getByText(/^Done: the table on/).waitFor(WAIT);
    },
  };
}
