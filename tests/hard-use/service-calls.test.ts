/**
 * How often each action calls the spreadsheet service, on a small farm and on one larger than any: the same. The
 * numbers stand in DEVELOPERS.md, "Service calls"; this test measures them anew and compares.
 */
import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { BLANK, formula as cellFormula } from '../../shared/block/cells';
import { CATALOGUE } from '../../shared/catalogue/index';
import { openWorkbook, type StartCell, type Workbook } from '../../src/headless';
import { checkPlan } from '../plan/check-plan';
import { scriptText } from '../tasks/script-text';
import { isoOf, shownMoves } from './check-table';
import { buildEveryBlock } from './every-block';
import { asked, buildRotation, readBook, writeRotation } from './rotation-task';

const START = Date.parse('2026-04-01') / 86_400_000;
const YEAR = 365;
const measured = new Map<string, string>();

function farm(paddocks: number): Record<string, StartCell[][]> {
  return {
    Paddocks: [
      ['Paddock', 'Acres'],
      ...Array.from({ length: paddocks }, (_, i): StartCell[] => [
        { text: `Plot ${i + 1}` },
        0.3 + (i % 7) / 10,
      ]),
    ],
    Pigs: [
      ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'Daily gain (lb)'],
      ['Sows', 9, 380, { d: '2026-03-30' }, 0],
    ],
  };
}

const rules = (days: number) => ({
  rest: { kind: 'fixed' as const, days: 30 },
  shortestStayDays: 3,
  longestStayDays: 7,
  moveWeekdays: [true, true, true, true, true, true, true],
  noMoveDays: [],
  seasonStart: START,
  seasonEnd: START + days,
});

async function open(paddocks: number): Promise<Workbook> {
  const workbook = await openWorkbook({
    tabs: farm(paddocks),
    codeJs: await scriptText(),
    today: '2026-04-01',
  });
  asked(workbook, 'overview');
  return workbook;
}

/** Every date that is read is turned into text by Utilities, once for each different date: counted by itself. */
const DATE_TEXT = 'Utilities.formatDate';
let mostDateTexts = 0;

/**
 * Of a rebuild in a file of three tabs, nothing moved. Of the file: lock, list of tabs, three for each tab. Of the place:
 * merged cells, whether it may be edited, number formats, which also say whether there is room. That it is in: the
 * stamp. Colours by rule. What stands after: values, formulas. Why none of them goes: DEVELOPERS.md.
 */
const MOST_WAITS = 2 + 9 + 3 + 1 + 1 + 2;

/** Service calls of some work, dates turned into text apart, and how many of them wait for Google. */
type Calls = { all: number; waits: number };

async function calls(workbook: Workbook, work: () => unknown): Promise<Calls> {
  workbook.resetCounts();
  await work();
  const dateTexts = workbook.callCounts[DATE_TEXT] ?? 0;
  mostDateTexts = Math.max(mostDateTexts, dateTexts);
  return { all: workbook.callTotal - dateTexts, waits: workbook.waits };
}

const both = ({ all, waits }: Calls): string => `${all} | ${waits}`;

/** Calls of every action on a farm of that size. */
async function everyAction(paddocks: number, days: number) {
  const workbook = await open(paddocks);
  const reading = await calls(workbook, () => readBook(workbook));
  workbook.select('Pigs', 'A1:E2');
  const selection = await calls(workbook, () => asked(workbook, 'readSelection'));
  const book = readBook(workbook);
  const build = await calls(workbook, async () =>
    expect(await writeRotation(workbook, book, { rules: rules(days) })).toMatchObject({ kind: 'written' }),
  );
  const cellCalls = { ...workbook.cellCalls };
  const read = readBook(workbook);
  const info = read.overview.blocks[0]!;
  const rows = info.rows;
  const moves = shownMoves(workbook, info);
  workbook.type(info.tab, `D${moves[0]!.row}`, isoOf(START + 1));
  workbook.state.now = () => new Date((START + 2) * 86_400_000);
  const again = readBook(workbook);
  const rebuild = await calls(workbook, async () =>
    expect(await writeRotation(workbook, again)).toMatchObject({ kind: 'written' }),
  );
  const third = readBook(workbook);
  workbook.type('Paddocks', 'J1', 'mine');
  const overtaken = await calls(workbook, async () =>
    expect(await writeRotation(workbook, third)).toMatchObject({ kind: 'written' }),
  );
  const formula = await calls(workbook, () =>
    asked(workbook, 'changeCells', {
      cells: [
        { tab: 'Pigs', row: 9, column: 8, before: BLANK, after: cellFormula('=FENCE_LENGTH(200;300;2)') },
      ],
    }),
  );
  return { reading, selection, build, rebuild, overtaken, formula, rows, cellCalls };
}

