import { describe, expect, it, vi } from 'vitest';
import { columnLetters } from '../../shared/block/a1';
import { cutBlock } from '../../shared/block/read-block';
import type { BlockInfo } from '../../shared/contract';
import { type Day, dayFromIso, isoFromDay } from '../../shared/core/calendar/day';
import { dayWords } from '../../shared/core/calendar/day-words';
import type { PlanRules } from '../../shared/plan/model';
import { COLUMNS } from '../../shared/table/columns';
import { describeChanges } from '../../shared/table/describe-changes';
import { liveMoves } from '../../shared/table/frozen-rotation';
import { SPILLED } from '../../shared/table/function-cells';
import { readRotation } from '../../shared/table/read-rotation';
import { rebuildInput } from '../../shared/table/rebuild-input';
import { shiftFormula } from '../../shared/table/shift-formula';
import { KEPT_BELOW } from '../../shared/tasks/merge/words';
import { standingRotation } from '../../shared/tasks/rotation/rotation-standing';
import { KEEP_FIGURES_TASK, ROTATION_TASK } from '../../shared/tasks/rotation/rotation-task';
import { ifWritten } from '../../shared/tasks/run-task';
import type { StartCell } from '../../src/headless';
import { portOf, runTask } from '../../src/headless';
import { cellUnder } from '../cell-under';
import { buildRotation, readBook } from '../hard-use/rotation-task';
import { NOTHING_KEPT } from '../tasks/sheet-block';
import { withoutMemory } from '../without-memory';
import {
  ask,
  BLOCK_NAME,
  buildTable,
  type FarmSheet,
  openFarm,
  planned,
  readFarm,
  readTab,
} from './farm-in-sheet';

// The engine's first evaluation takes seconds on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

const day = (iso: string): number => dayFromIso(iso)!;
const RULES: PlanRules = {
  rest: { kind: 'fixed', days: 20 },
  shortestStayDays: 3,
  longestStayDays: 6,
  evenness: 0,
  moveWeekdays: [true, true, true, true, true, true, true],
  noMoveDays: [],
  seasonStart: day('2026-04-01'),
  seasonEnd: day('2026-06-15'),
};
const TABS: Record<string, StartCell[][]> = {
  Farm: [
    ['Paddock', 'Acres', '', 'Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)'],
    ['North', 0.5, '', 'Reds', 10, 60, { d: '2026-03-28' }, 1.5],
    ['South', 0.4, '', 'Blacks', 8, 90, { d: '2026-03-28' }, 1.6],
    ['Oak', 0.6],
    ['Hill', 0.5],
    ['Creek', 0.45],
    ['West', 0.45],
    ['Hay', 0.5],
  ],
};

function blockOf({ book }: FarmSheet): BlockInfo {
  return ask<{ blocks: BlockInfo[] }>(book, 'overview', {}).blocks.find(
    (block) => block.name === BLOCK_NAME,
  )!;
}

function readNow(farm: FarmSheet) {
  return standingRotation(readBook(farm.book))!.rotation;
}

/** What the sheet shows of a move. */
function shown(farm: FarmSheet, heading: string, { sheetRow }: { readonly sheetRow: number }): unknown {
  return farm.book.value('Rotation', cellUnder(farm.book, heading, sheetRow));
}

/** Cells of the kept lines below the table, one text a line. */
function keptLines(farm: FarmSheet): string[] {
  const rows = withoutMemory(readTab(farm.book, 'Rotation').values);
  const at = rows.findIndex(([first]) => first === KEPT_BELOW);
  const words = (cell: unknown): string =>
    typeof cell === 'object' ? (cell as { d: string }).d : String(cell);
  return at < 0 ? [] : rows.slice(at + 1).map((row) => row.map(words).filter(Boolean).join(' | '));
}

async function rebuild(farm: FarmSheet, today: Day) {
  farm.book.state.now = () => new Date(`${isoFromDay(today)}T12:00:00Z`);
  const old = readNow(farm);
  expect(old.problems).toEqual([]);
  const outcome = await buildRotation(farm.book);
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
  const { plan, changes, rebuild: again, done } = outcome;
  return { old, again: again!, plan, changes, kept: done.kept! };
}

const keyOf = (row: { group: string; paddock: string; inDay?: Day }) => [row.group, row.paddock, row.inDay];

