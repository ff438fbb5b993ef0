/** The block writer through the built script, on the strict stand-in for the spreadsheet service. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { text } from '../../shared/block/cells';
import { cut } from '../../shared/block/read-block';
import type { BlockCell, BlockInfo, TabContent, WireCell, WriteBlock } from '../../shared/contract';
import { blockFingerprint } from '../../shared/table/block-fingerprint';
import { openWorkbook, type Workbook } from '../../src/headless';

const codeJs = readFileSync('dist/Code.js', 'utf8');
const FARM = {
  Notes: [
    ['Field book', 12],
    ['wet corner', { d: '2026-03-01' }],
  ],
} as const;

function open(options: Partial<Parameters<typeof openWorkbook>[0]> = {}): Promise<Workbook> {
  return openWorkbook({ codeJs, tabs: FARM, ...options });
}

function block(cells: BlockCell[][], place: WriteBlock['place'], expects?: string): WriteBlock {
  return {
    name: 'SOUNDER_TEST',
    place,
    cells,
    styles: cells.map((row) => row.map(() => 'plain' as const)),
    rules: [{ row: 0, column: 0, rows: 1, columns: 1, formula: '=TRUE', background: '#ffeeaa' }],
    widths: cells[0]?.map(() => 120) ?? [],
    freezeRows: 1,
    ...(expects === undefined ? {} : { expects }),
  };
}

const CELLS: BlockCell[][] = [
  [
    { k: 't', v: '=1+1' },
    { k: 'n', v: 4.5 },
    { k: 'd', v: '2026-03-29' },
  ],
  [
    { k: 't', v: '007' },
    { k: 'f', v: '=SUM(B1;B1)' },
    { k: 'b', v: true },
  ],
  [{ k: 't', v: '@home' }, { k: 'blank' }, { k: 't', v: '+49 30' }],
];
const SMALLER: BlockCell[][] = [
  [
    { k: 't', v: 'only row' },
    { k: 'n', v: 1 },
  ],
];

function everything(book: Workbook): string {
  const tabs = book.spreadsheet.getSheets().map((sheet) => sheet.getName());
  return JSON.stringify(tabs.map((tab) => [tab, book.values(tab), book.formulas(tab)]));
}

function read(book: Workbook, info: BlockInfo): { values: WireCell[][]; formulas: string[][] } {
  const reply = book.ask('readTabs', { tabs: [info.tab] });
  if (!reply.ok) throw new Error(reply.error);
  return cut((reply.data as TabContent[])[0] as TabContent, info) as never;
}

function fingerprint(book: Workbook, info: BlockInfo): string {
  const { values, formulas } = read(book, info);
  return blockFingerprint(values, formulas);
}

function written(book: Workbook, request: WriteBlock): BlockInfo {
  const reply = book.ask('writeBlock', request);
  if (!reply.ok) throw new Error(reply.error);
  const done = reply.data as { block: BlockInfo; note: string };
  expect(done.note).toBe('');
  return done.block;
}

describe('writing a block', () => {
  it.each(['en_US', 'de_DE'])('keeps text as text, dates as dates, formulas live in %s', async (locale) => {
    const book = await open({ locale, timeZone: 'America/New_York' });
    const info = written(book, block(CELLS, { at: 'new-tab', tab: 'Plan' }));
    expect(info).toEqual({ name: 'SOUNDER_TEST', tab: 'Plan', row: 1, column: 1, rows: 3, columns: 3 });
    expect(read(book, info).values).toEqual([
      ['=1+1', 4.5, { d: '2026-03-29' }],
      ['007', 9, true],
      ['@home', '', '+49 30'],
    ]);
    expect(book.formulas('Plan').flat().filter(Boolean)).toHaveLength(1);
  });

  it('writes into an empty area and refuses one where something stands, naming the cells', async () => {
    const book = await open();
    const before = everything(book);
    const refused = book.ask('writeBlock', block(CELLS, { at: 'area', tab: 'Notes', row: 2, column: 2 }));
    expect(refused).toEqual({
      ok: false,
      error:
        'The table needs B2:D4 on "Notes", but something stands in B2. Choose an empty area or a new tab, or move those cells. Nothing was written.',
    });
    expect(everything(book)).toBe(before);
    written(book, block(CELLS, { at: 'area', tab: 'Notes', row: 5, column: 2 }));
    expect(book.value('Notes', 'B5')).toBe('=1+1');
  });

  it('refuses a tab name that is taken and a second table of the same kind', async () => {
    const book = await open();
    expect(book.ask('writeBlock', block(CELLS, { at: 'new-tab', tab: 'notes' }))).toMatchObject({
      ok: false,
    });
    // A table of ours is known by its memory or its title.
    const [[, ...others] = [], ...rows] = CELLS;
    written(book, block([[text('Fence walk'), ...others], ...rows], { at: 'new-tab', tab: 'Plan' }));
    const again = book.ask('writeBlock', block(CELLS, { at: 'new-tab', tab: 'Plan 2' }));
    expect(again).toMatchObject({
      ok: false,
      error: expect.stringContaining('already stands on "Plan" at A1:C3'),
    });
  });

  it('gives the name to a new table where that is asked for, and leaves the old one as it is', async () => {
    const book = await open();
    written(book, block(CELLS, { at: 'new-tab', tab: 'Plan' }));
    const before = JSON.stringify([book.values('Plan'), book.formulas('Plan')]);
    const next = { ...block(SMALLER, { at: 'new-tab', tab: 'Plan 2' }), replaces: true as const };
    expect(written(book, next)).toMatchObject({ tab: 'Plan 2', rows: 1, columns: 2 });
    expect(JSON.stringify([book.values('Plan'), book.formulas('Plan')])).toBe(before);
    const { blocks } = (book.ask('overview', {}) as { data: { blocks: BlockInfo[] } }).data;
    expect(blocks).toEqual([{ name: 'SOUNDER_TEST', tab: 'Plan 2', row: 1, column: 1, rows: 1, columns: 2 }]);
  });

  it('rebuilds its own block, smaller or larger, and blanks what is left over', async () => {
    const book = await open();
    const first = written(book, block(CELLS, { at: 'new-tab', tab: 'Plan' }));
    const second = written(book, block(SMALLER, { at: 'own' }, fingerprint(book, first)));
    expect(book.values('Plan')).toEqual([['only row', 1]]);
    written(book, block(CELLS, { at: 'own' }, fingerprint(book, second)));
    expect(book.value('Plan', 'C3')).toBe('+49 30');
  });

  // 2026-11: every rule inside the block was taken for the builder's and was gone after a rebuild.
  it('replaces its own colours by rule and keeps those that the grower made inside the block', async () => {
    const book = await open();
    let info = written(book, block(CELLS, { at: 'new-tab', tab: 'Table' }));
    const sheet = book.spreadsheet.getSheetByName('Table')!;
    const [ours] = sheet.getConditionalFormatRules();
    const own = ours!
      .copy()
      .whenFormulaSatisfied('=$B1<0.7')
      .setBackground('#ffcccc')
      .setRanges([sheet.getRange('B1:B3')])
      .build();
    sheet.setConditionalFormatRules([...sheet.getConditionalFormatRules(), own]);
    for (const cells of [SMALLER, CELLS]) {
      info = written(book, block(cells, { at: 'own' }, fingerprint(book, info)));
    }
    const formulas = sheet
      .getConditionalFormatRules()
      .map((rule) => rule.getBooleanCondition()!.getCriteriaValues()[0]);
    expect([...formulas].sort()).toEqual(['=$B1<0.7', '=TRUE']);
  });

  it('names cells with notes attached, which do not move with the rows', async () => {
    const book = await open();
    const info = written(book, block(CELLS, { at: 'new-tab', tab: 'Table' }));
    book.range('Table', 'B2').setNote('ask Ida');
    const reply = book.ask('writeBlock', block(SMALLER, { at: 'own' }, fingerprint(book, info)));
    expect(reply).toMatchObject({ ok: true, data: { note: expect.stringContaining('(B2)') } });
    expect(book.range('Table', 'B2').getNote()).toBe('ask Ida');
  });

  it('refuses to rebuild where somebody typed meanwhile', async () => {
    const book = await open();
    const info = written(book, block(CELLS, { at: 'new-tab', tab: 'Plan' }));
    const expects = fingerprint(book, info);
    book.type('Plan', 'B3', '17');
    const before = everything(book);
    const reply = book.ask('writeBlock', block(SMALLER, { at: 'own' }, expects));
    expect(reply).toMatchObject({
      ok: false,
      error: expect.stringContaining('The table on "Plan" was changed'),
    });
    expect(everything(book)).toBe(before);
  });

  it('grows no further than free cells allow', async () => {
    const book = await open();
    const info = written(book, block(SMALLER, { at: 'area', tab: 'Notes', row: 4, column: 1 }));
    book.type('Notes', 'A6', 'mine');
    const reply = book.ask('writeBlock', block(CELLS, { at: 'own' }, fingerprint(book, info)));
    expect(reply).toMatchObject({ ok: false, error: expect.stringContaining('something stands in A6') });
  });

  it('takes in rows below that were read with it, and only those', async () => {
    const book = await open();
    const info = written(book, block(SMALLER, { at: 'area', tab: 'Notes', row: 4, column: 1 }));
    book.type('Notes', 'A5', 'mine');
    book.type('Notes', 'A7', 'apart');
    const grown = { ...info, rows: 2 };
    const stale = fingerprint(book, grown);
    book.type('Notes', 'A5', 'mine, changed');
    expect(book.ask('writeBlock', block(SMALLER, { at: 'own', area: grown }, stale))).toMatchObject({
      ok: false,
      error: expect.stringContaining('was changed after it was read here'),
    });
    const next = written(book, block(CELLS, { at: 'own', area: grown }, fingerprint(book, grown)));
    expect(next).toEqual({ ...info, rows: 3, columns: 3 });
    expect(book.value('Notes', 'A5')).toBe('007');
    expect(book.value('Notes', 'A7')).toBe('apart');
  });

  it('works in a copy of the file: the block is found by its name', async () => {
    const book = await open();
    const info = written(book, block(CELLS, { at: 'new-tab', tab: 'Plan' }));
    const copy = await book.copy();
    written(copy, block(SMALLER, { at: 'own' }, fingerprint(copy, info)));
    expect(copy.values('Plan')).toEqual([['only row', 1]]);
    expect(book.value('Plan', 'C3')).toBe('+49 30');
  });

  it('takes as many service calls for 900 rows as for 2, and four more where the tab has to grow', async () => {
    const counts = [];
    for (const rows of [2, 900, 3000]) {
      const book = await open();
      book.resetCounts();
      const cells = Array.from({ length: rows }, (_, r): BlockCell[] => [
        { k: 'n', v: r },
        { k: 'd', v: '2026-05-01' },
      ]);
      written(book, block(cells, { at: 'new-tab', tab: 'Plan' }));
      counts.push(book.callTotal);
    }
    expect(counts[1]).toBe(counts[0]);
    expect(counts[2]).toBe((counts[0] ?? 0) + 4);
  });
});

describe('when the service fails', () => {
  it('says in words that a part is protected, that permission is missing, that another one is writing', async () => {
    const book = await open();
    book.holdLockElsewhere();
    expect(book.ask('writeBlock', block(CELLS, { at: 'new-tab', tab: 'Plan' }))).toMatchObject({
      error: expect.stringContaining('Somebody else is writing a table'),
    });
    book.holdLockElsewhere(false);
    const info = written(book, block(CELLS, { at: 'new-tab', tab: 'Plan' }));
    book.protectByOther('Plan');
    const before = everything(book);
    const reply = book.ask('writeBlock', block(SMALLER, { at: 'own' }, fingerprint(book, info)));
    expect(reply).toMatchObject({
      ok: false,
      error: expect.stringMatching(/protected.*Nothing was written/),
    });
    expect(everything(book)).toBe(before);
    book.failOn(
      'getActiveSpreadsheet',
      'You do not have permission to call SpreadsheetApp.getActiveSpreadsheet',
    );
    expect(book.ask('overview')).toMatchObject({
      ok: false,
      error: expect.stringContaining('Google did not allow it'),
    });
  });

  it('turns nonsense from the page into a sentence', async () => {
    const book = await open();
    const before = everything(book);
    expect(book.ask('writeBlock', { name: 'x' })).toMatchObject({
      ok: false,
      error: expect.stringContaining('Nothing was written'),
    });
    expect(book.ask('toString')).toMatchObject({ ok: false });
    expect(JSON.parse(String(book.call('answerSidebar', 'overview', '{broken')))).toMatchObject({
      ok: false,
    });
    expect(everything(book)).toBe(before);
  });
});
