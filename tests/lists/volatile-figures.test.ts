/** Figures that Google gives no cell function are told by their cells. No source: an invented list. */
import { expect, it } from 'vitest';
import { bookOf } from '../../shared/block/book';
import { growerLists } from '../../shared/tasks/grower-lists';
import { openWorkbook } from '../../src/headless';
import { asked } from '../hard-use/rotation-task';
import { scriptText } from '../tasks/script-text';

async function groupNotes(weight: string | number): Promise<readonly string[]> {
  const book = await openWorkbook({
    tabs: {
      Land: [
        ['Paddock', 'Acres'],
        ['North', 0.5],
        ['South', 0.7],
      ],
      Pigs: [
        ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)'],
        ['Reds', 10, weight, { d: '2026-03-28' }, 1.5],
      ],
    },
    codeJs: await scriptText(),
    today: '2026-04-01',
  });
  return growerLists(bookOf(asked(book, 'readFile')), 'US').notes.groups;
}

it('a weight that changes with the clock or by chance', async () => {
  for (const formula of ['=60+(NOW()-46000)/100', '=60+rand()', '=RANDBETWEEN(60;61)'])
    expect((await groupNotes(formula)).join(' '), formula).toContain('Type the number: Pigs!C2.');
});

it('is not told of a number, nor of a formula that gives the same each time', async () => {
  for (const weight of [60, '=20*3', '=SUM(B2;50)', '=YEAR(TODAY())-1966'])
    expect((await groupNotes(weight)).join(' '), String(weight)).not.toContain('NOW');
});
