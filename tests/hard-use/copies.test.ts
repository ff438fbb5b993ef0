/** File > Make a copy: a fresh script, no properties, the same cells. Everything lives on there, and the original is left alone. */
import { describe, expect, it } from 'vitest';
import type { Overview } from '../../shared/contract';
import { SAMPLE_FARMS } from '../../shared/samples/index';
import { openWorkbook, type Workbook } from '../../src/headless';
import { cellUnder } from '../cell-under';
import { scriptText } from '../tasks/script-text';
import { isoOf, shownMoves } from './check-table';
import { buildEveryBlock } from './every-block';
import { asked, buildRotation } from './rotation-task';
import { differences, sheetPicture } from './sheet-picture';

async function farm(): Promise<Workbook> {
  const workbook = await openWorkbook({
    tabs: { Start: [] },
    codeJs: await scriptText(),
    today: '2026-04-20',
  });
  asked(workbook, 'startSample', { sample: SAMPLE_FARMS[0]!.id });
  return workbook;
}

async function farmWithEverything(): Promise<Workbook> {
  const workbook = await farm();
  await buildEveryBlock(workbook, 'US');
  return workbook;
}

async function farmWithTable(): Promise<Workbook> {
  const workbook = await farm();
  expect(await buildRotation(workbook)).toMatchObject({ kind: 'written' });
  return workbook;
}

function blocksOf(workbook: Workbook): Overview['blocks'] {
  return [...asked<Overview>(workbook, 'overview').blocks].sort((a, b) => (a.name < b.name ? -1 : 1));
}

describe('a copy of the file', () => {
  it('shows the same everywhere, finds every block, follows a late move and rebuilds; the original stays', async () => {
    const original = await farmWithEverything();
    const before = sheetPicture(original);
    const copy = await original.copy();
    expect(differences(before, sheetPicture(copy)).join('\n')).toBe('');
    expect(blocksOf(copy)).toEqual(blocksOf(original));
    expect(blocksOf(copy).length).toBeGreaterThanOrEqual(9);
    // Ours stand together at the end, in the order of the tasks, Today first.
    expect(
      original.spreadsheet
        .getSheets()
        .slice(-10)
        .map((sheet) => sheet.getName()),
    ).toEqual([
      'Today',
      'Rotation',
      'Picture',
      'Map',
      'Materials',
      'Pen',
      'Training log',
      'Bite',
      'Fence walk',
      'Budget',
    ]);

    const info = blocksOf(copy).find(({ name }) => name === 'SOUNDER_ROTATION')!;
    const [first, second] = shownMoves(copy, info);
    const late = Date.parse((first!.cell('Planned in') as { d: string }).d) / 86_400_000 + 2;
    copy.type(info.tab, cellUnder(copy, 'Moved in', first!.row), isoOf(late));
    const [, shifted] = shownMoves(copy, info);
    expect(shifted!.cell('Planned in')).not.toEqual(second!.cell('Planned in'));
    copy.state.now = () => new Date((late + 1) * 86_400_000 + 43_200_000);
    const outcome = await buildRotation(copy);
    expect(outcome).toMatchObject({
      kind: 'written',
      info: { tab: info.tab, row: info.row, column: info.column },
    });
    expect(
      shownMoves(copy, blocksOf(copy).find(({ name }) => name === info.name)!)[0]!.cell('Moved in'),
    ).toEqual({ d: isoOf(late) });

    expect(differences(before, sheetPicture(original)).join('\n')).toBe('');
  }, 120_000);

  it('a copy of a copy in another place of the world is a table still', async () => {
    const original = await farmWithTable();
    const copy = await (await original.copy()).copy({
      timeZone: 'Pacific/Auckland',
      scriptTimeZone: 'Etc/UTC',
    });
    const info = blocksOf(copy).find(({ name }) => name === 'SOUNDER_ROTATION')!;
    expect(shownMoves(copy, info).map((move) => move.cell('Out'))).toEqual(
      shownMoves(original, info).map((move) => move.cell('Out')),
    );
    expect(await buildRotation(copy)).toMatchObject({ kind: 'written' });
  }, 120_000);

  it('tables saved as .xlsx and opened again with the script are found and rebuilt', async () => {
    const original = await farmWithEverything();
    const again = await openWorkbook(await original.toXlsx(), {
      codeJs: await scriptText(),
      today: '2026-04-20',
    });
    expect(blocksOf(again)).toEqual(blocksOf(original));
    const info = blocksOf(again).find(({ name }) => name === 'SOUNDER_ROTATION')!;
    const outs = (workbook: Workbook) =>
      shownMoves(workbook, info).map((move) => [move.cell('Paddock'), move.cell('Out'), move.cell('Check')]);
    expect(outs(again)).toEqual(outs(original));
    expect(await buildRotation(again)).toMatchObject({ kind: 'written' });
    expect(outs(again)).toEqual(outs(original));
  }, 120_000);

  it('a tab renamed does no harm: the block is found where its name stands', async () => {
    const original = await farmWithTable();
    const sheet = original.spreadsheet.getSheetByName('Rotation')!;
    sheet.setName('Moves 2026');
    const outcome = await buildRotation(original);
    expect(outcome).toMatchObject({ kind: 'written', info: { tab: 'Moves 2026' } });
  }, 120_000);
});
