/** What the script reads of a file: tabs without cells, zones without a midnight, and how often it waits. */
import { describe, expect, it } from 'vitest';
import type { TabContent, WholeFile } from '../../shared/contract';
import { openWorkbook, type StartCell, type Workbook } from '../../src/headless';
import { scriptText } from '../tasks/script-text';

async function open(tabs: Record<string, StartCell[][]>, timeZone = 'America/Chicago'): Promise<Workbook> {
  return openWorkbook({ tabs, codeJs: await scriptText(), today: '2026-04-20', timeZone });
}

function told<Reply>(book: Workbook, call: string, request: unknown = {}): Reply {
  const reply = book.ask(call, request);
  expect(reply).toMatchObject({ ok: true });
  return (reply as { data: Reply }).data;
}

describe('the whole file in one call', () => {
  it('is what the tabs hold, from A1, without the blank ones', async () => {
    const book = await open({
      Farm: [
        ['Name', ''],
        ['', '=1+1'],
      ],
      Blank: [],
      Day: [[{ d: '2026-04-21' }]],
    });
    const { overview, tabs } = told<WholeFile>(book, 'readFile');
    expect(overview).toMatchObject({
      tabs: [
        { name: 'Farm', rows: 2, columns: 2 },
        { name: 'Blank', rows: 0, columns: 0 },
        { name: 'Day', rows: 1, columns: 1 },
      ],
      passedOver: [],
    });
    expect(tabs).toEqual([
      {
        name: 'Farm',
        values: [
          ['Name', ''],
          ['', 2],
        ],
        formulas: [
          ['', ''],
          ['', '=1+1'],
        ],
      },
      { name: 'Day', values: [[{ d: '2026-04-21' }]], formulas: [['']] },
    ]);
  });

  it('waits at most three times for each further tab', async () => {
    const waits = async (count: number): Promise<number> => {
      const names = Array.from({ length: count }, (_, i) => `Tab ${i}`);
      const book = await open(Object.fromEntries(names.map((name) => [name, [[name]]])));
      book.resetCounts();
      told(book, 'readFile');
      return book.waits;
    };
    const [one, three] = [await waits(1), await waits(3)];
    console.log(`reading a file of three tabs waits ${three} times for Google`);
    expect((three - one) / 2).toBeLessThanOrEqual(3);
    // The tabs; the list of them, zone, locale and names.
    expect(three).toBeLessThanOrEqual(9 + 4);
  });
});

describe('a tab that holds a chart', () => {
  const withChart = async (): Promise<Workbook> => {
    const book = await open({ Farm: [['x']], Chart: [] });
    book.makeChartTab('Chart');
    return book;
  };

  it('is passed over by name, and every task works beside it', async () => {
    const book = await withChart();
    const { overview, tabs } = told<WholeFile>(book, 'readFile');
    expect([overview.passedOver, tabs.map(({ name }) => name)]).toEqual([['Chart'], ['Farm']]);
    expect(book.ask('startSample', { sample: 'feet-marrow-creek' })).toMatchObject({ ok: true });
  });

  it('may be the one on show', async () => {
    const book = await withChart();
    book.state.book.activate(book.state.book.idOf('Chart')!);
    expect(told(book, 'overview')).toMatchObject({ activeTab: 'Chart' });
    expect(book.ask('readSelection')).toEqual({ ok: false, error: 'Click a cell in the sheet first.' });
  });

  it('is told from a tab that is gone', async () => {
    const book = await withChart();
    const errors = ['Chart', 'Gone'].map((name) => book.ask('readTabs', { tabs: [name] }));
    expect(errors).toEqual([
      { ok: false, error: 'The tab "Chart" holds no cells. Read the spreadsheet again.' },
      { ok: false, error: 'The tab "Gone" is not in this file any more. Read the spreadsheet again.' },
    ]);
  });
});

describe('zones whose clocks go forward at midnight', () => {
  // Days from the IANA time zone database.
  it.each([
    ['America/Santiago', '2026-09-06'],
    ['Africa/Cairo', '2026-04-24'],
    ['Asia/Beirut', '2026-03-29'],
  ])('%s: %s is a day and nothing more', async (zone, day) => {
    const next = new Date(Date.parse(day) + 86_400_000).toISOString().slice(0, 10);
    const book = await open({ A: [[{ d: day }, { d: next }, `${day} 1:30`, `${next} 1:00`]] }, zone);
    const [tab] = told<TabContent[]>(book, 'readTabs', { tabs: ['A'] });
    expect(tab?.values).toEqual([
      [{ d: day }, { d: next }, { d: `${day}T01:30:00` }, { d: `${next}T01:00:00` }],
    ]);
  });
});
