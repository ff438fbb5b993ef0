/** Today's page in the engine: what a farm of four stays shows on each kind of day, worked out by hand. */
import { describe, expect, test } from 'vitest';
import { BUDGET_SETTINGS } from '../../../shared/tasks/budget/budget-settings';
import { startSettings } from '../../../shared/tasks/settings';
import type { Workbook } from '../../../src/headless';
import { cellUnder } from '../../cell-under';
import { card, day, openToday, shown, type } from './today-farm';

const GREENS = '=Greens*';
const WHERE = ['Stands in', 'Since', 'Goes to', 'On', 'Days left', 'To do'] as const;
const LOCALES = ['en_US', 'en_GB', 'de_DE', 'fr_FR', 'es_ES', 'pt_BR', 'sv_SE', 'da_DK', 'ja_JP'];

/** A figure of the rotation table by its heading, unit aside, and the move. */
function inTable(book: Workbook, heading: string, move: number): number {
  const values = book.values('Rotation');
  const head = values.findIndex((row) => row.includes('Moved in'));
  const column = values[head]!.findIndex((cell) => String(cell).startsWith(`${heading} (`));
  return values[head + 2 + move]![column] as number;
}

/** Error values on the page. */
function errorsIn(book: Workbook): readonly unknown[] {
  return book
    .values('Today')
    .flat()
    .filter((value) => /^#/.test(String(value)));
}

describe('where the groups stand', () => {
  test('as recorded, days left to the next move; a group that is still to come', async () => {
    const { book } = await openToday('2026-05-05', { moved: ['2026-05-02'] });
    // Came in a day late, for 7 days: out on the 9th.
    expect(shown(book, 'Reds', ...WHERE)).toEqual(['North', 'Sat 2 May', 'South', 'Sat 9 May', '4', '']);
    expect(shown(book, GREENS, ...WHERE)).toEqual(['not in yet', '', 'Pen*', 'Fri 8 May', '3', '']);
  });

  test('sold since they came in: the head of today, and beside it the one that the table keeps', async () => {
    const herd = [
      { group: 'Reds', day: day('2026-05-01'), head: 9, weightKg: 27 },
      { group: 'Reds', day: day('2026-05-05'), head: 6 },
    ];
    const { book } = await openToday('2026-05-05', { moved: ['2026-05-02'], herd });
    // The table of this farm was written before the log: its row keeps the 10 of the list.
    expect(card(book, 'Reds').Pigs).toMatchObject({ shown: '6', beside: '10 when they came in' });
    const same = await openToday('2026-05-05', { moved: ['2026-05-02'] });
    expect(card(same.book, 'Reds').Pigs).toMatchObject({ shown: '10', beside: '' });
  });

  test('as planned, and said so, until a day is typed', async () => {
    const { book } = await openToday('2026-05-09');
    expect(shown(book, 'Reds', ...WHERE)).toEqual(['South', 'Fri 8 May', 'East', 'Fri 15 May', '6', '']);
    expect(shown(book, GREENS, ...WHERE)).toEqual([
      'Pen*',
      'Fri 8 May',
      'off the pasture',
      'Fri 22 May',
      '13',
      'Last stay: no move after it.',
    ]);
  });

  test.each([
    ['2026-05-07', 'Move tomorrow.'],
    ['2026-05-08', 'Move today.'],
    ['2026-05-09', 'Late by a day: move, or type the day.'],
    ['2026-05-12', 'Late by 4 days: move, or type the day.'],
    ['2026-05-15', 'Late: 2 moves up to today have no day.'],
  ])('%s: %s', async (today, toDo) => {
    const { book } = await openToday(today, { moved: ['2026-05-01'] });
    const left = today === '2026-05-07' ? '1' : '0';
    expect(shown(book, 'Reds', ...WHERE)).toEqual(['North', 'Fri 1 May', 'South', 'Fri 8 May', left, toDo]);
  });

  test('after the last stay', async () => {
    const { book } = await openToday('2026-05-23');
    const over = ['left the pasture', 'Fri 22 May', '', '', '0', 'The moves of this group are over.'];
    expect(shown(book, 'Reds', ...WHERE)).toEqual(over);
    expect(shown(book, 'Reds', 'Pigs', 'Weight each', 'Water today', 'Feed a day', 'Carry')).toEqual(
      Array(5).fill(''),
    );
  });

  test('a move that is late moves the day of the next, at once', async () => {
    const { book } = await openToday('2026-05-12', { moved: ['2026-05-01', '2026-05-11'] });
    expect(shown(book, 'Reds', ...WHERE)).toEqual(['South', 'Mon 11 May', 'East', 'Mon 18 May', '6', '']);
    type(book, 1, '2026-05-09');
    expect(shown(book, 'Reds', 'Since', 'On')).toEqual(['Sat 9 May', 'Sat 16 May']);
  });
});

test.each([
  // The move of the 8th is due and not recorded: they stand where the record says.
  ['2026-05-08', ['2026-05-02'], ['Reds in North', '=Greens* in Pen*']],
  ['2026-05-08', [], ['Reds in South', '=Greens* in Pen*']],
  ['2026-05-09', ['2026-05-02', '2026-05-09'], ['Reds in South', '=Greens* in Pen*']],
  ['2026-05-22', ['2026-05-02'], ['Reds in North']],
  ['2026-05-22', [], []],
])(
  '%s, moved in %j: the table marks where today’s page says that they stand',
  async (today, moved, where) => {
    const { book, rules } = await openToday(today, { moved });
    const rule = rules.find(({ background }) => background === '#d9ead3')!;
    const rows = [6, 7, 8, 9];
    // The rule as a formula for each row, on another tab.
    const there = rule.formula.replace(/(?<!:)\$[A-Z]+\$?\d/g, 'Rotation!$&');
    const formulas = rows.map((row) => [there.replace(/!\$([A-Z]+)6\b/g, `!$$$1${row}`)]);
    book.range('Ground', 'C2:C5').setValues(formulas);
    const marked = rows.flatMap((row, i) => {
      const [group, paddock] = book.values('Rotation')[row - 1]!;
      return book.values('Ground')[i + 1]![2] === true ? [`${group} in ${paddock}`] : [];
    });
    expect(marked.sort()).toEqual([...where].sort());
    const said = ['Reds', GREENS].flatMap((group) => {
      const [place] = shown(book, group, 'Stands in');
      return place === 'left the pasture' || place === 'not in yet' ? [] : [`${group} in ${place}`];
    });
    expect(said.sort()).toEqual([...where].sort());
  },
);

describe('head, weight, water, feed', () => {
  test('weight grows by the gain; water is 5.0 to 2.7 on a hot day; feed to carry is the next stay', async () => {
    const { book } = await openToday('2026-05-05', { moved: ['2026-05-01'] });
    // 60 lb + 4 days of 1.5 lb.
    expect(shown(book, 'Reds', 'Pigs', 'Weight each')).toEqual(['10', '66']);
    // The stay is 7 days.
    const exact = (a1: string): number => book.value('Today', a1) as number;
    const at = (label: string): string =>
      `B${book.values('Today').findIndex(([first]) => first === label) + 1}`;
    // mount1971: 2.7 L a kg of feed up to 22 °C, 5.0 from 33 °C, 91.4 °F; the table's warm day is 20 °C. The budget begins alike.
    expect(card(book, 'Reds')['On a hot day']?.beside).toBe('gal/day at 92 °F');
    expect(['US', 'metric'].map((units) => startSettings(BUDGET_SETTINGS, units as 'US').hot)).toEqual([
      92, 33,
    ]);
    expect(exact(at('On a hot day'))).toBeCloseTo((exact(at('Water today')) * 5) / 2.7, 9);
    expect(exact(at('Feed to carry'))).toBe(inTable(book, 'Feed for the stay', 1));
  });

  test.each([
    [undefined, 60 + 6 * 1.5],
    [20, 21.5],
    [40, 41.5],
    [80, 81.5],
    [250, 251.5],
  ])(
    'weighed at %s lb the day before: water and feed of today are those of the functions',
    async (lb, now) => {
      const herd =
        lb === undefined ? [] : [{ group: 'Reds', day: day('2026-05-06'), weightKg: lb * 0.45359237 }];
      const { book } = await openToday('2026-05-07', { moved: ['2026-05-01'], herd });
      const shownAt = (label: string): number =>
        book.values('Today').find(([first]) => first === label)![1] as number;
      const water = book.evaluate(`=WATER_NEEDED(10;${now};68;"US")`) as number;
      expect(shownAt('Water today') / water).toBeCloseTo(1, 6);
      const feed = book.evaluate(`=FEED_NEEDED(10;${now};1;1.5;;"US")`) as number;
      expect(shownAt('Feed a day')).toBeGreaterThanOrEqual(feed);
      expect(shownAt('Feed a day')).toBeLessThanOrEqual(feed * 1.04);
    },
  );
});

describe('with a herd log', () => {
  test('head and weight of today, also within a stay; water and feed go with the head', async () => {
    const KG = 0.45359237;
    const herd = [
      { group: 'Reds', day: day('2026-05-04'), head: 8 },
      { group: 'Reds', day: day('2026-05-06'), weightKg: 75 * KG },
      { group: 'Reds', day: day('2026-05-08'), head: 2 },
    ];
    const before = await openToday('2026-05-03', { moved: ['2026-05-01'], herd });
    // 10 head of 60 lb on 1 May, 1.5 lb a day.
    expect(shown(before.book, 'Reds', 'Pigs', 'Weight each')).toEqual(['10', '63']);
    const { book } = await openToday('2026-05-07', { moved: ['2026-05-01'], herd });
    // Two sold on the 4th, weighed 75 lb on the 6th and a day grown since.
    expect(book.values('Today').find(([label]) => label === 'Weight each')![1]).toBeCloseTo(76.5, 9);
    expect(shown(book, 'Reds', 'Pigs')).toEqual(['8']);
    const value = (label: string): unknown => book.values('Today').find(([first]) => first === label)![1];
    expect(value('Water today')).toBeCloseTo(book.evaluate('=WATER_NEEDED(8;76.5;68;"US")') as number, 6);
  });
});

describe('every locale and every tab name', () => {
  test.each(LOCALES)('%s: no error, the same places', async (locale) => {
    const { book } = await openToday('2026-05-12', { locale, moved: ['2026-05-01'], tab: 'Moves 1+2 (new)' });
    expect(shown(book, 'Reds', 'Stands in', 'Goes to', 'Days left', 'Weight each')).toEqual([
      'North',
      'South',
      '0',
      // 60 lb + 11 days of 1.5 lb: still growing while it is late.
      '77',
    ]);
    expect(errorsIn(book)).toEqual([]);
  });

  test('a row without a day, and one with words in it, stop nobody else', async () => {
    const { book } = await openToday('2026-05-05', { moved: ['2026-05-01'] });
    book.type('Rotation', cellUnder(book, 'Days', 8), 'a week');
    book.type('Rotation', cellUnder(book, 'Moved in', 8), 'soon');
    expect(shown(book, 'Reds', 'Stands in', 'Goes to')).toEqual(['North', 'South']);
    expect(errorsIn(book)).toEqual([]);
  });

  test('says when the table has outgrown it or has another group', async () => {
    const { book } = await openToday('2026-05-05');
    expect(book.value('Today', 'A3')).toBe('');
    book.type('Rotation', cellUnder(book, 'Group', 9), 'Blacks');
    expect(book.value('Today', 'A3')).toBe('The rotation table has another group: write this page anew.');
  });
});
