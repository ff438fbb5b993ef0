import { describe, expect, it, vi } from 'vitest';
import { columnLetters } from '../../shared/block/a1';
import { cutBlock } from '../../shared/block/read-block';
import type { BlockInfo } from '../../shared/contract';
import { type Day, dayFromIso, isoFromDay } from '../../shared/core/calendar/day';
import type { PlanRules } from '../../shared/plan/model';
import { blockFingerprint } from '../../shared/table/block-fingerprint';
import { describeChanges } from '../../shared/table/describe-changes';
import { frozenRotation, liveMoves } from '../../shared/table/frozen-rotation';
import { readRotation } from '../../shared/table/read-rotation';
import { rebuildInput } from '../../shared/table/rebuild-input';
import { rotationBlock } from '../../shared/table/rotation-block';
import { widenedBlock } from '../../shared/table/widened-block';
import type { StartCell } from '../../src/preview/headless';
import {
  ask,
  BLOCK_NAME,
  buildTable,
  type FarmSheet,
  openFarm,
  planned,
  readFarm,
  readTab,
  writeBlock,
} from './farm-in-sheet';

// The engine's first evaluation takes seconds on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

const day = (iso: string): number => dayFromIso(iso)!;
const RULES: PlanRules = {
  rest: { kind: 'fixed', days: 20 },
  shortestStayDays: 3,
  longestStayDays: 6,
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
  return readRotation(readTab(farm.book, 'Rotation'), blockOf(farm));
}

/** Cell name by heading and sheet row. */
function cellIn(farm: FarmSheet, heading: string, sheetRow: number): string {
  const row = readTab(farm.book, 'Rotation').values.find((cells) => cells.includes('Planned in'))!;
  return `${columnLetters(row.indexOf(heading) + 1)}${sheetRow}`;
}

function rebuild(farm: FarmSheet, today: Day) {
  const named = blockOf(farm);
  const tab = readTab(farm.book, 'Rotation');
  const { info } = widenedBlock(tab, named, []);
  const old = readRotation(tab, info);
  expect(old.problems).toEqual([]);
  const now = readFarm(farm, [info]);
  const again = rebuildInput(old, { ...now.problem, today });
  const plan = planned(again.problem);
  const changes = describeChanges(again, plan);
  const block = rotationBlock({
    ...again,
    plan,
    settings: old.settings!,
    sources: now.sources,
    corner: { tab: info.tab, row: info.row, column: info.column },
    warnings: again.notes,
  });
  const expects = expectsOf(farm, info);
  writeBlock(farm.book, { ...block, expects }, { at: 'own', area: info });
  return { old, again, plan, changes };
}

/** What the script must find in the sheet when it writes over the table. */
function expectsOf(farm: FarmSheet, info: BlockInfo = blockOf(farm)): string {
  const { values, formulas } = cutBlock(readTab(farm.book, 'Rotation'), info);
  return blockFingerprint(values, formulas);
}

const keyOf = (row: { group: string; paddock: string; inDay?: Day }) => [row.group, row.paddock, row.inDay];

