/** A formula that the sidebar puts into a cell says the farm's units, also where the lists name none. */
import { expect, test } from 'vitest';
import { startUnits } from '../../../shared/lists/start-units';
import { farmUnits } from '../../../shared/tasks/rotation/farm-units';
import { openWorkbook } from '../../../src/headless';
import { buildRotation, readBook } from '../../hard-use/rotation-task';
import { scriptText } from '../script-text';

test('the rotation table says which, before the locale does', async () => {
  const Farm = [
    ['Paddock', 'Area', '', 'Group', 'Head', 'Weight', 'Weighed on'],
    ['North', 0.5, '', 'Reds', 10, 60, { d: '2026-03-28' }],
    ...['South', 'Oak', 'Hill', 'Creek', 'West'].map((name) => [name, 0.5]),
  ];
  const book = await openWorkbook({ tabs: { Farm }, codeJs: await scriptText(), today: '2026-04-01' });
  expect(farmUnits(readBook(book))).toBe('US');
  expect(await buildRotation(book, { units: 'metric' })).toMatchObject({ kind: 'written' });
  expect(startUnits(readBook(book))).toBe('US');
  expect(farmUnits(readBook(book))).toBe('metric');
}, 120_000);
