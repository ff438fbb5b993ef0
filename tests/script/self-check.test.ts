/**
 * The menu's "Check this spreadsheet": all of it passes in the preview, leaves nothing behind, and each habit of the
 * real service that contradicts a line makes that line fail and no other.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openWorkbook, type Workbook, type WorkbookOptions } from '../../src/headless';
import { ASSUMPTIONS } from '../../src/script/assumptions';
import { scriptText } from '../tasks/script-text';

async function open(options: WorkbookOptions = {}): Promise<Workbook> {
  const tabs = { Farm: [['mine', 1, '=B1*2']], Chart: [] };
  return openWorkbook({ tabs, codeJs: await scriptText(), today: '2026-04-20', ...options });
}

/** The text that the menu item shows, as a person would copy it. */
function checked(book: Workbook): string {
  book.call('checkThisSpreadsheet');
  expect(book.shown.alerts.map(({ text }) => text)).toEqual([]);
  const page = book.shown.dialogs.at(-1)?.content ?? '';
  const inside = /<textarea[^>]*>([\s\S]*)<\/textarea>/.exec(page)?.[1] ?? '';
  return inside.replace(/&lt;/g, '<').replace(/&amp;/g, '&');
}

function failures(text: string): string[] {
  return [...text.matchAll(/^FAIL +([\w-]+):/gm)].map(([, id = '']) => id);
}

describe('the list of assumptions', () => {
  it('names each once and says what it matters for and where it comes from', () => {
    const ids = ASSUMPTIONS.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { matters, source, ...one } of ASSUMPTIONS) {
      for (const words of ['says' in one ? one.says : one.asks, matters, source])
        expect(words.length).toBeGreaterThan(5);
    }
  });

  it('stands in the docs as it is', () => {
    const page = readFileSync('src/preview/DIFFERENCES.md', 'utf8');
    const [, shown = ''] = /## What we take for true\n([\s\S]*?)\n## /.exec(page) ?? [];
    const rows = ASSUMPTIONS.map(
      ({ id, matters, sure, source, ...one }) =>
        `| ${id} | ${'says' in one ? one.says : one.asks} | ${matters} | ${sure}: ${source} | ${'wanted' in one ? 'tried' : 'by a person only'} |`,
    );
    expect(shown.trim().split('\n').slice(2)).toEqual(rows);
  });
});

describe('in the preview', () => {
  it('everything that can be tried passes; the rest is named as not tried', async () => {
    const text = checked(await open());
    expect(failures(text)).toEqual([]);
    const tried = [...text.matchAll(/^(PASS|NOT TRIED) +([\w-]+):/gm)].map(([, how, id]) => [id, how]);
    expect(tried).toEqual(ASSUMPTIONS.map((one) => [one.id, 'wanted' in one ? 'PASS' : 'NOT TRIED']));
    expect(text).toContain('Everything that can be tried here holds.');
  });

  it('passes where the decimal sign is a comma, and in another zone', async () => {
    expect(failures(checked(await open({ locale: 'de_DE', timeZone: 'America/Santiago' })))).toEqual([]);
  });

  it('leaves the file as it was', async () => {
    const book = await open();
    book.select('Farm', 'B1');
    checked(book);
    expect(book.spreadsheet.getSheets().map((sheet) => sheet.getName())).toEqual(['Farm', 'Chart']);
    expect(book.spreadsheet.getNamedRanges()).toEqual([]);
    expect(book.values('Farm')).toEqual([['mine', 1, 2]]);
    expect(book.spreadsheet.getActiveSheet().getName()).toBe('Farm');
  });

  it('takes away a tab that an interrupted check has left, and its own where a call fails', async () => {
    const book = await open();
    book.failOn('merge');
    expect(failures(checked(book))).toEqual(['merged']);
    book.clearFailures();
    book.spreadsheet.insertSheet('Sounder check');
    expect(failures(checked(book))).toEqual([]);
    expect(book.spreadsheet.getSheets()).toHaveLength(2);
  });

  it('whoever may only look reads why in one sentence', async () => {
    const book = await open();
    book.failOn('insertSheet', 'You do not have permission to perform that action.');
    book.call('checkThisSpreadsheet');
    expect(book.shown.dialogs).toEqual([]);
    expect(book.shown.alerts[0]?.text).toMatch(/ask its owner for edit access/);
  });
});