describe('rebuild', () => {
  it('changes nothing where nothing happened', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const before = readTab(farm.book, 'Rotation');
    const { changes } = rebuild(farm, day('2026-03-20'));
    expect(changes).toEqual(['The rest of the plan stays as it is.']);
    expect(readTab(farm.book, 'Rotation')).toEqual(before);
  });

  it('keeps the past and everything typed, and plans on from where the pigs stand', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const first = readNow(farm);
    const reds = first.rows.filter((row) => row.group === 'Reds');
    const blacks = first.rows.filter((row) => row.group === 'Blacks');
    const type = (heading: string, row: { sheetRow: number }, text: string): void =>
      farm.book.type('Rotation', cellIn(farm, heading, row.sheetRow), text);
    type('Moved in', reds[0]!, '2026-04-01');
    type('Moved in', reds[1]!, isoFromDay(reds[1]!.inDay! + 4));
    type('Moved in', blacks[0]!, '2026-04-02');
    type('Cover left', reds[0]!, '0.8');
    type('Note', reds[1]!, '=1+1');
    type('Note', blacks[0]!, 'wet, water line froze');
    type('Note', reds[4]!, 'vet comes');
    type('Head', reds[5]!, '9');
    const today = reds[1]!.inDay! + 5;
    const { old, again, plan, changes } = rebuild(farm, today);
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
      /^Blacks: \d+ moves? planned before today ha(s|ve) no day moved in; the new plan .*still stands/,
    );

    const after = readNow(farm);
    expect(after.problems).toEqual([]);
    expect(after.settings).toEqual(old.settings);
    const past = after.rows.filter((row) => row.movedIn !== undefined);
    expect(past.map(keyOf)).toEqual(again.past.map(keyOf));
    expect(past[0]!.cover.value).toBe(0.8);
    expect(past[1]!.note.value).toBe('wet, water line froze');
    expect(past[2]!.note).toMatchObject({ value: 2, formula: '=1+1' });
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
    // The note on a future move stands at that move or in a line below the table.
    const notes = after.rows.map((row) => row.note.value);
    expect(notes.includes('vet comes') || after.keptLines.some((line) => line.includes('vet comes'))).toBe(
      true,
    );
    // So does the head count that was typed over a look-up.
    const nine = after.rows.find(({ head }) => head === 9);
    const line = `Reds, ${reds[5]!.paddock} ${isoFromDay(reds[5]!.inDay! + 4)}: head 9`;
    expect(nine !== undefined || after.keptLines.includes(line)).toBe(true);
    // Once more, the same day: nothing to change.
    expect(rebuild(farm, today).changes).toEqual([
      'The rest of the plan stays as it is.',
      ...(nine ? [expect.stringContaining('(head 9). Clear a cell and build anew')] : []),
    ]);
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
    const order = readNow(farm).own!.columns;
    expect(order.slice(4, 6)).toEqual([{ key: 'days' }, { extra: 0 }]);
    farm.book.type('Rotation', cellIn(farm, 'Moved in', rows[0]!.sheetRow), '2026-04-03');
    rebuild(farm, day('2026-04-05'));
    const after = readNow(farm);
    expect(after.own!.extraColumns).toEqual([{ heading: 'Mine' }]);
    expect(after.own!.columns).toEqual(order);
    const cells = after.rows.map((row) => row.extras[0]!);
    for (const [i, cell] of cells.entries()) {
      if (cell.value !== 'seen fox') expect(cell.value, cell.formula).toBe(after.rows[i]!.days! * 2);
    }
    const kept =
      cells.some((cell) => cell.value === 'seen fox') || after.keptLines.join().includes('seen fox');
    expect(kept).toBe(true);
  });

  // 2026-11: the deleted column was put back in its old place, and own formulas then counted its neighbour.
  it('moves no column: a deleted one comes back at the right end, a blank one stays', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const sheet = farm.book.spreadsheet.getSheetByName('Rotation')!;
    const [first] = readNow(farm).rows;
    const headingRow = first!.sheetRow - 2;
    const letterOf = (heading: string): string => cellIn(farm, heading, headingRow).replace(/\d+$/, '');
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
    farm.book.type('Rotation', cellIn(farm, 'Moved in', first!.sheetRow), isoFromDay(first!.inDay!));
    const before = letterOf('Area (ac)');
    const { changes } = rebuild(farm, first!.inDay!);
    expect(changes.join()).toContain('come back at its right end, where no other column moves: “Rest due”.');
    expect(letterOf('Area (ac)')).toBe(before);
    expect(farm.book.value('Farm', 'L1')).toBe(sum);
    const after = readNow(farm);
    expect(after.own!.columns.slice(-2)).toEqual([{ extra: 1 }, { key: 'restDue' }]);
    expect(after.own!.columns[5]).toEqual({ extra: 0 });
    const again = after.rows[0]!;
    expect(again.extras[1]!.value).toBeCloseTo((again.areaSquareMeters! / 4046.8564224) * 2, 6);
    const due = Number(
      farm.book.value('Rotation', cellIn(farm, 'Rest due (days)', after.rows.at(-1)!.sheetRow)),
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
    farm.book.type('Rotation', cellIn(farm, 'Moved in', rows[0]!.sheetRow), '2026-04-06');
    farm.book.type('Rotation', cellIn(farm, 'Moved in', rows[2]!.sheetRow), isoFromDay(rows[2]!.inDay! + 1));
    const { again } = rebuild(farm, rows[2]!.inDay! + 20);
    const after = readNow(farm);
    const typed = (row: { extras: readonly { value: unknown }[] }) => row.extras.map(({ value }) => value);
    const byKey = (
      rows: readonly { group: string; paddock: string; plannedIn?: Day }[],
      one: (typeof rows)[0],
    ) => rows.find((row) => row.group === one.group && row.plannedIn === one.plannedIn);
    expect(after.own!.extraColumns.map(({ heading }) => heading)).toEqual(['Who moved']);
    expect(typed(byKey(after.rows, rows[0]!) as (typeof rows)[0])).toEqual(['Sam']);
    expect(typed(byKey(after.rows, rows[2]!) as (typeof rows)[0])).toEqual(['Ann']);
    // What stands beside our sentences stays there, and the headings too, however much there is to say.
    expect(farm.book.value('Rotation', `${beside}${rows[0]!.sheetRow - 3}`)).toBe('far right of the hint');
    expect(after.keptLines).toEqual([]);
    expect(again.notes.length).toBeGreaterThan(0);
    expect(farm.book.value('Rotation', `A${headingRow - 1}`)).toContain(again.notes.at(-1));
    expect(after.rows[0]!.sheetRow - 2).toBe(headingRow);
    expect(sheet.getFrozenRows()).toBe(headingRow);
  });

  it('counts feed by the days really stayed, and fills in a move that was added by hand', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const reds = readNow(farm).rows.filter((row) => row.group === 'Reds');
    const [first, second, third] = reds as [(typeof reds)[0], (typeof reds)[0], (typeof reds)[0]];
    const type = (heading: string, sheetRow: number, text: string): void =>
      farm.book.type('Rotation', cellIn(farm, heading, sheetRow), text);
    type('Moved in', first.sheetRow, '2026-04-01');
    type('Moved in', second.sheetRow, '2026-04-11');
    const feedOf = (sheetRow: number): number =>
      Number(farm.book.value('Rotation', cellIn(farm, 'Feed for the stay (lb)', sheetRow)));
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
    const { again } = rebuild(farm, day('2026-04-14'));
    expect(
      again.notes.filter((note) =>
        note.startsWith('Head, weight or area was missing in reds, Hay 2026-04-13 and is taken'),
      ),
    ).toHaveLength(1);
    const after = readNow(farm);
    const added = after.rows.find((row) => row.paddock === 'Hay' && row.movedIn === day('2026-04-13'))!;
    expect(added).toMatchObject({ head: 10, growthDays: 16 });
    expect(feedOf(added.sheetRow)).toBeGreaterThan(0);
    const stays = after.rows.filter((row) => row.movedIn !== undefined).map(({ days }) => days);
    expect(stays.slice(0, 2)).toEqual([10, 2]);
    // Whole now: a second time nothing is filled in.
    expect(rebuild(farm, day('2026-04-14')).again.notes.join()).not.toContain('taken from the lists');
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
    const note = range(cellIn(farm, 'Note', rows[0]!.sheetRow));
    note.setNumberFormat('@').setValue('1/2').setFontStyle('italic');
    farm.book.type('Rotation', cellIn(farm, 'Moved in', rows[0]!.sheetRow), '2026-04-06');
    farm.book.type('Rotation', cellIn(farm, 'Moved in', rows[2]!.sheetRow), isoFromDay(rows[2]!.inDay! + 1));
    // A blank row among the moves is left out, and what was below it goes up.
    farm.book.insertRows('Rotation', rows[0]!.sheetRow, 1);
    rebuild(farm, rows[2]!.inDay! + 20);
    const after = readNow(farm).rows;
    expect(after[0]!.sheetRow).toBe(rows[0]!.sheetRow);
    const rowNow = (at: number): number =>
      after.find((one) => one.group === rows[at]!.group && one.plannedIn === rows[at]!.plannedIn)!.sheetRow;
    const now = (at: number) => range(`${own}${rowNow(at)}`);
    expect([now(0).getValue(), now(0).getNumberFormat()]).toEqual([12.5, '$0.00']);
    expect([now(0).getBackground(), now(0).getFontWeights()[0]![0]]).toEqual(['#ffccdd', 'bold']);
    expect(now(1).getDisplayValue()).toBe('10:30');
    // 46183 is 2026-06-10; 14:30 is 870 of 1,440 minutes.
    expect(now(2).getDisplayValue()).toBe('2026-06-10 14:30');
    const noteNow = range(cellIn(farm, 'Note', rowNow(0)));
    expect([noteNow.getValue(), noteNow.getFontStyles()[0]![0]]).toEqual(['1/2', 'italic']);
    expect(range(`${own}${rows[0]!.sheetRow + 1}`).getBackground()).not.toBe('#ffccdd');
  });

  it('a row of a move that was coloured stays so, blank cells and formulas of ours too, wherever it goes', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const rows = readNow(farm).rows;
    const across = (sheetRow: number) => farm.book.range('Rotation', `A${sheetRow}:Q${sheetRow}`);
    across(rows[0]!.sheetRow).setBackground('#ccddff');
    across(rows[3]!.sheetRow).setBackground('#ffddcc');
    farm.book.type('Rotation', cellIn(farm, 'Moved in', rows[0]!.sheetRow), isoFromDay(rows[0]!.inDay!));
    // A blank row among the moves is left out, and what was below it goes up.
    farm.book.insertRows('Rotation', rows[0]!.sheetRow, 1);
    rebuild(farm, rows[0]!.inDay! + 1);
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
      farm.book.type('Rotation', cellIn(farm, 'Moved in', row.sheetRow), isoFromDay(row.inDay!));
    }
    farm.book.insertRows('Rotation', rows[2]!.sheetRow, 1);
    farm.book.type('Rotation', `Q${rows[2]!.sheetRow}`, 'gate broken here');
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
    const straight = readRotation(tab, info);
    const read = readRotation(sorted, info);
    expect(read.problems).toEqual([]);
    const farmNow = { ...readFarm(farm, [info]).problem, today: day('2026-05-01') };
    const [a, b] = [rebuildInput(straight, farmNow), rebuildInput(read, farmNow)];
    expect(b.past.map(keyOf)).toEqual(a.past.map(keyOf));
    expect(b.past).toHaveLength(4);
    expect(b.problem).toEqual(a.problem);
    expect(read.strays.join()).toContain('gate broken here');
    expect(b.keptLines).toEqual(b.newLines);
    expect(read.own!.headCells.map(({ value }) => value)).toEqual(['my remark by the title']);
  });

  it('leaves what was typed above the headings, and says what becomes a line below', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const rows = readNow(farm).rows;
    const first = rows[0]!.sheetRow;
    const days = cellIn(farm, 'Days', first).replace(/\d+$/, '');
    const last = rows.at(-1)!.sheetRow;
    farm.book.type('Rotation', 'M1', `=SUM(${days}${first}:${days}${last})`);
    farm.book.type('Rotation', 'A3', 'vet on Mondays');
    const { settings } = readNow(farm);
    const tab = readTab(farm.book, 'Rotation');
    const titleRow = tab.values.findIndex((row) => row[0] === 'Settings of this table') + 1;
    farm.book.type('Rotation', `C${titleRow}`, 'as agreed');
    const longest = tab.values.findIndex((row) => row[0] === 'Longest stay in days') + 1;
    farm.book.type('Rotation', `B${longest}`, `=${settings!.rules.longestStayDays - 2}+2`);
    const { changes } = rebuild(farm, rows[0]!.inDay! - 1);
    expect(changes.join('\n')).toContain('Kept in a line below the table: Row 3: vet on Mondays.');
    expect(changes.join('\n')).toContain(`Kept in a line below the table: Row ${titleRow}: as agreed.`);
    const total = rows.reduce((sum, row) => sum + row.days!, 0);
    expect(farm.book.value('Rotation', 'M1')).toBe(total);
    const after = readNow(farm);
    expect(after.keptLines).toEqual(['Row 3: vet on Mondays', `Row ${titleRow}: as agreed`]);
    expect(after.own!.settingCells.get('longestStay')![0]!.formula).toMatch(/^=\d+\+2$/);
    // Kept lines are no news the next time.
    expect(rebuild(farm, rows[0]!.inDay! - 1).changes.join()).not.toContain('Kept in a line');
  });

  it('keeps formulas of past moves, and as lines those that stand in no move', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const [row, second] = readNow(farm).rows;
    const at = (heading: string, sheetRow = row!.sheetRow): string => cellIn(farm, heading, sheetRow);
    const moved = isoFromDay(row!.inDay!).split('-').map(Number);
    farm.book.type('Rotation', at('Moved in'), `=DATE(${moved.join(',')})`);
    farm.book.type('Rotation', at('Days'), `=${row!.days! - 1}+1`);
    rebuild(farm, row!.inDay!);
    const after = readNow(farm).rows.find(({ movedIn }) => movedIn === row!.inDay)!;
    expect(after.ownFormulas.movedIn!.formula).toMatch(/^=DATE\(/);
    expect(after.ownFormulas.days!.formula).toBe(`=${row!.days! - 1}+1`);

    farm.book.type('Rotation', at('Head', after.sheetRow), '=4+6');
    rebuild(farm, row!.inDay!);
    expect(readNow(farm).rows[0]).toMatchObject({ head: 10, ownFormulas: { head: { formula: '=4+6' } } });
    farm.book.type('Rotation', at('Head', after.sheetRow), 'ten');
    farm.book.type('Rotation', at('Planned in', after.sheetRow), 'Easter');
    expect(readNow(farm).problems.map(({ sentence }) => sentence)).toEqual([
      `Rotation!${at('Planned in', after.sheetRow)}: Planned in must be a date, got "Easter"`,
      `Rotation!${at('Head', after.sheetRow)}: Head must be a number, got "ten"`,
    ]);
    farm.book.type('Rotation', at('Head', after.sheetRow), '10');
    farm.book.type('Rotation', at('Planned in', after.sheetRow), isoFromDay(row!.inDay!));

    farm.book.insertRows('Rotation', second!.sheetRow, 1);
    farm.book.type('Rotation', at('Note', second!.sheetRow), '=1+1');
    const read = readNow(farm);
    expect(read.problems).toEqual([]);
    expect(read.strays).toEqual([`${at('Note', second!.sheetRow)}: =1+1 (2)`]);
  });

  it('keeps a season as it was when the lists are made ready for the next one', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const first = readNow(farm).rows[0]!;
    farm.book.type('Rotation', cellIn(farm, 'Moved in', first.sheetRow), isoFromDay(first.inDay!));
    farm.book.type('Rotation', 'M1', 'dry spring');
    const table = (): unknown[][] => readTab(farm.book, 'Rotation').values.map((row) => [...row]);
    const before = table();
    const info = blockOf(farm);
    const old = readNow(farm);
    expect(liveMoves(old)).toBe(old.rows.length);
    const firstColumn = before.map(([cell]) => String(cell));
    const input = frozenRotation(old, firstColumn, readFarm(farm, [info]).problem)!;
    const expects = expectsOf(farm);
    const corner = { tab: info.tab, row: info.row, column: info.column };
    writeBlock(farm.book, { ...rotationBlock({ ...input, corner }), expects }, { at: 'own' });
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
    farm.book.type('Rotation', cellIn(farm, 'Moved in', first!.sheetRow), isoFromDay(first!.inDay!));
    const old = readNow(farm);
    const rows = old.rows.map((row) =>
      row.sheetRow === first!.sheetRow ? { ...row, areaSquareMeters: 300_000 } : row,
    );
    const now = { ...readFarm(farm, [blockOf(farm)]).problem, today: first!.inDay! };
    const again = rebuildInput({ ...old, rows }, now);
    expect(again.past[0]!.areaSquareMeters).toBeCloseTo(first!.areaSquareMeters!, 6);
    expect(again.notes.join()).toContain(`area of ${first!.group}, ${first!.paddock}`);
    expect(rebuildInput(old, now).notes.join()).not.toContain('another column');
    const told = describeChanges(again, planned(again.problem)).join();
    expect(told).toContain(`1 move that has happened is kept from now on with ${first!.head} head`);
  });

  it('says what typed things go to another day, which days are set, and which stops count as done', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const reds = readNow(farm).rows.filter((row) => row.group === 'Reds');
    const type = (heading: string, move: number, text: string): void =>
      farm.book.type('Rotation', cellIn(farm, heading, reds[move]!.sheetRow), text);
    const name = (move: number): string => `Reds, ${reds[move]!.paddock} ${isoFromDay(reds[move]!.inDay!)}`;
    type('Moved in', 0, isoFromDay(reds[0]!.inDay!));
    type('Moved in', 2, isoFromDay(reds[2]!.inDay! + 2));
    const late = readNow(farm).rows.filter((row) => row.group === 'Reds');
    const { changes } = rebuild(farm, reds[2]!.inDay! + 2);
    const told = changes.join('\n');
    // The stop in between keeps the days up to the day typed two days late.
    const stayed = late[1]!.days! + 2;
    expect(told).toContain(`${name(1)} (${late[1]!.days} becomes ${stayed})`);
    expect(told).toContain(`Counted as done on the planned day`);
    expect(told).toContain(`typed: ${name(1)}. Delete the row`);
    // What has happened once is no news the next time.
    expect(rebuild(farm, reds[2]!.inDay! + 2).changes.join()).not.toMatch(/becomes|Counted as done/);
  });

  it('keeps as a line what was typed where the lists say nothing, and names that are in no list', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const rows = readNow(farm).rows;
    const at = (heading: string, move: number): string => cellIn(farm, heading, rows[move]!.sheetRow);
    farm.book.type('Rotation', at('Open until', 1), '2026-08-01');
    farm.book.type('Rotation', at('Used before', 2), 'never');
    farm.book.type('Rotation', at('Group', 3), 'Reds and the boar');
    const { again } = rebuild(farm, rows[0]!.inDay! - 1);
    const lines = again.newLines.join('\n');
    expect(lines).toContain('open until 2026-08-01 typed over');
    expect(lines).toContain('used before never typed over');
    expect(lines).toContain('Group “Reds and the boar” not in the lists, planned anew');
    expect(again.newLines).toHaveLength(3);
    expect(readNow(farm).keptLines).toEqual(again.newLines);
  });

  it('names the cell of a day that cannot be read, and of settings that make no sense', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const { rows } = readNow(farm);
    const cell = cellIn(farm, 'Moved in', rows[1]!.sheetRow);
    farm.book.type('Rotation', cell, 'early May');
    farm.book.type('Rotation', cellIn(farm, 'Days', rows[2]!.sheetRow), '0');
    const at = readTab(farm.book, 'Rotation').values.findIndex((row) => row[0] === 'Season start') + 1;
    farm.book.type('Rotation', `B${at}`, 'spring');
    expect(readNow(farm).problems.map((problem) => problem.sentence)).toEqual([
      `Rotation!B${at}: Season start must be a date, got "spring"`,
      `Rotation!${cell}: moved in must be a date, got "early May"`,
    ]);
    // Days that are none are planned anew, and what was typed stays as a line.
    expect(readNow(farm).rows[2]!.typedOver).toMatchObject([{ key: 'days', words: 'days 0', stays: false }]);
  });

  it('names the cell of a day moved in that cannot be meant, and lets intentions stand', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const reds = readNow(farm).rows.filter((row) => row.group === 'Reds');
    const blacks = readNow(farm).rows.filter((row) => row.group === 'Blacks');
    const cellOf = (row: { sheetRow: number }): string => cellIn(farm, 'Moved in', row.sheetRow);
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
      const cell = cellIn(farm, heading, headings);
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
    expect(readNow(farm)).toMatchObject({ problems: [], rows: before.rows });
    for (const _ of [1, 2]) {
      rebuild(farm, day('2026-03-20'));
      for (const [cell, text] of typed) expect(farm.book.value('Rotation', cell)).toBe(text);
    }
    expect(readNow(farm).rows).toHaveLength(before.rows.length);
  });

  it('keeps what was typed over a formula in its cell, or as a line where the plan is made anew', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const reds = readNow(farm).rows.filter((row) => row.group === 'Reds');
    const cellOf = (heading: string, at: number): string => cellIn(farm, heading, reds[at]!.sheetRow);
    farm.book.type('Rotation', cellOf('Out', 1), '2026-04-09');
    farm.book.type('Rotation', cellOf('Rest before (days)', 2), '12');
    farm.book.type('Rotation', cellOf('Rest before (days)', 3), '12');
    farm.book.type('Rotation', cellOf('Water (gal/day)', 0), '9');
    expect(readNow(farm).problems).toEqual([]);
    farm.book.type('Rotation', 'A1', 'Our pigs, 2026');
    farm.book.type('Rotation', 'A2', 'ask Bea before Sunday');
    farm.book.type('Rotation', cellOf('Planned in', 0), '2026-04-03');
    farm.book.type('Rotation', cellOf('Area (ac)', 1), '0.9');
    farm.book.type('Rotation', cellOf('Head', 1), '=12-1');
    rebuild(farm, day('2026-03-20'));
    const after = readNow(farm);
    const staying = after.rows.flatMap(({ typedOver }) => typedOver.map(({ words }) => words));
    expect(staying).toEqual(['head =12-1', 'area 0.9', 'rest before 12', 'rest before 12']);
    expect(farm.book.value('Rotation', 'A1')).toBe('Our pigs, 2026');
    expect(after.keptLines).toEqual([
      'Row 2: ask Bea before Sunday',
      `Reds, ${reds[0]!.paddock} 2026-04-03: water 9, planned in 2026-04-03 typed over, the table’s own stands again`,
      expect.stringMatching(/^Reds, .*: out 2026-04-09 typed over, the table’s own stands again$/),
    ]);
    // Cleared, the formulas stand again.
    for (const { sheetRow, typedOver } of after.rows)
      for (const { cell } of typedOver)
        farm.book.type('Rotation', `${columnLetters(cell.from![1] + 1)}${sheetRow}`, '');
    rebuild(farm, day('2026-03-20'));
    expect(readNow(farm).rows.flatMap(({ typedOver }) => typedOver)).toEqual([]);
    expect(readNow(farm).rows.every(({ head }) => head === 10 || head === 8)).toBe(true);
  });

  it('lets weight, feed and water of a past move follow a day moved in that is corrected later', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const reds = readNow(farm).rows.filter((row) => row.group === 'Reds');
    farm.book.type('Rotation', cellIn(farm, 'Moved in', reds[0]!.sheetRow), '2026-04-01');
    farm.book.type('Rotation', cellIn(farm, 'Moved in', reds[1]!.sheetRow), '2026-04-07');
    rebuild(farm, day('2026-04-08'));
    const past = readNow(farm).rows.filter((row) => row.movedIn === day('2026-04-07'))[0]!;
    const weightOf = (): unknown => {
      const { values } = readTab(farm.book, 'Rotation');
      const heads = values.find((cells) => cells.includes('Planned in'))!;
      return values[past.sheetRow - 1]![heads.indexOf('Weight in (lb)')];
    };
    // By hand: weighed at 60 lb on March 28, 1.5 lb a day; 10 days on April 7, 12 days on April 9.
    expect(weightOf()).toBeCloseTo(75, 6);
    farm.book.type('Rotation', cellIn(farm, 'Moved in', past.sheetRow), '2026-04-09');
    expect(weightOf()).toBeCloseTo(78, 6);
    // A list weighed anew changes moves to come, not the past.
    farm.book.type('Farm', 'G2', '2026-04-08');
    expect(weightOf()).toBeCloseTo(78, 6);
    rebuild(farm, day('2026-04-10'));
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
