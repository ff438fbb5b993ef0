/** A day moved in that the sheet took for words, because it is written in another order than the sheet's. */
import { expect, test, vi } from 'vitest';
import { dayFromIso } from '../../shared/core/calendar/day';
import { onlyDay } from '../../shared/lists/text-day';
import { KEPT_BELOW } from '../../shared/tasks/merge/words';
import { standingRotation } from '../../shared/tasks/rotation/rotation-standing';
import { ROTATION_TASK } from '../../shared/tasks/rotation/rotation-task';
import { openWorkbook, portOf, runTask, type StartCell } from '../../src/headless';
import { cellUnder } from '../cell-under';
import { readBook } from '../hard-use/rotation-task';
import { scriptText } from '../tasks/script-text';

vi.setConfig({ testTimeout: 120_000 });

test.each([
  ['27/11/2026', '2026-11-27'],
  ['11/27/2026', '2026-11-27'],
  ['27.11.26', '2026-11-27'],
  ['27 Nov 2026', '2026-11-27'],
])('%s can only be %s', (text, iso) => {
  expect(onlyDay(text)).toBe(dayFromIso(iso));
});

test.each(['04/05/2026', 'Nov 2026', 'early May', '27/13/2026', '32/11/2026', '27/11'])(
  '%s is no one day',
  (text) => {
    expect(onlyDay(text)).toBeUndefined();
  },
);

const TABS: Record<string, StartCell[][]> = {
  Land: [
    ['Paddock', 'Acres'],
    ...['North', 'South', 'Oak', 'Hill', 'Creek', 'West', 'Hay'].map((name) => [name, 0.5]),
  ],
  Pigs: [
    ['Group', 'Head', 'Weight (lb)', 'Weighed on'],
    ['Reds', 10, 60, { d: '2026-11-01' }],
  ],
};

test('27/11/2026 in a sheet that writes the month first: read, and a date once the table is written anew', async () => {
  const codeJs = await scriptText();
  const farm = await openWorkbook({ tabs: TABS, locale: 'en_US', today: '2026-11-20', codeJs });
  expect(await runTask(portOf(farm), ROTATION_TASK)).toMatchObject({ kind: 'written' });
  const row = standingRotation(readBook(farm))!.rotation.rows[1]!.sheetRow;
  const cell = cellUnder(farm, 'Moved in', row);
  farm.type('Rotation', cell, '27/11/2026');
  expect(farm.value('Rotation', cell)).toBe('27/11/2026');

  const { rotation } = standingRotation(readBook(farm))!;
  expect(rotation.problems).toEqual([]);
  expect(rotation.rows[1]!.movedIn).toBe(dayFromIso('2026-11-27'));
  expect(await runTask(portOf(farm), ROTATION_TASK)).toMatchObject({ kind: 'written' });
  expect(farm.value('Rotation', cell)).toEqual(new Date('2026-11-27T00:00:00Z'));
});

test('a number under the format of a day, further away than any day: named where it is read, else let be', async () => {
  const codeJs = await scriptText();
  const Land = TABS.Land!.map((row, i) => [...row, i === 0 ? 'Seen' : { d: '2026-11-01' }]);
  const farm = await openWorkbook({
    tabs: { ...TABS, Land },
    locale: 'en_US',
    today: '2026-11-20',
    codeJs,
  });
  farm.type('Land', 'C3', '999999999');
  expect(await runTask(portOf(farm), ROTATION_TASK)).toMatchObject({ kind: 'written' });
  const { block, rotation } = standingRotation(readBook(farm))!;
  const column = block.values.find((cells) => cells.includes('Moved in'))!.indexOf('Moved in');
  const cell = `${'ABCDEFGHIJ'[column]}${rotation.rows[1]!.sheetRow}`;
  farm.type('Rotation', cell, '281120261');
  expect(standingRotation(readBook(farm))!.rotation.problems.map(({ sentence }) => sentence)).toEqual([
    expect.stringContaining(`Rotation!${cell}: moved in must be a date, or the word skipped, got 28112`),
  ]);
});

test.each(['SKIPPED', 'Skipped ', 'skipped'])('“%s” is the word, and leaves no copy below', async (typed) => {
  const codeJs = await scriptText();
  const farm = await openWorkbook({ tabs: TABS, locale: 'en_US', today: '2026-11-20', codeJs });
  expect(await runTask(portOf(farm), ROTATION_TASK)).toMatchObject({ kind: 'written' });
  const { block, rotation } = standingRotation(readBook(farm))!;
  const column = block.values.find((cells) => cells.includes('Moved in'))!.indexOf('Moved in');
  farm.type('Rotation', `${'ABCDEFGHIJ'[column]}${rotation.rows[1]!.sheetRow}`, typed);
  expect(await runTask(portOf(farm), ROTATION_TASK)).toMatchObject({ kind: 'written' });
  const cells = farm.values('Rotation').flat();
  expect(cells.filter((cell) => /^\s*skipped\s*$/i.test(String(cell)))).toEqual(['skipped']);
  expect(cells).not.toContain(KEPT_BELOW);
});
