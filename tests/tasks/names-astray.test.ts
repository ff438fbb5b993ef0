/**
 * What strangers did to our tables, each seen to lose or to lie before: a name that reaches too far or lies over the
 * grower's list, settings that were sorted, a first column that was deleted, numbers as text.
 */
import { expect, test } from 'vitest';
import { ROTATION_NAME } from '../../shared/block/own-words';
import { HERD_BLOCK } from '../../shared/tasks/herd/herd-block';
import { HERD_TASK } from '../../shared/tasks/herd/herd-task';
import { standingRotation } from '../../shared/tasks/rotation/rotation-standing';
import { PEN_BLOCK } from '../../shared/tasks/training/pen-block';
import { PEN_TASK } from '../../shared/tasks/training/pen-task';
import { openWorkbook, portOf, runTask, type Workbook } from '../../src/headless';
import { buildRotation, readBook } from '../hard-use/rotation-task';
import { FARM_RULES, farmToType } from '../hard-use/typed-farm';
import { scriptText } from './script-text';

async function open(): Promise<Workbook> {
  return openWorkbook({ tabs: farmToType('US'), codeJs: await scriptText(), today: '2026-04-01' });
}

const blockOf = (book: Workbook, name: string) =>
  readBook(book).overview.blocks.find((block) => block.name === name)!;

test('a name that reaches past the table takes nothing beside it', async () => {
  const book = await open();
  await runTask(portOf(book), PEN_TASK);
  const { tab, rows, columns } = blockOf(book, PEN_BLOCK);
  const sheet = book.spreadsheet.getSheetByName(tab)!;
  book.spreadsheet.setNamedRange(PEN_BLOCK, sheet.getRange(1, 1, rows, columns + 3));
  sheet.getRange(4, columns + 2).setValue('borrowed panels: Ada');
  expect(await runTask(portOf(book), PEN_TASK)).toMatchObject({ kind: 'written' });
  expect(sheet.getRange(4, columns + 2).getValue()).toBe('borrowed panels: Ada');
});

test('a name that lies over the list of the grower leaves it alone, and the task goes on elsewhere', async () => {
  const book = await open();
  await runTask(portOf(book), HERD_TASK);
  const land = book.spreadsheet.getSheetByName('Paddocks')!;
  const before = book.values('Paddocks');
  book.spreadsheet.setNamedRange(HERD_BLOCK, land.getRange(1, 1, 5, 2));
  expect(await runTask(portOf(book), HERD_TASK)).toMatchObject({ kind: 'written' });
  expect(book.values('Paddocks')).toEqual(before);
  expect(await buildRotation(book, { rules: FARM_RULES, units: 'US' })).toMatchObject({ kind: 'written' });
});

test('settings that were sorted with their labels are read by their labels', async () => {
  const book = await open();
  await buildRotation(book, { rules: FARM_RULES, units: 'US' });
  const { area, rotation } = standingRotation(readBook(book))!;
  const sheet = book.spreadsheet.getSheetByName(area.tab)!;
  const labels = book.values(area.tab).map(([first]) => first);
  const rest = labels.indexOf('Rest in days') + 1;
  const longest = labels.indexOf('Longest stay in days') + 1;
  const seen = [rest, longest].map((row) => sheet.getRange(row, 1, 1, 3).getValues()[0]!);
  sheet.getRange(rest, 1, 1, 3).setValues([seen[1]!]);
  sheet.getRange(longest, 1, 1, 3).setValues([seen[0]!]);
  const again = await buildRotation(book);
  expect(again).toMatchObject({ kind: 'written' });
  expect(standingRotation(readBook(book))!.rotation.settings!.rules).toEqual(rotation.settings!.rules);
});

test('what was kept below a table stays, whatever becomes of the first column', async () => {
  const book = await open();
  await buildRotation(book, { rules: FARM_RULES, units: 'US' });
  const { area } = standingRotation(readBook(book))!;
  const sheet = book.spreadsheet.getSheetByName(area.tab)!;
  const heads = book.values(area.tab).findIndex((row) => row.includes('Planned in'));
  const note = book.values(area.tab)[heads]!.indexOf('Note') + 1;
  sheet.getRange(heads + 3, note).setValue('gate sags');
  sheet.deleteColumns(1, 1);
  // Other names: the moves that stand are none of the plan any more.
  const land = book.spreadsheet.getSheetByName('Paddocks')!;
  land.getRange(2, 1, 3, 1).setValues([['Creek'], ['Bend'], ['Wood']]);
  for (let press = 0; press < 3; press++) {
    expect(await buildRotation(book)).toMatchObject({ kind: 'written' });
    expect(book.values(area.tab).flat(), `press ${press}`).toContain('gate sags');
  }
  expect(blockOf(book, ROTATION_NAME).tab).toBe(area.tab);
});

test('a number that a plain-text cell keeps as text is that number', async () => {
  const book = await open();
  await runTask(portOf(book), PEN_TASK);
  const { tab } = blockOf(book, PEN_BLOCK);
  const row = book.values(tab).findIndex(([first]) => first === 'Pigs') + 1;
  book.spreadsheet.getSheetByName(tab)!.getRange(row, 2).setNumberFormat('@');
  book.type(tab, `B${row}`, '7');
  expect(PEN_TASK.read(readBook(book), {}).settings.values.head).toBe(7);
});