describe('with a habit of the real service', () => {
  const FUNCTIONS = ['answers', 'one-cell', 'error-cells', 'date-argument'];
  const MODES: readonly [string, NonNullable<WorkbookOptions['modes']>, string[]][] = [
    ['refusals that come late are told on waiting', { lateRefusals: 'told' }, []],
    ['refusals that are lost', { lateRefusals: 'lost' }, ['late-refusal']],
    ['answers that load for a read', { loadingReads: 1 }, []],
    ['answers that load for four seconds', { loadingReads: 99, loadingSeconds: 4 }, []],
    ['answers that never come', { loadingReads: Number.POSITIVE_INFINITY }, [...FUNCTIONS, 'changing']],
    ['functions not called where a cell is an error', { errorCellsRefused: true }, ['error-cells']],
    ['dates by the zone of the script', { datesInScriptZone: true }, ['date-argument']],
    ['functions called whatever changes', { changingCellsRefused: false }, ['changing']],
    ['days joined as they are shown', { daysJoinAsShown: true }, ['criterion']],
    [
      'names read back as people see them',
      { namesReadBack: { IF: 'WENN', ROWS: 'ZEILEN' } },
      ['english-names'],
    ],
    ['decimals of one country only', { decimalsByCountry: false }, ['decimals']],
    ['number formats that are cleared', { clearFormatKeepsNumberFormats: false }, ['cleared-format']],
    ['blank references that show 0', { blankStaysBlank: false }, ['blank']],
    ['SUMPRODUCT that leaves text out', { sumproductPassesErrors: false }, ['sumproduct']],
    ['another automatic format', { automaticFormat: '#,##0.###' }, ['automatic']],
  ];
  it.each(MODES)('%s', async (_what, modes, lines) => {
    // A comma in decimals, and a day that begins later than in the zone of the script.
    const place = { locale: 'de_DE', timeZone: 'America/Santiago' };
    expect(failures(checked(await open({ modes, ...place })))).toEqual(lines);
  });

  it('a chart tab that says so, and one that does not', async () => {
    for (const [chartTabsTell, lines] of [
      [true, []],
      [false, ['chart-tabs']],
    ] as const) {
      const book = await open({ modes: { chartTabsTell } });
      book.makeChartTab('Chart');
      const text = checked(book);
      expect(failures(text)).toEqual(lines);
      expect(text.includes('1 without')).toBe(chartTabsTell);
    }
  });

  it('says late, when it was late', async () => {
    expect(checked(await open({ modes: { lateRefusals: 'no' } }))).toContain('Got: refused at once');
    expect(checked(await open({ modes: { lateRefusals: 'told' } }))).toContain('Got: refused on waiting');
    expect(checked(await open({ modes: { loadingReads: 1 } }))).toContain('Got: Loading..., then 1000.');
  });
});

describe('each line', () => {
  it.each(ASSUMPTIONS.filter((one) => 'wanted' in one).map(({ id }) => id))(
    '%s fails where nothing of it holds',
    (id) => {
      const { wanted } = ASSUMPTIONS.find((one) => one.id === id) as { wanted: RegExp };
      for (const got of ['', '#ERROR!', 'Loading...', 'refused: no', '0 with cells, 2 without'])
        expect(wanted.test(got)).toBe(false);
    },
  );
});

describe('a recording from a real file', () => {
  const { recorded, text } = JSON.parse(readFileSync('tests/google/recorded.json', 'utf8')) as {
    recorded: string;
    text: string;
  };
  it('was never made, or the stand-in behaves as it says', async () => {
    if (recorded === 'never') {
      expect(text).toBe('');
      console.log('tests/google/recorded.json: no recording was made in Google Sheets so far');
      return;
    }
    const results = (words: string) =>
      [...words.matchAll(/^(PASS|FAIL|NOT TRIED) +([\w-]+):/gm)].map(([, how, id]) => [id, how]);
    expect(results(checked(await open()))).toEqual(results(text));
  });
});
