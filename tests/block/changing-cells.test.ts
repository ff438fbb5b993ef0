/** Figures that NOW or RAND change at every look: found, told, and written as values. */
import { describe, expect, it } from 'vitest';
import { isChanging } from '../../shared/block/changing-cells';
import { growerLists } from '../../shared/tasks/grower-lists';
import { ROTATION_TASK } from '../../shared/tasks/rotation/rotation-task';
import { readBook, runTask, writeTask } from '../../shared/tasks/run-task';
import { openWorkbook, portOf } from '../../src/headless';
import { scriptText } from '../tasks/script-text';

function changing(formulas: readonly (readonly string[])[]): readonly string[] {
  const tab = { name: 'My land', values: [], formulas: formulas.map((row) => [...row]) };
  return formulas.flatMap((row, r) =>
    row.flatMap((_, c) => (isChanging(tab, r + 1, c + 1) ? [`${'ABCD'[c]}${r + 1}`] : [])),
  );
}

describe('a cell that changes', () => {
  it('calls such a function', () => {
    for (const formula of ['=NOW()-46000', '=0.3+rand()/9', '=RANDBETWEEN(1;9)', '=ROUND(Randarray(1;1);0)'])
      expect(changing([[formula]]), formula).toEqual(['A1']);
    for (const formula of ['=TODAY()-46000', '=SNOW(1)+BRAND(2)', '="NOW is the time"', 'text'])
      expect(changing([[formula]]), formula).toEqual([]);
  });

  it('or points at one of its tab, over any number of others', () => {
    expect(
      changing([
        ['=NOW()', '=A1*2', "=SUM('my land'!$B$1:B)"],
        ['=C1', '=D9', '=Other!A1'],
      ]),
    ).toEqual(['A1', 'B1', 'C1', 'A2']);
  });

  it('also where two point at each other', () => {
    expect(changing([['=B1', '=A1+RAND()']])).toEqual(['A1', 'B1']);
  });
});

describe('a weight that points at a cell with RAND', { timeout: 60_000 }, async () => {
  const book = await openWorkbook({
    tabs: {
      Land: [
        ['Paddock', 'Acres'],
        ['North', 0.5],
        ['South', 0.7],
        ['West', 0.6],
      ],
      Pigs: [
        ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)', '', 'Scale'],
        ['Reds', 10, '=G2', { d: '2026-03-28' }, 1.5, '', '=60+RAND()'],
      ],
    },
    codeJs: await scriptText(),
    today: '2026-04-01',
  });
  const port = portOf(book);

  it('is told once, as a figure that tables take as it stands', async () => {
    const { notes } = growerLists(await readBook(port), 'US');
    expect(notes.groups.filter((note) => note.includes('RAND'))).toEqual([
      expect.stringMatching(
        /^A change of these figures counts only once the table is written anew: Pigs!C2\. .*NOW\(\) or RAND\(\)/,
      ),
    ]);
  });

  it('stands in the table as a value: no answer is an error', async () => {
    expect(await runTask(port, ROTATION_TASK)).toMatchObject({ kind: 'written' });
    const cells = book.values('Rotation').flat();
    expect(cells.filter((cell) => /^#/.test(String(cell)))).toEqual([]);
    expect(cells.filter((cell) => typeof cell === 'number').length).toBeGreaterThan(20);
  });

  it('counts as changed where it is another by then', async () => {
    const seen = await readBook(port);
    const plan = ROTATION_TASK.solve!(ROTATION_TASK.read(seen, {}));
    const form = ROTATION_TASK.read(seen, plan);
    const weight = book.value('Pigs', 'C2');
    // The engine draws anew where another formula is typed, Google at any edit.
    book.type('Pigs', 'G2', '=RAND()+60');
    expect(book.value('Pigs', 'C2')).not.toBe(weight);
    await expect(writeTask(port, ROTATION_TASK, seen, form, plan)).rejects.toThrow('Pigs!C2');
  });
});
