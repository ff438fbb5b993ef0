/** The frozen rows of a rotation table of ours follow its headings; what the grower froze instead stays. */
import { expect, it } from 'vitest';
import { openWorkbook } from '../../src/headless';
import { scriptText } from '../tasks/script-text';
import { asked, buildRotation } from './rotation-task';

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
  if (isGrowers) sheet.setFrozenRows(1);
  workbook.state.now = () => new Date('2026-06-20T12:00:00Z');
  const again = await buildRotation(workbook);
  expect(again).toMatchObject({ kind: 'written', note: '' });
  expect(sheet.getFrozenRows()).toBe(isGrowers ? 1 : headingRow());
});