describe('service calls', () => {
  it('do not grow with the farm: 500 paddocks for three years take as many as 6 for a month', async () => {
    const small = await everyAction(6, 30);
    const large = await everyAction(500, 3 * YEAR);
    expect(large.rows).toBeGreaterThan(100);
    for (const action of ['reading', 'selection', 'build', 'rebuild', 'overtaken', 'formula'] as const) {
      expect([action, large[action]]).toEqual([action, small[action]]);
    }
    expect(large.cellCalls).toEqual(small.cellCalls);
    measured.set('Read the whole file of 2 tabs', both(small.reading));
    measured.set('Read the selection', both(small.selection));
    measured.set('Build the rotation table on a new tab', both(small.build));
    measured.set('Rebuild it in its place', both(small.rebuild));
    measured.set('The same, where the file was changed since it was read', both(small.overtaken));
    expect(small.rebuild.waits).toBeLessThanOrEqual(MOST_WAITS);
    measured.set('Put a formula or a day into a cell', both(small.formula));
    // A date for each day of the season at most, and a few beside it.
    expect(mostDateTexts).toBeLessThan(3 * YEAR + 10);
    console.log(
      `scale: 500 paddocks, 3 years: table of ${large.rows} rows, ${large.build} service calls, at most ${mostDateTexts} dates turned into text, cell functions ${JSON.stringify(large.cellCalls)}`,
    );
  }, 600_000);

  it('reading grows by a fixed number for each tab', async () => {
    const two = await open(3);
    const three = await openWorkbook({ tabs: { ...farm(3), More: [['x']] }, codeJs: await scriptText() });
    const more = await calls(three, () => readBook(three));
    const less = await calls(two, () => readBook(two));
    const further = { all: more.all - less.all, waits: more.waits - less.waits };
    expect(further.waits).toBeLessThanOrEqual(3);
    measured.set('Each further tab that is read', both(further));
  });

  it('each block calls its cell functions once a column, never once a row', async () => {
    const workbook = await openWorkbook({
      tabs: { Start: [] },
      codeJs: await scriptText(),
      today: '2026-04-20',
    });
    measured.set(
      'Start with a sample farm (2 tabs)',
      both(await calls(workbook, () => asked(workbook, 'startSample', { sample: 'feet-marrow-creek' }))),
    );
    await buildEveryBlock(workbook, 'US');
    const perTab = workbook.spreadsheet.getSheets().map((sheet) => {
      const formulas = workbook.formulas(sheet.getName()).flat();
      return [sheet.getName(), formulas.filter((formula) => OURS.test(formula)).length] as const;
    });
    for (const [tab, count] of perTab)
      if (count > 0) measured.set(`Cells with a cell function: ${tab}`, String(count));
    expect(perTab.reduce((sum, [, count]) => sum + count, 0)).toBeLessThan(40);
  }, 300_000);
});

/** A call of any cell function of ours. */
const OURS = new RegExp(`(?<![\\w.])(${CATALOGUE.map(({ name }) => name).join('|')})\\(`);

describe('large sheets', () => {
  it('a season of four years is turned down in words, before anything is planned', async () => {
    const workbook = await open(6);
    const outcome = await buildRotation(workbook, { rules: rules(4 * YEAR) });
    expect(outcome).toMatchObject({
      kind: 'refused',
      sentences: expect.arrayContaining(['The season must be three years or less.']),
    });
  });

  it('10,000 rows beside the lists, and a column function over 10,000 rows in one call', async () => {
    const long = Array.from({ length: 10_000 }, (_, i): StartCell[] => [i % 90, 40 + (i % 60)]);
    const workbook = await openWorkbook({
      tabs: { ...farm(4), Long: long },
      codeJs: await scriptText(),
      today: '2026-04-01',
    });
    const outcome = await buildRotation(workbook, { rules: rules(20) });
    if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
    expect(checkPlan(outcome.problem, outcome.plan.stays).faults).toEqual([]);
    workbook.resetCounts();
    workbook.type('Long', 'C1', '=PIG_WEIGHT(B1:B10000,A1:A10000,1.5)');
    expect(workbook.cellCalls).toEqual({ PIG_WEIGHT: 1 });
    // Start + gain × days: 40 + 59 % 60 … the last row by hand: 40 + 9999 % 60 = 79, 9999 % 90 = 9 days at 1.5.
    expect(workbook.value('Long', 'C10000')).toBeCloseTo(79 + 9 * 1.5, 9);
  }, 120_000);
});

afterAll(() => {
  const rows = [...measured].map(([action, count]) => `| ${action} | ${count} |`);
  console.log(`Service calls:\n${rows.join('\n')}`);
  const page = readFileSync('DEVELOPERS.md', 'utf8');
  expect(rows.filter((row) => !page.includes(row))).toEqual([]);
});
