/** What lies in the shed, read from lists as growers keep them. What each means was read off by a person. */
import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { bookOf } from '../../../shared/block/book';
import { ITEM_NAMES } from '../../../shared/tasks/materials/item-rows';
import { MATERIALS_TASK } from '../../../shared/tasks/materials/materials-task';
import { stockList } from '../../../shared/tasks/materials/stock-list';
import { openWorkbook, portOf, type StartCell } from '../../../src/headless';
import { startTabs, TEN_BOOKS } from '../../lists/books/ten-books';
import { scriptText } from '../script-text';

async function bookWith(tabs: Readonly<Record<string, StartCell[][]>>, locale = 'en_US') {
  const farm = await openWorkbook({ tabs, locale, codeJs: await scriptText() });
  return bookOf(await portOf(farm)('readFile', {}));
}

test('hogbook.xlsx: ten nets of 100 ft, 60 posts, a 3 J energizer, two groups', async () => {
  const bytes = await readFile('tests/lists/books/hogbook.xlsx');
  const farm = await openWorkbook(bytes, {
    locale: 'en_US',
    today: '2026-04-14',
    codeJs: await scriptText(),
  });
  const { kind, settings, plan } = MATERIALS_TASK.read(bookOf(await portOf(farm)('readFile', {})), {});
  expect(kind.value).toBe('netting');
  expect(settings.values).toMatchObject({ groups: 2, netLength: 100, energizerJoules: 3 });
  const amounts = (item: keyof typeof ITEM_NAMES) => plan?.typed.items.get(ITEM_NAMES[item])?.amounts;
  expect(amounts('nets')).toEqual({ onHand: 10, price: 145 });
  expect(amounts('linePosts')).toEqual({ onHand: 60, price: 2.6 });
  expect(amounts('energizer')).toEqual({ onHand: 1, price: 289 });
});

describe('a list of stock', () => {
  test('nets of another length are told and not counted; the same length is added up', async () => {
    const book = await bookWith({
      Shed: [
        ['Material', 'Qty', 'Length (m)', 'Price'],
        ['Netting', 4, 50, 120],
        ['Netting, old', '2', '50 m', ''],
        ['Short net', 3, 25, 70],
        ['Polywire rolls', 2, 400, '€ 38,50'],
        ['Total', 11, '', ''],
      ],
    });
    const stock = stockList(book, 'metric');
    expect(stock?.items.get('Nets')?.amounts).toEqual({ onHand: 6, price: 120 });
    expect(stock?.notes).toEqual(['“Short net” is of another length and is not counted.']);
    expect(stock?.settings).toEqual({ netLength: 50, rollLength: 400 });
    // In a file that writes decimal points “38,50” may be anything: no price is guessed.
    expect(stock?.items.get('Rolls of wire')?.amounts).toEqual({ onHand: 2 });
  });

  test('rods count by their length, in a column or in their name', async () => {
    const rows = [
      ['1 m earth rods', 3],
      ['Earth rod 1.5 m', 2],
      ['Netting 90 cm', 4],
    ];
    const book = await bookWith({ Shed: [['Material', 'Qty'], ...rows] });
    const stock = stockList(book, 'metric');
    expect(stock?.settings).toEqual({ rodLength: 1 });
    expect(stock?.items.get('Ground rods')?.amounts).toEqual({ onHand: 3 });
    expect(stock?.notes).toEqual(['“Earth rod 1.5 m” is of another length and is not counted.']);
    // One foot is 0.3048 m by definition.
    expect(stockList(book, 'US')?.settings.rodLength).toBeCloseTo(1 / 0.3048, 6);
  });

  test('is known by what it names, whatever the heading above; wire on its reel is wire', async () => {
    const book = await bookWith({
      Barn: [
        ['Kept in the barn', 'How many', 'Paid each £'],
        ['Polywire, 400 m reel', 2, 31],
        ['Geared reel', 3, 44],
        ['Step-in posts', 55, 2],
      ],
      Lots: [
        ['Lot', 'How many'],
        ['Wire field pigs', 9],
        ['Others', 12],
      ],
    });
    const stock = stockList(book, 'metric');
    expect([stock?.tab, [...(stock?.items ?? [])].map(([name, { amounts }]) => [name, amounts])]).toEqual([
      'Barn',
      [
        ['Line posts', { onHand: 55, price: 2 }],
        ['Reels', { onHand: 3, price: 44 }],
        ['Rolls of wire', { onHand: 2, price: 31 }],
      ],
    ]);
  });

  test('in German, with decimal commas, lengths in the other unit turned into the table’s', async () => {
    const book = await bookWith(
      {
        Lager: [
          ['Was', 'Anzahl', 'Länge (m)', 'Preis'],
          ['Weidenetz', 5, 50, '129,50 €'],
          ['Pfähle', '40', '', '2,20'],
          ['Weidezaungerät 1,5 J', 1, '', ''],
        ],
      },
      'de_DE',
    );
    const stock = stockList(book, 'US');
    expect(stock?.items.get('Nets')?.amounts).toEqual({ onHand: 5, price: 129.5 });
    expect(stock?.items.get('Line posts')?.amounts).toEqual({ onHand: 40, price: 2.2 });
    // 50 m ÷ 0.3048.
    expect(stock?.settings.netLength).toBeCloseTo(164.042, 3);
    expect(stock?.settings.energizerJoules).toBe(1.5);
  });

  test('what is no stock of fence is none', async () => {
    const book = await bookWith({
      Feed: [
        ['Item', 'Qty', 'Price'],
        ['Grower feed', 40, 12],
        ['Salt', 2, 9],
      ],
    });
    expect(stockList(book, 'US')).toBeUndefined();
  });

  test.each(TEN_BOOKS)('$name: paddocks and pigs are not taken for it', async (written) => {
    expect(stockList(await bookWith(startTabs(written), written.locale), 'metric')).toBeUndefined();
  });
});
