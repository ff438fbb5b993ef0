/** A blank copy for somebody else: through the real script, over a farm with every block. Never in the original. */
import { describe, expect, it } from 'vitest';
import type { WireCell } from '../../../shared/contract';
import { readBook } from '../../../shared/tasks/run-task';
import { blankCopy, blankRequest } from '../../../shared/tasks/share/blank-copy';
import { markTask } from '../../../shared/tasks/share/mark-task';
import { isMark } from '../../../shared/tasks/share/original-mark';
import { standingOf } from '../../../shared/tasks/standing';
import { LOG_BLOCK } from '../../../shared/tasks/training/log-block';
import { readyLookup } from '../../../shared/tasks/training/ready-lookup';
import { openWorkbook, portOf, type Workbook } from '../../../src/headless';
import { buildEveryBlock, write } from '../../hard-use/every-block';
import { asked, buildRotation } from '../../hard-use/rotation-task';
import { differences, sheetPicture } from '../../hard-use/sheet-picture';
import { scriptText } from '../script-text';

const LANES: WireCell[][] = [
  ['Paddock list'],
  ['Paddock', 'Area (ac)', 'Soil'],
  ...Array.from({ length: 12 }, (_, i): WireCell[] => [`Lane ${i + 1}`, 0.6, 'clay']),
  ['Total', 7.2, ''],
];
const PIGS: WireCell[][] = [
  ['Group', 'Head', 'Weight (lb)', 'Weighed on'],
  ['Reds', 10, 60, { d: '2026-04-18' }],
];

async function farm(): Promise<Workbook> {
  const own = [['Rent of the far field', 1200]];
  const workbook = await openWorkbook({
    tabs: { Land: plain(LANES), Pigs: plain(PIGS), Own: own },
    codeJs: await scriptText(),
    today: '2026-04-20',
  });
  workbook.type('Land', 'B15', '=SUM(B3:B14)');
  await buildEveryBlock(workbook, 'US');
  workbook.type('Own', 'A3', '=Rotation!A6');
  workbook.type('Own', 'A4', '=SUM(Land!B3:B14)');
  workbook.type('Own', 'A5', '=COUNTA(Pigs!A2:A9)');
  return workbook;
}

/** Days as a person types them. */
function plain(rows: WireCell[][]) {
  return rows.map((row) => row.map((cell) => (typeof cell === 'object' ? cell.d : cell)));
}

async function mark(workbook: Workbook): Promise<void> {
  const { mark: text } = await portOf(workbook)('fileMark', {});
  await write(workbook, markTask(text), {});
}

async function clearAll(workbook: Workbook, withLists: boolean): Promise<string> {
  const request = blankRequest(blankCopy(await readBook(portOf(workbook))), withLists);
  return portOf(workbook)('clearInCopy', request).then(
    () => 'cleared',
    (error: Error) => error.message,
  );
}