describe('rebuild', () => {
  it('changes nothing where nothing happened', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    const built = await buildRotation(farm.book, { rules: RULES, units: 'US' });
    expect(built.kind).toBe('written');
    const table = () => {
      const { values, formulas } = readTab(farm.book, 'Rotation');
      return [withoutMemory(values), formulas.map((row) => row.slice(0, -1))];
    };
    const before = table();
    const { changes, kept } = await rebuild(farm, day('2026-03-20'));
    expect(changes).toEqual(['The rest of the plan stays as it is.']);
    expect(kept).toEqual(NOTHING_KEPT);
    expect(table()).toEqual(before);
  });

  it('keeps the past and everything typed, and plans on from where the pigs stand', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const first = readNow(farm);
    const reds = first.rows.filter((row) => row.group === 'Reds');
    const blacks = first.rows.filter((row) => row.group === 'Blacks');
    const type = (heading: string, row: { sheetRow: number }, text: string): void =>
      farm.book.type('Rotation', cellUnder(farm.book, heading, row.sheetRow), text);
    type('Moved in', reds[0]!, '2026-04-01');
    type('Moved in', reds[1]!, isoFromDay(reds[1]!.inDay! + 4));
    type('Moved in', blacks[0]!, '2026-04-02');
    type('Cover left', reds[0]!, '0.8');
    type('Note', reds[1]!, '=1+1');
    type('Note', blacks[0]!, 'wet, water line froze');
    type('Note', reds[4]!, 'vet comes');
    type('Head', reds[5]!, '9');
    const today = reds[1]!.inDay! + 5;
    const { old, again, plan, changes } = await rebuild(farm, today);
    expect(again.past.map(keyOf)).toEqual([
      ['Reds', reds[0]!.paddock, day('2026-04-01')],
      ['Blacks', blacks[0]!.paddock, day('2026-04-02')],
      ['Reds', reds[1]!.paddock, reds[1]!.inDay! + 4],
    ]);
    expect(again.problem.groups.map((group) => group.standing?.since)).toEqual([
      reds[1]!.inDay! + 4,
      day('2026-04-02'),
    ]);
    expect(again.problem.rules.seasonStart).toBe(today);
    const left = again.problem.paddocks.find((paddock) => paddock.name === reds[0]!.paddock);
    expect(left!.lastUsed).toBe(reds[1]!.inDay! + 4);
    expect(changes.length).toBeGreaterThan(0);
    expect(again.notes.join(' ')).toMatch(
      /^Blacks: \d+ moves? planned before today ha(s|ve) no day moved in; by the new plan .*still stands/,
    );

    const after = readNow(farm);
    expect(after.problems).toEqual([]);
    expect(after.settings).toMatchObject(old.settings!);
    const past = after.rows.filter((row) => row.movedIn !== undefined);
    expect(past.map(keyOf)).toEqual(again.past.map(keyOf));
    expect(past[0]!.cover).toBe(0.8);
    expect(shown(farm, 'Note', past[1]!)).toBe('wet, water line froze');
    expect(farm.book.range('Rotation', cellUnder(farm.book, 'Note', past[2]!.sheetRow)).getFormula()).toBe(
      '=1+1',
    );
    expect(past.map((row) => row.plannedIn)).toEqual(
      [reds[0], blacks[0], reds[1]].map((row) => row!.plannedIn),
    );
    // The plan and the table agree, the standing stays included.
    expect(after.rows.slice(1).map(keyOf)).toEqual(
      plan.stays.map((stay) => [
        again.problem.groups[stay.group]!.name,
        again.problem.paddocks[stay.paddock]!.name,
        stay.inDay,
      ]),
    );
    // The note on a future move stands at that move, or below the table with the move that it was typed at.
    const line = (move: number, typed: string) =>
      [
        'Reds',
        reds[move]!.paddock,
        old.rows.find(({ id }) => id === reds[move]!.id)!.plannedIn,
        typed,
      ] as const;
    const isKept = (move: number, heading: string, typed: unknown): boolean => {
      const [group, paddock, planned] = line(move, String(typed));
      const below = `${group} | ${paddock} | ${isoFromDay(planned!)} | ${typed}`;
      const there = after.rows.some(
        (row) => row.id === reds[move]!.id && shown(farm, heading, row) === typed,
      );
      return there || keptLines(farm).includes(below);
    };
    expect(isKept(4, 'Note', 'vet comes')).toBe(true);
    expect(isKept(5, 'Head', 9)).toBe(true);
    // Once more, the same day: nothing to change.
    expect((await rebuild(farm, today)).changes).toEqual(['The rest of the plan stays as it is.']);
  });

  it('keeps columns that the grower added, with formulas moved along', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const sheet = farm.book.spreadsheet.getSheetByName('Rotation')!;
    sheet.insertColumnsAfter(5, 1);
    const rows = readNow(farm).rows;
    const headingRow = rows[0]!.sheetRow - 2;
    farm.book.type('Rotation', `F${headingRow}`, 'Mine');
    for (const row of rows) farm.book.type('Rotation', `F${row.sheetRow}`, `=E${row.sheetRow}*2`);
    farm.book.type('Rotation', `F${rows[3]!.sheetRow}`, 'seen fox');
    farm.book.type('Rotation', cellUnder(farm.book, 'Moved in', rows[0]!.sheetRow), '2026-04-03');
    const letters = (): unknown[] => readTab(farm.book, 'Rotation').values[headingRow - 1]!.slice(0, -1);
    const before = letters();
    for (let time = 0; time < 2; time++) {
      await rebuild(farm, day('2026-04-05'));
      const after = readNow(farm);
      expect(letters()).toEqual(before);
      const mine = after.rows.map((row) => shown(farm, 'Mine', row));
      for (const [i, value] of mine.entries())
        if (value !== 'seen fox') expect(value).toBe(Number(shown(farm, 'Days', after.rows[i]!)) * 2);
      expect(mine.includes('seen fox') || keptLines(farm).join().includes('seen fox')).toBe(true);
      // What is worked out from cells right of it is as in a table without it.
      const first = after.rows.at(-1)!;
      expect(Number(shown(farm, 'Weight in (lb)', first))).toBeGreaterThan(60);
      expect(shown(farm, 'Check', first)).toBeTypeOf('string');
    }
  });

  // 2026-11: the deleted column was put back in its old place, and own formulas then counted its neighbour.
  it('moves no column: a deleted one comes back at the right end, a blank one stays', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const sheet = farm.book.spreadsheet.getSheetByName('Rotation')!;
    const [first] = readNow(farm).rows;
    const headingRow = first!.sheetRow - 2;
    const letterOf = (heading: string): string =>
      cellUnder(farm.book, heading, headingRow).replace(/\d+$/, '');
    sheet.insertColumnsAfter(5, 1);
    const beside = columnLetters(blockOf(farm).columns + 1);
    const columnOf = (letters: string): number =>
      [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
    const area = letterOf('Area (ac)');
    const last = first!.sheetRow + 300;
    farm.book.type('Rotation', `${beside}${headingRow}`, 'Mine');
    farm.book.type('Rotation', `${beside}${first!.sheetRow}`, `=${area}${first!.sheetRow}*2`);
    farm.book.type('Farm', 'L1', `=SUM(Rotation!${area}${first!.sheetRow}:${area}${last})`);
    sheet.deleteColumns(columnOf(letterOf('Rest due (days)')), 1);
    const sum = farm.book.value('Farm', 'L1');
    const mine = readNow(farm).rows.map(({ areaSquareMeters }) => areaSquareMeters! / 4046.8564224);
    expect(Number(sum)).toBeCloseTo(
      mine.reduce((a, b) => a + b, 0),
      6,
    );
    farm.book.type('Rotation', cellUnder(farm.book, 'Moved in', first!.sheetRow), isoFromDay(first!.inDay!));
    const before = letterOf('Area (ac)');
    const { kept } = await rebuild(farm, first!.inDay!);
    expect(kept).toEqual(NOTHING_KEPT);
    expect(letterOf('Area (ac)')).toBe(before);
    expect(farm.book.value('Farm', 'L1')).toBe(sum);
    const after = readNow(farm);
    const headings = readTab(farm.book, 'Rotation').values[headingRow - 1]!.slice(0, -1);
    expect(headings.slice(-2)).toEqual(['Mine', 'Rest due (days)']);
    expect(headings[5]).toBe('');
    const again = after.rows[0]!;
    expect(shown(farm, 'Mine', again)).toBeCloseTo((again.areaSquareMeters! / 4046.8564224) * 2, 6);
    const due = Number(
      farm.book.value('Rotation', cellUnder(farm.book, 'Rest due (days)', after.rows.at(-1)!.sheetRow)),
    );
    expect(due).toBeGreaterThan(0);
  });

  it('takes columns begun right beside the table along, and the frozen rows follow its headings', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const rows = readNow(farm).rows;
    const headingRow = rows[0]!.sheetRow - 2;
    const sheet = farm.book.spreadsheet.getSheetByName('Rotation')!;
    expect(sheet.getFrozenRows()).toBe(headingRow);
    const beside = columnLetters(blockOf(farm).columns + 1);
    farm.book.type('Rotation', `${beside}${headingRow}`, 'Who moved');
    farm.book.type('Rotation', `${beside}${rows[0]!.sheetRow}`, 'Sam');
    farm.book.type('Rotation', `${beside}${rows[2]!.sheetRow}`, 'Ann');
    farm.book.type('Rotation', `${beside}${rows[0]!.sheetRow - 3}`, 'far right of the hint');
    farm.book.type('Rotation', cellUnder(farm.book, 'Moved in', rows[0]!.sheetRow), '2026-04-06');
    farm.book.type(
      'Rotation',
      cellUnder(farm.book, 'Moved in', rows[2]!.sheetRow),
      isoFromDay(rows[2]!.inDay! + 1),
    );
    const { again } = await rebuild(farm, rows[2]!.inDay! + 20);
    const after = readNow(farm);
    for (const [at, name] of [
      [0, 'Sam'],
      [2, 'Ann'],
    ] as const) {
      const row = after.rows.find(({ id }) => id === rows[at]!.id)!;
      expect(shown(farm, 'Who moved', row)).toBe(name);
    }
    // What stands beside our sentences stays in its row, and the headings too, however much there is to say.
    const right = cellUnder(farm.book, 'Who moved', rows[0]!.sheetRow - 3);
    expect(farm.book.value('Rotation', right)).toBe('far right of the hint');
    expect(keptLines(farm)).toEqual([]);
    expect(again.notes.length).toBeGreaterThan(0);
    const told = String(farm.book.value('Rotation', `C${headingRow - 1}`));
    expect(told).toContain(again.notes[0]);
    expect(told).toContain(`(${again.notes.length - 1} more below the settings)`);
    expect(after.rows[0]!.sheetRow - 2).toBe(headingRow);
    expect(sheet.getFrozenRows()).toBe(headingRow);
  });

  it('counts feed by the days really stayed, and fills in a move that was added by hand', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const reds = readNow(farm).rows.filter((row) => row.group === 'Reds');
    const [first, second, third] = reds as [(typeof reds)[0], (typeof reds)[0], (typeof reds)[0]];
    const type = (heading: string, sheetRow: number, text: string): void =>
      farm.book.type('Rotation', cellUnder(farm.book, heading, sheetRow), text);
    type('Moved in', first.sheetRow, '2026-04-01');
    type('Moved in', second.sheetRow, '2026-04-11');
    const feedOf = (sheetRow: number): number =>
      Number(farm.book.value('Rotation', cellUnder(farm.book, 'Feed for the stay (lb)', sheetRow)));
    const rows = farm.book.range('Farm', 'D2');
    expect(rows.getValue()).toBe('Reds');
    // Ten days from April 1, whatever was planned; the cell function itself is the judge.
    farm.book.type('Farm', 'J1', '=FEED_NEEDED(10; 66; 10; 1.5; 1.15; "US")');
    expect(feedOf(first.sheetRow)).toBeCloseTo(Number(farm.book.value('Farm', 'J1')), 6);

    // A move in between that nobody planned.
    farm.book.insertRows('Rotation', third.sheetRow, 1);
    type('Group', third.sheetRow, 'reds');
    type('Paddock', third.sheetRow, 'Hay');
    type('Moved in', third.sheetRow, '2026-04-13');
    type('Days', third.sheetRow, '4');
    const { again } = await rebuild(farm, day('2026-04-14'));
    expect(
      again.notes.filter((note) =>
        note.startsWith('Head, weight or area was missing in reds, Hay on Mon 13 Apr: it is taken'),
      ),
    ).toHaveLength(1);
    const after = readNow(farm);
    const added = after.rows.find((row) => row.paddock === 'Hay' && row.movedIn === day('2026-04-13'))!;
    expect(added).toMatchObject({ head: 10, growthDays: 16 });
    expect(feedOf(added.sheetRow)).toBeGreaterThan(0);
    const stays = after.rows.filter((row) => row.movedIn !== undefined).map(({ days }) => days);
    expect(stays.slice(0, 2)).toEqual([10, 2]);
    // Whole now: a second time nothing is filled in.
    expect((await rebuild(farm, day('2026-04-14'))).again.notes.join()).not.toContain('taken from the lists');
  });

  it('keeps times of day, number formats and colours of notes and own columns, wherever their rows go', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const rows = readNow(farm).rows;
    const headingRow = rows[0]!.sheetRow - 2;
    const own = columnLetters(blockOf(farm).columns + 1);
    farm.book.type('Rotation', `${own}${headingRow}`, 'Cost');
    const cell = (at: number): string => `${own}${rows[at]!.sheetRow}`;
    const range = (a1: string) => farm.book.range('Rotation', a1);
    range(cell(0)).setNumberFormat('$0.00').setValue(12.5).setBackground('#ffccdd').setFontWeight('bold');
    range(cell(1)).setNumberFormat('hh:mm').setValue(0.4375);
    range(cell(2)).setNumberFormat('yyyy-mm-dd hh:mm').setValue(46183.604166666664);
    const note = range(cellUnder(farm.book, 'Note', rows[0]!.sheetRow));
    note.setNumberFormat('@').setValue('1/2').setFontStyle('italic');
    farm.book.type('Rotation', cellUnder(farm.book, 'Moved in', rows[0]!.sheetRow), '2026-04-06');
    farm.book.type(
      'Rotation',
      cellUnder(farm.book, 'Moved in', rows[2]!.sheetRow),
      isoFromDay(rows[2]!.inDay! + 1),
    );
    // A blank row among the moves is left out, and what was below it goes up.
    farm.book.insertRows('Rotation', rows[0]!.sheetRow, 1);
    await rebuild(farm, rows[2]!.inDay! + 20);
    const after = readNow(farm).rows;
    expect(after[0]!.sheetRow).toBe(rows[0]!.sheetRow);
    const rowNow = (at: number): number =>
      after.find((one) => one.group === rows[at]!.group && one.plannedIn === rows[at]!.plannedIn)!.sheetRow;
    const now = (at: number) => range(cellUnder(farm.book, 'Cost', rowNow(at)));
    expect([now(0).getValue(), now(0).getNumberFormat()]).toEqual([12.5, '$0.00']);
    expect([now(0).getBackground(), now(0).getFontWeights()[0]![0]]).toEqual(['#ffccdd', 'bold']);
    expect(now(1).getDisplayValue()).toBe('10:30');
    // 46183 is 2026-06-10; 14:30 is 870 of 1,440 minutes.
    expect(now(2).getDisplayValue()).toBe('2026-06-10 14:30');
    const noteNow = range(cellUnder(farm.book, 'Note', rowNow(0)));
    expect([noteNow.getValue(), noteNow.getFontStyles()[0]![0]]).toEqual(['1/2', 'italic']);
    expect(range(cellUnder(farm.book, 'Cost', rows[0]!.sheetRow + 1)).getBackground()).not.toBe('#ffccdd');
  });

  it('a row of a move that was coloured stays so, blank cells and formulas of ours too, wherever it goes', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const rows = readNow(farm).rows;
    const across = (sheetRow: number) => farm.book.range('Rotation', `A${sheetRow}:R${sheetRow}`);
    across(rows[0]!.sheetRow).setBackground('#ccddff');
    across(rows[3]!.sheetRow).setBackground('#ffddcc');
    farm.book.type(
      'Rotation',
      cellUnder(farm.book, 'Moved in', rows[0]!.sheetRow),
      isoFromDay(rows[0]!.inDay!),
    );
    // A blank row among the moves is left out, and what was below it goes up.
    farm.book.insertRows('Rotation', rows[0]!.sheetRow, 1);
    await rebuild(farm, rows[0]!.inDay! + 1);
    const colours = readNow(farm).rows.map(({ sheetRow }) =>
      [...new Set(across(sheetRow).getBackgrounds()[0])].join(),
    );
    expect(colours[0]).toBe('#ccddff');
    expect(colours.filter((colour) => colour === '#ffddcc')).toHaveLength(1);
    expect(colours.filter((colour) => colour.includes('#ccddff'))).toHaveLength(1);
  });

  it('reads a table that was sorted, and keeps remarks between the rows', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const rows = readNow(farm).rows;
    for (const row of rows.slice(0, 4)) {
      farm.book.type('Rotation', cellUnder(farm.book, 'Moved in', row.sheetRow), isoFromDay(row.inDay!));
    }
    farm.book.insertRows('Rotation', rows[2]!.sheetRow, 1);
    farm.book.type('Rotation', `R${rows[2]!.sheetRow}`, 'gate broken here');
    farm.book.type('Rotation', 'D1', 'my remark by the title');
    const info = blockOf(farm);
    const tab = readTab(farm.book, 'Rotation');
    const first = rows[0]!.sheetRow - 1;
    const last = first + rows.length + 1;
    const mixed = (grid: unknown[][]): unknown[][] => [
      ...grid.slice(0, first),
      ...grid.slice(first, last).reverse(),
      ...grid.slice(last),
    ];
    const sorted = { ...tab, values: mixed(tab.values), formulas: mixed(tab.formulas) } as typeof tab;
    const straight = readRotation(cutBlock(tab, info));
    const read = readRotation(cutBlock(sorted, info));
    expect(read.problems).toEqual([]);
    const farmNow = { ...readFarm(farm, [info]).problem, today: day('2026-05-01') };
    const [a, b] = [rebuildInput(straight, farmNow), rebuildInput(read, farmNow)];
    expect(b.past.map(keyOf)).toEqual(a.past.map(keyOf));
    expect(b.past).toHaveLength(4);
    expect(b.problem).toEqual(a.problem);
    const { kept } = await rebuild(farm, day('2026-05-01'));
    expect(kept).toEqual({
      inPlace: ['D1 (“my remark by the title”)'],
      below: [expect.stringMatching(/^R\d+ \(“gate broken here”\)$/)],
    });
    expect(keptLines(farm)).toEqual(['gate broken here']);
  });

  it('knows a move again where a sort has left the hidden columns behind', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const rows = readNow(farm).rows;
    for (const row of rows.slice(0, 3)) {
      farm.book.type('Rotation', cellUnder(farm.book, 'Moved in', row.sheetRow), isoFromDay(row.inDay!));
      farm.book.type('Rotation', cellUnder(farm.book, 'Note', row.sheetRow), `seen ${row.id}`);
    }
    await rebuild(farm, rows[2]!.inDay! + 1);
    const before = readNow(farm).rows;
    const place = farm.book.range('Rotation', `A${before[0]!.sheetRow}:R${before[2]!.sheetRow}`);
    const [values, formulas] = [place.getValues(), place.getFormulas()];
    // A formula goes along with its references, as in a sort, and answers spill anew: weight, feed, water.
    const ANSWERS = SPILLED.map((spilled) => COLUMNS.findIndex(({ key }) => key === spilled));
    const turned = values.map((row, r) =>
      row.map((value, c) => shiftFormula(formulas[r]![c]!, 2 - 2 * r) || (ANSWERS.includes(c) ? '' : value)),
    );
    place.setValues(turned.reverse());
    const { kept } = await rebuild(farm, rows[2]!.inDay! + 1);
    expect(kept.below).toEqual([]);
    const after = readNow(farm).rows;
    expect(after.map(({ id }) => id)).toEqual(before.map(({ id }) => id));
    for (const row of after.slice(0, 3)) expect(shown(farm, 'Note', row)).toBe(`seen ${row.id}`);
  });

  it('leaves what was typed above the headings, and says what becomes a line below', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const rows = readNow(farm).rows;
    const first = rows[0]!.sheetRow;
    const days = cellUnder(farm.book, 'Days', first).replace(/\d+$/, '');
    const last = rows.at(-1)!.sheetRow;
    farm.book.type('Rotation', 'M1', `=SUM(${days}${first}:${days}${last})`);
    farm.book.type('Rotation', 'A3', 'vet on Mondays');
    const { settings } = readNow(farm);
    const tab = readTab(farm.book, 'Rotation');
    const titleRow = tab.values.findIndex((row) => row[0] === 'Settings of this table') + 1;
    farm.book.type('Rotation', `C${titleRow}`, 'as agreed');
    const longest = tab.values.findIndex((row) => row[0] === 'Longest stay in days') + 1;
    farm.book.type('Rotation', `B${longest}`, `=${settings!.rules.longestStayDays - 2}+2`);
    const typed = {
      inPlace: [`A3 (“vet on Mondays”)`, expect.stringContaining('M1 (=SUM'), `C${titleRow} (“as agreed”)`],
      below: [],
    };
    for (let time = 0; time < 2; time++) {
      const { kept } = await rebuild(farm, rows[0]!.inDay! - 1);
      expect({ ...kept, inPlace: [...kept.inPlace].sort() }).toEqual({
        ...typed,
        inPlace: [typed.inPlace[0], typed.inPlace[2], typed.inPlace[1]],
      });
      const total = rows.reduce((sum, row) => sum + row.days!, 0);
      expect(farm.book.value('Rotation', 'M1')).toBe(total);
      expect(farm.book.range('Rotation', `B${longest}`).getFormula()).toMatch(/^=\d+\+2$/);
      expect(keptLines(farm)).toEqual([]);
    }
  });

  it('keeps formulas of past moves, and as lines those that stand in no move', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const [row, second] = readNow(farm).rows;
    const at = (heading: string, sheetRow = row!.sheetRow): string => cellUnder(farm.book, heading, sheetRow);
    const moved = isoFromDay(row!.inDay!).split('-').map(Number);
    farm.book.type('Rotation', at('Moved in'), `=DATE(${moved.join(',')})`);
    farm.book.type('Rotation', at('Days'), `=${row!.days! - 1}+1`);
    await rebuild(farm, row!.inDay!);
    const after = readNow(farm).rows.find(({ movedIn }) => movedIn === row!.inDay)!;
    const formulaIn = (heading: string): string =>
      farm.book.range('Rotation', at(heading, after.sheetRow)).getFormula();
    expect(formulaIn('Moved in')).toMatch(/^=DATE\(/);
    expect(formulaIn('Days')).toBe(`=${row!.days! - 1}+1`);

    farm.book.type('Rotation', at('Head', after.sheetRow), '=4+6');
    await rebuild(farm, row!.inDay!);
    expect(readNow(farm).rows[0]!.head).toBe(10);
    expect(formulaIn('Head')).toBe('=4+6');
    // Words over a figure of the past stay where they are typed, and are told.
    farm.book.type('Rotation', at('Head', after.sheetRow), 'ten');
    expect((await rebuild(farm, row!.inDay!)).kept.inPlace).toEqual([
      `${at('Head', after.sheetRow)} (“ten”)`,
    ]);
    farm.book.type('Rotation', at('Head', after.sheetRow), '');

    farm.book.insertRows('Rotation', second!.sheetRow, 1);
    farm.book.type('Rotation', at('Note', second!.sheetRow), '=1+1');
    expect((await rebuild(farm, row!.inDay!)).kept.below).toEqual([
      expect.stringMatching(
        new RegExp(`^${at('Note', second!.sheetRow).replace(/\d+/, '')}\\d+ \\(=1\\+1\\)$`),
      ),
    ]);
  });

  it('keeps a season as it was when the lists are made ready for the next one', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const first = readNow(farm).rows[0]!;
    farm.book.type('Rotation', cellUnder(farm.book, 'Moved in', first.sheetRow), isoFromDay(first.inDay!));
    farm.book.type('Rotation', 'M1', 'dry spring');
    const table = (): unknown[][] => withoutMemory(readTab(farm.book, 'Rotation').values);
    const before = table();
    const old = readNow(farm);
    expect(liveMoves(old)).toBe(old.rows.length);
    expect(await runTask(portOf(farm.book), KEEP_FIGURES_TASK)).toMatchObject({ kind: 'written' });
    expect(table()).toEqual(before);
    expect(liveMoves(readNow(farm))).toBe(0);
    const groups = readTab(farm.book, 'Farm').values;
    const head = groups.findIndex((row) => row.includes('Reds')) + 1;
    const column = columnLetters(groups[head - 1]!.indexOf(10) + 1);
    farm.book.type('Farm', `${column}${head}`, '3');
    expect(table()).toEqual(before);
  });

  // 2026-11: areas of past moves became fence costs when two columns of the list had changed places.
  it('takes what a lookup should show from the lists where their columns have changed places', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const [first] = readNow(farm).rows;
    farm.book.type('Rotation', cellUnder(farm.book, 'Moved in', first!.sheetRow), isoFromDay(first!.inDay!));
    const old = readNow(farm);
    const rows = old.rows.map((row) =>
      row.sheetRow === first!.sheetRow ? { ...row, areaSquareMeters: 300_000 } : row,
    );
    const now = { ...readFarm(farm, [blockOf(farm)]).problem, today: first!.inDay! };
    const again = rebuildInput({ ...old, rows }, now);
    expect(again.past[0]!.areaSquareMeters).toBeCloseTo(first!.areaSquareMeters!, 6);
    expect(again.notes.join()).toContain(`area of ${first!.group}, ${first!.paddock}`);
    expect(rebuildInput(old, now).notes.join()).not.toContain('another column');
    const toldOf = (input: typeof again): string => describeChanges(input, planned(input.problem)).join();
    expect(toldOf(again)).not.toContain('kept from now on');
    // A move before it that is frozen with another head: the list has been changed in between.
    const earlier = { ...again.past[0]!, id: 'earlier', lookups: [], inDay: first!.inDay! - 5, head: 99 };
    expect(toldOf({ ...again, past: [earlier, ...again.past] })).toContain(
      `1 move that has happened is kept from now on with ${first!.head} head`,
    );
  });

  it('says what typed things go to another day, which days are set, and which stops count as done', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const reds = readNow(farm).rows.filter((row) => row.group === 'Reds');
    const type = (heading: string, move: number, text: string): void =>
      farm.book.type('Rotation', cellUnder(farm.book, heading, reds[move]!.sheetRow), text);
    const name = (move: number): string => `Reds, ${reds[move]!.paddock} on ${dayWords(reds[move]!.inDay!)}`;
    type('Moved in', 0, isoFromDay(reds[0]!.inDay!));
    type('Moved in', 2, isoFromDay(reds[2]!.inDay! + 2));
    const late = readNow(farm).rows.filter((row) => row.group === 'Reds');
    const { changes } = await rebuild(farm, reds[2]!.inDay! + 2);
    const told = changes.join('\n');
    // The stop in between keeps the days up to the day typed two days late.
    const stayed = late[1]!.days! + 2;
    expect(told).toContain(`${name(1)} (${late[1]!.days} becomes ${stayed})`);
    expect(told).toContain(`Counted as done on the planned day`);
    expect(told).toContain(`typed: ${name(1)}. Where a stop was left out`);
    // What has happened once is no news the next time.
    expect((await rebuild(farm, reds[2]!.inDay! + 2)).changes.join()).not.toMatch(/becomes|Counted as done/);
  });

  it('names the cell of a day that cannot be read, and of settings that make no sense', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const { rows } = readNow(farm);
    const cell = cellUnder(farm.book, 'Moved in', rows[1]!.sheetRow);
    farm.book.type('Rotation', cell, 'early May');
    farm.book.type('Rotation', cellUnder(farm.book, 'Days', rows[2]!.sheetRow), '0');
    const at = readTab(farm.book, 'Rotation').values.findIndex((row) => row[0] === 'Season start') + 1;
    farm.book.type('Rotation', `B${at}`, 'spring');
    expect(readNow(farm).problems.map((problem) => problem.sentence)).toEqual([
      `Rotation!B${at}: Season start must be a date, got "spring"`,
      `Rotation!${cell}: moved in must be a date, or the word skipped, got "early May"`,
    ]);
    // Days that are none are no wish.
    const { days } = rows[2]!;
    expect(readNow(farm).rows[2]).toMatchObject({ typed: [], badDays: '0', days });
  });

  it('names the cell of a day moved in that cannot be meant, and lets intentions stand', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const reds = readNow(farm).rows.filter((row) => row.group === 'Reds');
    const blacks = readNow(farm).rows.filter((row) => row.group === 'Blacks');
    const cellOf = (row: { sheetRow: number }): string => cellUnder(farm.book, 'Moved in', row.sheetRow);
    const type = (row: { sheetRow: number }, iso: string): void =>
      farm.book.type('Rotation', cellOf(row), iso);
    const says = () => readNow(farm).problems.map((problem) => problem.sentence);
    const checkOf = (row: { sheetRow: number }) => {
      const { values } = readTab(farm.book, 'Rotation');
      const heads = values.find((cells) => cells.includes('Planned in'))!;
      return values[row.sheetRow - 1]![heads.indexOf('Check')];
    };
    const [first, second, third] = reds as [(typeof reds)[0], (typeof reds)[0], (typeof reds)[0]];
    // The last day of the season is an intention like any other, though far from the plan of the first moves.
    const lastOfBlacks = blacks[blacks.length - 1]!;
    type(lastOfBlacks, '2026-06-15');
    expect(says()).toEqual([]);
    type(second, '2027-04-06');
    expect(says()).toEqual([
      `Rotation!${cellOf(second)}: moved in must be a day of this season, up to 2026-06-15, got 2027-04-06`,
    ]);
    expect(checkOf(second)).toBe('Moved in after the season end');
    // Moves after the wrong one, typed right, are not blamed for it.
    type(third, isoFromDay(third.inDay!));
    expect(says()).toHaveLength(1);
    expect(checkOf(third)).not.toMatch(/^Moved in/);
    type(second, '2025-04-06');
    expect(says()).toEqual([
      `Rotation!${cellOf(second)}: moved in must be within 60 days of the day planned, ${isoFromDay(second.inDay!)}, got 2025-04-06`,
    ]);
    expect(checkOf(second)).toBe('Moved in over 60 days from plan');

    type(first, '2026-04-01');
    type(second, '2026-04-20');
    type(third, '2026-04-12');
    expect(says()).toEqual([
      `Rotation!${cellOf(third)}: moved in must be no earlier than the group's move above, 2026-04-20, got 2026-04-12`,
    ]);
    expect(checkOf(third)).toBe('Moved in before the move above');
    type(third, '2026-04-20');
    expect(checkOf(third)).not.toMatch(/^Moved in/);
    type(third, '2026-04-25');
    expect(says()).toEqual([]);
    expect(checkOf(third)).not.toMatch(/^Moved in/);
  });

  it('keeps headings of its own that were given another name', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const headings = readNow(farm).rows[0]!.sheetRow - 2;
    const type = (heading: string, text: string): string => {
      const cell = cellUnder(farm.book, heading, headings);
      farm.book.type('Rotation', cell, text);
      return cell;
    };
    const before = readNow(farm);
    const typed = [
      [type('In', 'Day in'), 'Day in'],
      [type('Feed for the stay (lb)', 'Corn'), 'Corn'],
      [type('Moved in', 'Really in'), 'Really in'],
      [type('Note', 'Remarks'), 'Remarks'],
    ] as const;
    const renamed = readNow(farm);
    expect(renamed).toMatchObject({ problems: [], rows: before.rows });
    for (const _ of [1, 2]) {
      await rebuild(farm, day('2026-03-20'));
      for (const [cell, text] of typed) expect(farm.book.value('Rotation', cell)).toBe(text);
    }
    expect(readNow(farm).rows).toHaveLength(before.rows.length);
  });

  it('keeps what was typed over cells of the table there, and tells it, until it is cleared', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const reds = readNow(farm).rows.filter((row) => row.group === 'Reds');
    const cellOf = (heading: string, at: number): string => cellUnder(farm.book, heading, reds[at]!.sheetRow);
    const typed: readonly (readonly [cell: string, text: string])[] = [
      ['A1', 'Our pigs, 2026'],
      ['A2', 'ask Bea before Sunday'],
      [cellOf('Head', 1), '=12-1'],
      [cellOf('Area (ac)', 1), '0.9'],
      [cellOf('Rest before (days)', 2), '12'],
    ];
    const ours = typed.map(([cell]) => farm.book.range('Rotation', cell).getFormula());
    for (const [cell, text] of typed) farm.book.type('Rotation', cell, text);
    const standing = typed.map(([cell]) => farm.book.value('Rotation', cell));
    // In the way of an answer: it moves below, and the function answers again.
    farm.book.type('Rotation', cellOf('Water (gal/day)', 0), '9');
    const first = (await rebuild(farm, day('2026-03-20'))).kept;
    const last = readTab(farm.book, 'Rotation').values.length;
    expect(first.below).toEqual([`${cellUnder(farm.book, 'Water (gal/day)', last)} (9)`]);
    expect(keptLines(farm)).toEqual([`Reds | ${reds[0]!.paddock} | ${isoFromDay(reds[0]!.plannedIn!)} | 9`]);
    for (let time = 0; time < 2; time++) {
      expect(first.inPlace.map((words) => words.replace(/ \(.*/, '')).sort()).toEqual(
        typed.map(([cell]) => cell).sort(),
      );
      expect(typed.map(([cell]) => farm.book.value('Rotation', cell))).toEqual(standing);
      expect(shown(farm, 'Water (gal/day)', reds[0]!)).toBeGreaterThan(9);
      expect((await rebuild(farm, day('2026-03-20'))).kept).toEqual({ inPlace: first.inPlace, below: [] });
    }
    for (const [cell] of typed) farm.book.type('Rotation', cell, '');
    expect((await rebuild(farm, day('2026-03-20'))).kept).toEqual(NOTHING_KEPT);
    expect(typed.map(([cell]) => farm.book.range('Rotation', cell).getFormula())).toEqual(ours);
  });

  it('plans with days and a paddock typed on moves to come, again and again; a paddock in no list stays and is told', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const reds = readNow(farm).rows.filter((row) => row.group === 'Reds');
    const names = TABS.Farm!.slice(1).map(([name]) => String(name));
    const used = new Set(reds.slice(0, 5).map(({ paddock }) => paddock));
    const other = names.find((name) => !used.has(name)) ?? names.find((name) => name !== reds[3]!.paddock)!;
    const days = reds[1]!.days! - 1;
    const type = (heading: string, at: number, text: string): void =>
      farm.book.type('Rotation', cellUnder(farm.book, heading, reds[at]!.sheetRow), text);
    type('Days', 1, String(days));
    type('Paddock', 3, other);
    type('Note', 3, 'vet comes');
    const wishes = [
      { group: 0, day: reds[1]!.inDay, days },
      { group: 0, day: reds[3]!.inDay! - 1, paddock: names.indexOf(other) },
    ];
    for (let time = 0; time < 2; time++) {
      const { again, plan, kept } = await rebuild(farm, day('2026-03-20'));
      expect(again.problem.wishes).toEqual(wishes);
      expect(plan.droppedWishes).toBeUndefined();
      expect(kept).toEqual(NOTHING_KEPT);
      const after = readNow(farm).rows;
      expect(after.find(({ inDay, group }) => group === 'Reds' && inDay === reds[1]!.inDay)).toMatchObject({
        id: reds[1]!.id,
        days,
      });
      const wished = after.find(({ id }) => id === reds[3]!.id)!;
      expect(wished).toMatchObject({ inDay: reds[3]!.inDay! - 1, paddock: other });
      expect(shown(farm, 'Note', wished)).toBe('vet comes');
    }
    const row = readNow(farm).rows.find(({ id }) => id === reds[3]!.id)!;
    farm.book.type('Rotation', cellUnder(farm.book, 'Paddock', row.sheetRow), 'The lane');
    const { again, kept } = await rebuild(farm, day('2026-03-20'));
    expect(again.problem.wishes).toEqual(wishes.slice(0, 1));
    expect([...kept.inPlace, ...kept.below].join()).toContain('The lane');
  });

  it.each([
    ['the first two exchanged', 2, 1],
    ['the first dragged to the right', 1, 6],
    ['the last brought to the front', COLUMNS.length, 1],
    ['one that is empty brought to the front', 1 + COLUMNS.findIndex(({ key }) => key === 'cover'), 1],
  ])('finds its columns by their ids, %s: nothing but their order changes', async (_, from, to) => {
    const farm = await openFarm(TABS, RULES, 'US');
    await buildRotation(farm.book, { rules: RULES, units: 'US' });
    const rows = readNow(farm).rows;
    const type = (heading: string, at: number, text: string): void =>
      farm.book.type('Rotation', cellUnder(farm.book, heading, rows[at]!.sheetRow), text);
    type('Moved in', 0, isoFromDay(rows[0]!.inDay!));
    type('Note', 3, 'vet comes');
    type('Head', 5, '9');
    const byHeading = (): unknown => {
      const moves = standingRotation(readBook(farm.book))!;
      const { values } = moves.block;
      const headings = values[moves.rotation.headRows!]!;
      const order = COLUMNS.map(({ label }) => headings.findIndex((one) => String(one).startsWith(label)));
      return values.map((row) => order.map((c) => row[c]));
    };
    const before = byHeading();
    const sheet = farm.book.spreadsheet.getSheetByName('Rotation')!;
    sheet.moveColumns(sheet.getRange(1, from, 1, 1), to);
    const headings = () => readTab(farm.book, 'Rotation').values[readNow(farm).headRows!]!.slice(0, -1);
    const order = headings();
    for (let time = 0; time < 2; time++) {
      const { kept } = await rebuild(farm, day('2026-03-20'));
      expect(kept).toEqual({
        inPlace: [`${cellUnder(farm.book, 'Head', rows[5]!.sheetRow)} (9)`],
        below: [],
      });
      expect(headings()).toEqual(order);
      expect(byHeading()).toEqual(before);
    }
  });

  it('names what stands below a table that will grow, before the press and after it', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    await buildRotation(farm.book, { rules: RULES, units: 'US', explain: true });
    const { settings } = readNow(farm);
    const { block, area } = standingRotation(readBook(farm.book))!;
    const note = `B${area.rows + 1}`;
    farm.book.type('Rotation', note, 'ask Bea for the ram pump');
    const outlook = () => {
      const book = readBook(farm.book);
      const asked = ROTATION_TASK.read(book, {});
      return ifWritten(ROTATION_TASK, ROTATION_TASK.read(book, ROTATION_TASK.solve!(asked)), book);
    };
    expect(outlook()?.taken).toEqual([]);
    const end = block.values.findIndex(([label]) => String(label).startsWith('Season end')) + 1;
    farm.book.type('Rotation', `B${end}`, isoFromDay(settings!.rules.seasonEnd + 60));
    expect(outlook()?.taken).toEqual([`Rotation!${note}`]);
    const before = readTab(farm.book, 'Rotation');
    expect(await buildRotation(farm.book)).toMatchObject({
      kind: 'refused',
      sentences: [expect.stringContaining(`something stands in ${note}.`)],
    });
    expect(readTab(farm.book, 'Rotation')).toEqual(before);
  });

  it('reads a table of version 0.1.0, without a memory, by its headings and keeps what was typed', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const rows = readNow(farm).rows;
    const type = (heading: string, at: number, text: string): void =>
      farm.book.type('Rotation', cellUnder(farm.book, heading, rows[at]!.sheetRow), text);
    type('Moved in', 0, isoFromDay(rows[0]!.inDay!));
    type('Note', 0, 'wet');
    type('Cover left', 0, '0.8');
    type('Head', 4, '9');
    const { memoryColumn } = standingRotation(readBook(farm.book))!;
    farm.book.spreadsheet.getSheetByName('Rotation')!.deleteColumns(memoryColumn!, 1);
    const { kept } = await rebuild(farm, rows[0]!.inDay! + 1);
    expect(kept).toEqual({ inPlace: [expect.stringMatching(/ \(9\)$/)], below: [] });
    const after = readNow(farm);
    expect(after.rows[0]).toMatchObject({ movedIn: rows[0]!.inDay, cover: 0.8 });
    expect(shown(farm, 'Note', after.rows[0]!)).toBe('wet');
    expect((await rebuild(farm, rows[0]!.inDay! + 1)).kept.below).toEqual([]);
  });

  it.each([
    ['of this kind of memory', 2],
    ['of an earlier kind', 1],
  ])('%s, a table that had fewer columns: what was typed stays under its heading', async (_, version) => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const rows = readNow(farm).rows;
    const type = (heading: string, text: string): void =>
      farm.book.type('Rotation', cellUnder(farm.book, heading, rows[0]!.sheetRow), text);
    type('Moved in', isoFromDay(rows[0]!.inDay!));
    type('Note', 'wet');
    type('Cover left', '0.8');
    // As a version without these columns would have left it, its memory too.
    const sheet = farm.book.spreadsheet.getSheetByName('Rotation')!;
    for (const heading of ['Most head', 'Mean head', 'Herd log']) {
      const { memoryColumn, block } = standingRotation(readBook(farm.book))!;
      const at = block.values.find((cells) => cells.includes('Planned in'))!.indexOf(heading);
      const memory = farm.book.range(
        'Rotation',
        `${columnLetters(memoryColumn!)}1:${columnLetters(memoryColumn!)}${block.values.length}`,
      );
      const without = (text: string): string => {
        const [before = '', marks = ''] = text.split(' | ');
        return `${before} | ${marks
          .split(' ')
          .filter((_, i) => i !== at + 1)
          .join(' ')}`;
      };
      memory.setValues(memory.getValues().map(([text]) => [text === '' ? '' : without(String(text))]));
      sheet.deleteColumns(at + 1, 1);
    }
    const head = `${columnLetters(standingRotation(readBook(farm.book))!.memoryColumn!)}1`;
    const memory = String(farm.book.value('Rotation', head));
    farm.book.range('Rotation', head).setValue(memory.replace(/ROTATION \d+/, `ROTATION ${version}`));
    const { kept } = await rebuild(farm, rows[0]!.inDay! + 1);
    expect(kept).toEqual({ inPlace: [], below: [] });
    const after = readNow(farm);
    expect(after.rows[0]).toMatchObject({ movedIn: rows[0]!.inDay, cover: 0.8 });
    expect(shown(farm, 'Note', after.rows[0]!)).toBe('wet');
    const headings = readTab(farm.book, 'Rotation').values[after.headRows!]!.slice(0, COLUMNS.length);
    expect(headings.map((heading) => String(heading).replace(/ \(.*/, ''))).toEqual(
      COLUMNS.map(({ label }) => label),
    );
  });

  it('lets weight, feed and water of a past move follow a day moved in that is corrected later', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const reds = readNow(farm).rows.filter((row) => row.group === 'Reds');
    farm.book.type('Rotation', cellUnder(farm.book, 'Moved in', reds[0]!.sheetRow), '2026-04-01');
    farm.book.type('Rotation', cellUnder(farm.book, 'Moved in', reds[1]!.sheetRow), '2026-04-07');
    await rebuild(farm, day('2026-04-08'));
    const past = readNow(farm).rows.filter((row) => row.movedIn === day('2026-04-07'))[0]!;
    const weightOf = (): unknown => {
      const { values } = readTab(farm.book, 'Rotation');
      const heads = values.find((cells) => cells.includes('Planned in'))!;
      return values[past.sheetRow - 1]![heads.indexOf('Weight in (lb)')];
    };
    // By hand: weighed at 60 lb on March 28, 1.5 lb a day; 10 days on April 7, 12 days on April 9.
    expect(weightOf()).toBeCloseTo(75, 6);
    farm.book.type('Rotation', cellUnder(farm.book, 'Moved in', past.sheetRow), '2026-04-09');
    expect(weightOf()).toBeCloseTo(78, 6);
    // A list weighed anew changes moves to come, not the past.
    farm.book.type('Farm', 'G2', '2026-04-08');
    expect(weightOf()).toBeCloseTo(78, 6);
    await rebuild(farm, day('2026-04-10'));
    expect(weightOf()).toBeCloseTo(78, 6);
  });

  it('keeps rows of a group that has gone, and counts planned moves as done if asked', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const old = readNow(farm);
    const { problem } = readFarm(farm, [blockOf(farm)]);
    const onlyReds = { ...problem, groups: problem.groups.slice(0, 1) };
    const done = rebuildInput(old, { ...onlyReds, today: day('2026-05-01'), countPlannedAsDone: true });
    expect(new Set(done.past.map((row) => row.group))).toEqual(new Set(['Reds', 'Blacks']));
    expect(done.past.every((row) => row.inDay <= day('2026-05-01'))).toBe(true);
    expect(done.problem.groups).toHaveLength(1);
    const none = rebuildInput(old, { ...problem, today: day('2026-05-01') });
    expect(none.past).toEqual([]);
    expect(none.problem.rules).toEqual(RULES);
  });
});
