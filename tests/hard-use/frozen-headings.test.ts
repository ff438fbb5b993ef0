/**
 * The frozen rows of a rotation table of ours follow its headings; what the grower froze instead stays. Group and
 * paddock stand still beside them, and leave half of a phone 390 pixels wide to scroll, row numbers taken off.
 */
import { expect, it } from 'vitest';
import { openWorkbook } from '../../src/headless';
import { scriptText } from '../tasks/script-text';
import { asked, buildRotation } from './rotation-task';

const PHONE = 390;
/** Pixels, of the preview's grid. */
const ROW_NUMBERS = 48;

it.each([false, true])('in a table planned anew; frozen elsewhere by the grower: %s', async (isGrowers) => {
  const workbook = await openWorkbook({
    tabs: { Start: [] },
    codeJs: await scriptText(),
    today: '2026-04-20',
  });
  asked(workbook, 'startSample', { sample: 'feet-marrow-creek' });
  expect(await buildRotation(workbook)).toMatchObject({ kind: 'written' });
  const sheet = workbook.spreadsheet.getSheetByName('Rotation')!;
  const headingRow = (): number => workbook.values('Rotation').findIndex((row) => row.includes('Group')) + 1;
  expect(sheet.getFrozenRows()).toBe(headingRow());
  expect(headingRow()).toBeLessThanOrEqual(4);
  expect(workbook.values('Rotation')[headingRow() - 1]?.slice(0, 2)).toEqual(['Group', 'Paddock']);
  expect(sheet.getFrozenColumns()).toBe(2);
  const { book } = workbook.state;
  const wide = [0, 1].map((c) => book.model.getters.getColSize(book.idOf('Rotation')!, c));
  expect(wide[0]! + wide[1]!).toBeLessThanOrEqual(PHONE / 2 - ROW_NUMBERS);
  if (isGrowers) sheet.setFrozenRows(1).setFrozenColumns(0);
  workbook.state.now = () => new Date('2026-06-20T12:00:00Z');
  const again = await buildRotation(workbook);
  expect(again).toMatchObject({ kind: 'written', note: '' });
  expect(sheet.getFrozenRows()).toBe(isGrowers ? 1 : headingRow());
  expect(sheet.getFrozenColumns()).toBe(isGrowers ? 0 : 2);
});