describe('a blank copy', () => {
  it('is refused in the original, and where no mark says which is the copy', async () => {
    const original = await farm();
    const unmarked = sheetPicture(original);
    expect(await clearAll(original, true)).toMatch(/carries no mark.*Nothing was cleared/);
    expect(await clearAll(await original.copy(), true)).toMatch(/carries no mark/);
    expect(differences(unmarked, sheetPicture(original))).toEqual([]);
    await mark(original);
    const marked = sheetPicture(original);
    expect(await clearAll(original, true)).toBe('This is the original, not a copy. Nothing was cleared.');
    expect(differences(marked, sheetPicture(original))).toEqual([]);
  }, 120_000);

  it('loses all tables of ours and, as wished, the rows of the lists; all else stays, and a farm is begun in it', async () => {
    const original = await farm();
    await mark(original);
    const before = sheetPicture(original);
    const copy = await original.copy();
    const { tables, rows } = blankCopy(await readBook(portOf(copy)));
    expect(tables.length).toBeGreaterThanOrEqual(10);
    expect(rows.map(({ tab, row, rows: count, columns }) => [tab, row, count, columns])).toEqual([
      ['Land', 3, 12, 3],
      ['Pigs', 2, 1, 4],
    ]);
    const lists = ['Land', 'Pigs'].map((tab) => copy.values(tab));

    expect(await clearAll(copy, false)).toBe('cleared');
    expect(['Land', 'Pigs'].map((tab) => copy.values(tab))).toEqual(lists);
    const book = await readBook(portOf(copy));
    expect(book.overview.blocks).toEqual([]);
    for (const { tab } of tables) expect(copy.values(tab).flat().join(''), tab).toBe('');
    expect(copy.formulas('Own').flat().filter(String)).toEqual(
      original.formulas('Own').flat().filter(String),
    );
    expect(copy.values('Own')[0]).toEqual(['Rent of the far field', 1200]);
    // The mark went with the tables: what is written here now is this file's own, and stays.
    expect(book.overview.blocks.some(isMark)).toBe(false);
    expect(await clearAll(copy, true)).toMatch(/carries no mark/);

    const second = await original.copy();
    expect(await clearAll(second, true)).toBe('cleared');
    expect(second.values('Land').flat().filter(String)).toEqual([
      'Paddock list',
      'Paddock',
      'Area (ac)',
      'Soil',
      'Total',
      0,
    ]);
    expect(second.formulas('Land')[14]?.[1]).toBe('=SUM(B3:B14)');
    expect(second.values('Pigs').flat().filter(String)).toEqual(PIGS[0]);
    expect(second.formulas('Own').flat().filter(String)).toEqual(
      original.formulas('Own').flat().filter(String),
    );
    for (let lane = 3; lane <= 14; lane++) {
      second.type('Land', `A${lane}`, `Meadow ${lane}`);
      second.type('Land', `B${lane}`, '0.5');
    }
    for (const [cell, text] of [
      ['A2', 'Spots'],
      ['B2', '6'],
      ['C2', '50'],
      ['D2', '2026-04-15'],
    ] as const)
      second.type('Pigs', cell, text);
    expect(await buildRotation(second)).toMatchObject({ kind: 'written' });
    expect(differences(before, sheetPicture(original))).toEqual([]);
  }, 240_000);

  it('our look-ups in the group list go with the training log, whether its rows go or stay', async () => {
    const original = await farm();
    await mark(original);
    const log = standingOf(await readBook(portOf(original)), LOG_BLOCK)!.reading;
    original.type('Pigs', 'E1', 'In rotation from');
    original.type('Pigs', 'E2', readyLookup(log, 'A2')!);
    for (const withLists of [false, true]) {
      const copy = await original.copy();
      expect(await clearAll(copy, withLists)).toBe('cleared');
      expect([copy.value('Pigs', 'E1'), copy.formula('Pigs', 'E2')]).toEqual(['In rotation from', '']);
      expect(copy.value('Pigs', 'A2')).toBe(withLists ? '' : 'Reds');
    }
  }, 240_000);

  it('touches nothing where a table or a list was typed into after it was read, or where no table of ours stands', async () => {
    const original = await farm();
    await mark(original);
    const copy = await original.copy();
    const { tables, rows } = blankCopy(await readBook(portOf(copy)));
    copy.type('Land', 'C3', 'sand');
    const typed = sheetPicture(copy);
    const request = { areas: [], blocks: [], tables: [...tables], rows: [...rows] };
    expect(() => asked(copy, 'clearInCopy', request)).toThrow(
      /A3:C14 on "Land" was changed after it was read/,
    );
    const list = { ...request, tables: [...rows], rows: [] };
    copy.type('Land', 'C3', 'clay');
    expect(() => asked(copy, 'clearInCopy', list)).toThrow(/"Land" is not in a table of ours/);
    copy.type('Land', 'C3', 'sand');
    expect(differences(typed, sheetPicture(copy))).toEqual([]);
  }, 120_000);
});
