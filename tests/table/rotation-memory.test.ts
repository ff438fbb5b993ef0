/** What happens to a rotation table and its lists in which nobody typed: no finding, and the same table again. */
import { expect, it, vi } from 'vitest';
import { COLUMNS } from '../../shared/table/columns';
import { SPILLED } from '../../shared/table/function-cells';
import { standingRotation } from '../../shared/tasks/rotation/rotation-standing';
import { openWorkbook, type StartCell, type Workbook } from '../../src/headless';
import { shownMoves } from '../hard-use/check-table';
import { buildRotation, readBook } from '../hard-use/rotation-task';
import { scriptText } from '../tasks/script-text';
import { NOTHING_KEPT } from '../tasks/sheet-block';
import { withoutMemory } from '../without-memory';

vi.setConfig({ testTimeout: 240_000 });

const START = Date.parse('2026-04-01') / 86_400_000;
const RULES = {
  rest: {
    kind: 'monthly' as const,
    // A column that is put in stands between the months.
    days: [60, 60, 45, 9, 8, 10, 12, 15, 20, 30, 60, 60],
  },
  shortestStayDays: 2,
  longestStayDays: 5,
  moveWeekdays: [true, true, true, true, true, true, true],
  noMoveDays: [],
  seasonStart: START,
  seasonEnd: START + 24,
};
const TABS: Record<string, StartCell[][]> = {
  Farm: [
    ['Paddock', 'Acres', '', 'Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)'],
    ['North', 0.5, '', 'Reds', 10, 60, { d: '2026-03-28' }, 1.5],
    ['South', 0.4, '', 'Blacks', 8, 90, { d: '2026-03-28' }, 1.6],
    ['Oak', 0.6],
    ['Hill', 0.5],
    ['Creek', 0.45],
  ],
};
const MOVE = 6;

function sheet(book: Workbook, name: string) {
  return book.spreadsheet.getSheetByName(name)!;
}

/** The first three moves the other way round, formulas as in a sort. */
function sortMoves(book: Workbook): void {
  const [first] = shownMoves(book, standingRotation(readBook(book))!.area);
  const { area } = standingRotation(readBook(book))!;
  const rows = sheet(book, 'Rotation').getRange(first!.row, 1, 2, area.columns);
  const [values, formulas] = [rows.getValues(), rows.getFormulas()];
  const shifted = (formula: string, by: number): string =>
    formula.replace(/(?<![$\d])(\$?[A-Z]{1,2})(\d+)/g, (_, column, row) => `${column}${Number(row) + by}`);
  const turned = [1, 0].map((r, at) =>
    values[r]!.map((value, c) =>
      formulas[r]![c] ? shifted(formulas[r]![c]!, at - r) : ANSWERS.includes(c) ? '' : value,
    ),
  );
  rows.setValues(turned);
}
const ANSWERS = SPILLED.map((spilled) => COLUMNS.findIndex(({ key }) => key === spilled));

const CHANGES: readonly (readonly [string, (book: Workbook) => void])[] = [
  ['nothing', () => undefined],
  ['a row above the lists', (book) => book.insertRows('Farm', 1, 2)],
  ['a column inside a list', (book) => sheet(book, 'Farm').insertColumnsBefore(5, 1)],
  ['a row above the table', (book) => book.insertRows('Rotation', 1, 1)],
  ['a column left of the table', (book) => sheet(book, 'Rotation').insertColumnsBefore(1, 1)],
  ['a blank row among the moves', (book) => book.insertRows('Rotation', MOVE + 1, 1)],
  ['a blank column inside the table', (book) => sheet(book, 'Rotation').insertColumnsBefore(6, 1)],
  ['moves sorted', sortMoves],
  ['the tab renamed', (book) => void sheet(book, 'Rotation').setName('Moves 2026')],
  ['the tab of the lists renamed', (book) => void sheet(book, 'Farm').setName('Land')],
];

it.each(CHANGES)('%s: nothing to tell, and the same table is written', async (_, change) => {
  const book = await openWorkbook({ tabs: TABS, codeJs: await scriptText(), today: '2026-04-01' });
  expect(await buildRotation(book, { rules: RULES })).toMatchObject({ kind: 'written' });
  const table = () => {
    const { area } = standingRotation(readBook(book))!;
    const shown = book.shownValues(area.tab).slice(area.row - 1);
    // Where the lists stand is said in words.
    return withoutMemory(shown)
      .map((row) => row.filter((cell) => cell !== ''))
      .filter(([first]) => !/^(Paddock|Group) list$/.test(String(first)));
  };
  const before = table();
  change(book);
  const again = await buildRotation(book);
  expect(again).toMatchObject({ kind: 'written', done: { kept: NOTHING_KEPT } });
  expect(again).toMatchObject({ changes: ['The rest of the plan stays as it is.'] });
  expect(table()).toEqual(before);
});
