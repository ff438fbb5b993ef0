/** The judges judged: what they have to notice they do notice, one small damage at a time. */
import { describe, expect, it } from 'vitest';
import { openWorkbook, type StartCell, type Workbook } from '../../src/headless';
import { scriptText } from '../tasks/script-text';
import { shownMoves, tableFaults } from './check-table';
import { buildRotation, type Outcome } from './rotation-task';
import { differences, sheetPicture } from './sheet-picture';

const TABS: Record<string, StartCell[][]> = {
  Farm: [
    ['Paddock', 'Acres', '', 'Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)', 'Until'],
    ['North', 0.5, '', 'Reds', 10, 60, { d: '2026-03-28' }, 1.5, { d: '2026-05-20' }],
    ['South', 0.4],
    ['Oak', 0.6],
    ['Hill', '=B4+0.1'],
  ],
};

async function built(): Promise<{ workbook: Workbook; outcome: Extract<Outcome, { kind: 'written' }> }> {
  const workbook = await openWorkbook({ tabs: TABS, codeJs: await scriptText(), today: '2026-04-01' });
  const outcome = await buildRotation(workbook);
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
  return { workbook, outcome };
}

describe('the judge of the table', () => {
  it.each([
    ['A', 'Greens', /group is "Greens"/],
    ['B', 'Elsewhere', /paddock is "Elsewhere"/],
    ['C', '2026-04-09', /planned in is/],
    ['E', '1', /days is 1/],
    ['G', '11', /head is 11/],
    ['J', '3', /density is 3/],
    ['K', '3', /load is 3/],
    ['L', '99', /rest before is 99/],
    ['N', 'Over the ground limit', /check is/],
  ])('notices a wrong cell in column %s', async (column, text, says) => {
    const { workbook, outcome } = await built();
    const { info, problem, plan, units } = outcome;
    expect(tableFaults(workbook, info, problem, plan, units)).toEqual([]);
    workbook.type(info.tab, `${column}${shownMoves(workbook, info)[1]!.row}`, text);
    expect(tableFaults(workbook, info, problem, plan, units).join('\n')).toMatch(says);
  });
});

describe('the picture of everything else', () => {
  it('notices a value, a formula, a format, a look, a note, a hidden row and a merge', async () => {
    const { workbook, outcome } = await built();
    const { info } = outcome;
    const { book } = workbook.state;
    const range = (a1: string) => workbook.range('Farm', a1);
    const damages: (() => void)[] = [
      () => workbook.type('Farm', 'A2', 'North '),
      () => workbook.type('Farm', 'B5', '=B4+0.2'),
      () => range('B2').setNumberFormat('0.00'),
      () => range('J20').setBackground('#ff0000'),
      () => range('A3').setNote('wet'),
      () =>
        book.must({ type: 'HIDE_COLUMNS_ROWS', sheetId: book.idOf('Farm'), dimension: 'ROW', elements: [3] }),
      () => range('K1:L1').merge(),
      () => workbook.type('Farm', 'Z900', 'x'),
    ];
    for (const damage of damages) {
      const before = sheetPicture(workbook, info);
      damage();
      expect(differences(before, sheetPicture(workbook, info)).length, damage.toString()).toBeGreaterThan(0);
    }
    const before = sheetPicture(workbook, info);
    workbook.type(info.tab, `D${shownMoves(workbook, info)[0]!.row}`, '2026-04-02');
    expect(differences(before, sheetPicture(workbook, info))).toEqual([]);
  });
});
