/**
 * What a write touches, and what it refuses to touch: the new rectangle and what the old one leaves, nothing else.
 * Expected values are what was put into the sheet beforehand.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BLANK, formula, number, text } from '../../shared/block/cells';
import { cut } from '../../shared/block/read-block';
import type { BlockCell, TabContent, WriteBlock } from '../../shared/contract';
import { blockFingerprint } from '../../shared/table/block-fingerprint';
import { openWorkbook, type Workbook } from '../../src/headless';

const codeJs = readFileSync('dist/Code.js', 'utf8');
type Area = { tab: string; row: number; column: number; rows: number; columns: number };
/** Another stamp for each block. */
let stamps = 0;

type Options = Partial<Parameters<typeof openWorkbook>[0]>;

/** The grower's tab: the table goes to B3; everything else on it is the grower's. */
const AT = { tab: 'Farm', row: 3, column: 2 } as const;

function open(options: Options = {}): Promise<Workbook> {
  return openWorkbook({ codeJs, tabs: { Farm: [['Field book']] }, ...options });
}

function request(rows: number, columns: number, place: WriteBlock['place'], expects?: string): WriteBlock {
  const cells = Array.from({ length: rows }, (_, r): BlockCell[] =>
    Array.from({ length: columns }, (__, c) => (c === 0 ? text(`row ${r}`) : number(10 * r + c))),
  );
  stamps += 1;
  cells[0]?.splice(-1, 1, text(`stamp ${stamps}`));
  return {
    name: 'SOUNDER_TEST',
    place,
    cells,
    styles: cells.map((row) => row.map(() => 'plain' as const)),
    rules: [{ row: 0, column: 0, rows, columns: 1, formula: '=B3=""', background: '#ffeeaa' }],
    widths: Array.from({ length: columns }, () => 150),
    freezeRows: 2,
    ...(expects === undefined ? {} : { expects }),
  };
}

/** Its last column as a memory, and what is right of its second one as working columns. */
function withWorking(wish: WriteBlock): WriteBlock {
  const styleOf = (c: number, last: number) => (c === last ? 'memory' : c > 1 ? 'working' : 'plain');
  return { ...wish, styles: wish.styles.map((row) => row.map((_, c) => styleOf(c, row.length - 1))) };
}

function write(book: Workbook, wish: WriteBlock): Area {
  const reply = book.ask('writeBlock', wish);
  if (!reply.ok) throw new Error(reply.error);
  const { block, note } = reply.data as { block: Area; note: string };
  expect(note.replace(/^Notes attached .*$/, '')).toBe('');
  return block;
}

const first = (book: Workbook, rows: number, columns: number): Area =>
  write(book, request(rows, columns, { at: 'area', ...AT }));

/** The request for writing over `area`, as a page that has just read it. */
function over(book: Workbook, area: Area, rows: number, columns: number): WriteBlock {
  const reply = book.ask('readTabs', { tabs: [area.tab] });
  if (!reply.ok) throw new Error(reply.error);
  const { values, formulas } = cut((reply.data as TabContent[])[0]!, { name: 'SOUNDER_TEST', ...area });
  return request(rows, columns, { at: 'own', area }, blockFingerprint(values, formulas));
}

/** All that cells carry, for a rectangle of the tab. */
function looks(book: Workbook, a1: string): Record<string, unknown> {
  return book.gate.uncounted(() => {
    const range = book.range('Farm', a1);
    return {
      values: range.getValues(),
      formulas: range.getFormulas(),
      formats: range.getNumberFormats(),
      backgrounds: range.getBackgrounds(),
      colors: range.getFontColors(),
      weights: range.getFontWeights(),
      notes: range.getNotes(),
      merged: range.getMergedRanges().map((one) => one.getA1Notation()),
    };
  });
}

function sheetOf(book: Workbook, tab = 'Farm') {
  return book.spreadsheet.getSheetByName(tab)!;
}

function view(book: Workbook): unknown {
  return book.gate.uncounted(() => ({
    frozen: sheetOf(book).getFrozenRows(),
    hidden: [1, 2, 3, 4, 5, 6, 7].map((c) => sheetOf(book).isColumnHiddenByUser(c)),
  }));
}

/** Something of the grower's: a value with format, colour and note, and a formula that points at it. */
function settle(book: Workbook, cell: string, formula: string): void {
  book.gate.uncounted(() => {
    const range = book.range('Farm', cell);
    range.setNumberFormat('0.00').setValue(4.5).setBackground('#cfe2f3').setFontWeight('bold');
    range.setNote('ask Ida');
    book.range('Farm', formula).setFormula(`=${cell}*2`);
  });
}

describe('cells that are not of the table', () => {
  // Issue 12, fault 3: the smallest rectangle over both was written, and a note in its free corner was wiped.
  it.each([
    ['fewer rows, more columns', [6, 2], [3, 4], 'E7', 'D8'],
    ['more rows, fewer columns', [3, 4], [6, 2], 'D7', 'E8'],
    ['smaller both ways', [6, 4], [3, 2], 'F4', 'F9'],
    ['larger both ways', [3, 2], [6, 4], 'G9', 'A12'],
  ] as const)('keep all they carry: %s', async (_what, old, next, cell, formula) => {
    const book = await open();
    const area = first(book, old[0], old[1]);
    settle(book, cell, formula);
    const outside = (): unknown => [
      ...['A1:A12', 'A1:H2', 'F1:H12', 'A9:H12', cell, formula].map((a1) => looks(book, a1)),
      view(book),
    ];
    const before = outside();
    write(book, over(book, area, next[0], next[1]));
    expect(outside()).toEqual(before);
    expect(book.value('Farm', 'B3')).toBe('row 0');
  });

  it('are left alone where a write fails and formats are put back', async () => {
    const book = await open();
    const area = first(book, 6, 2);
    settle(book, 'E7', 'D8');
    const wish = over(book, area, 3, 4);
    book.protectByOther('Farm', 'E7');
    book.failOn('setValues');
    const before = looks(book, 'A1:H12');
    expect(book.ask('writeBlock', wish)).toMatchObject({
      ok: false,
      error: expect.stringContaining('left as it was'),
    });
    expect(looks(book, 'A1:H12')).toEqual(before);
  });

  it('plain cells get no fill, first or anew: the lines of the grid stay to be seen', async () => {
    const book = await open();
    const area = first(book, 3, 2);
    const fill = (): unknown => book.state.book.style(book.state.book.idOf('Farm')!, 2, 1).fillColor;
    expect(fill()).toBeUndefined();
    const wish = over(book, area, 3, 2);
    const cells = wish.cells.map((row, r) =>
      row.map((cell, c) => ({ ...cell, from: [r, c] as [number, number] })),
    );
    write(book, { ...wish, cells });
    expect(fill()).toBeUndefined();
  });
});

describe('a place that cannot be written', () => {
  function refuses(book: Workbook, wish: WriteBlock, why: RegExp): void {
    const before = looks(book, 'A1:H12');
    book.resetCounts();
    const reply = book.ask('writeBlock', wish);
    expect(reply).toMatchObject({ ok: false, error: expect.stringMatching(why) });
    expect(reply).toMatchObject({ error: expect.stringContaining('Nothing was written') });
    const writes = Object.keys(book.callCounts).filter((call) => /\.(set|clear|insert)/.test(call));
    expect(writes).toEqual([]);
    expect(looks(book, 'A1:H12')).toEqual(before);
  }

  // Issue 12, fault 6.
  it('merged blank cells: in a free area, where a table grows, reaching in from outside', async () => {
    const free = await open({ merges: { Farm: ['C4:D4'] } });
    refuses(free, request(3, 3, { at: 'area', ...AT }), /merged in C4:D4\./);
    const grown = await open({ merges: { Farm: ['C6:D7'] } });
    refuses(grown, over(grown, first(grown, 2, 3), 5, 3), /merged in C6:D7\./);
    const reaching = await open({ merges: { Farm: ['D5:F5'] } });
    refuses(reaching, request(3, 3, { at: 'area', ...AT }), /merged in D5:F5\./);
  });

  it('merged cells on a blank tab that is to be used', async () => {
    const book = await open({ tabs: { Farm: [['x']], Plan: [] }, merges: { Plan: ['A1:B1'] } });
    refuses(book, request(3, 3, { at: 'new-tab', tab: 'Plan' }), /merged in A1:B1\./);
  });

  it('cells that somebody else protects', async () => {
    const book = await open();
    const area = first(book, 2, 2);
    book.protectByOther('Farm', 'D4:D5');
    refuses(book, over(book, area, 4, 3), /protected in D4:D5\./);
    // Elsewhere on the tab they keep no table from being written.
    expect(book.ask('writeBlock', over(book, area, 4, 2))).toMatchObject({ ok: true });
    expect(book.value('Farm', 'B6')).toBe('row 3');
  });

  it('protected cells of the old table that would be cleared', async () => {
    const book = await open();
    const area = first(book, 6, 2);
    book.protectByOther('Farm', 'B8');
    refuses(book, over(book, area, 3, 2), /protected in B8\./);
  });

  it('a tab that somebody else protects as a whole', async () => {
    const book = await open();
    book.protectByOther('Farm');
    refuses(book, request(2, 2, { at: 'area', ...AT }), /"Farm" is protected/);
  });

  it('typed columns, refused late: everything is put back', async () => {
    const book = await open({ modes: { lateRefusals: 'told' } });
    const area = first(book, 3, 2);
    book.typeColumns('Farm', 'B3:C6');
    const before = looks(book, 'A1:H12');
    expect(book.ask('writeBlock', over(book, area, 4, 2))).toMatchObject({
      ok: false,
      error: expect.stringMatching(/Convert to unformatted data.*left as it was/),
    });
    expect(looks(book, 'A1:H12')).toEqual(before);
  });

  it('a tab of that name that holds a chart', async () => {
    const book = await open({ tabs: { Farm: [['x']], Plan: [] } });
    book.makeChartTab('Plan');
    refuses(book, request(2, 2, { at: 'new-tab', tab: 'plan' }), /already a tab named "plan"/);
  });

  it('a tab with fewer rows by now than the table had', async () => {
    const book = await open();
    const wish = over(book, first(book, 6, 2), 3, 2);
    book.gate.uncounted(() => sheetOf(book).deleteRows(6, sheetOf(book).getMaxRows() - 5));
    expect(book.ask('writeBlock', wish)).toMatchObject({
      ok: false,
      error: expect.stringContaining('was changed after it was read here'),
    });
  });
});

describe('what the grower sees of a tab', () => {
  const own = (wish: WriteBlock, more: object): WriteBlock => ({
    ...wish,
    place: { ...wish.place, ...more } as WriteBlock['place'],
  });
  const freeze = (book: Workbook, rows: number): unknown =>
    book.gate.uncounted(() => sheetOf(book).setFrozenRows(rows));
  const frozen = (book: Workbook): number => book.gate.uncounted(() => sheetOf(book).getFrozenRows());

  // Issue 12, fault 8.
  it('one frozen row stays one where a table stands further down', async () => {
    const book = await open();
    const area = write(book, request(3, 2, { at: 'area', tab: 'Farm', row: 60, column: 1 }));
    freeze(book, 1);
    write(book, own({ ...over(book, area, 4, 2), freezeRows: 63 }, { frozenRows: 61 }));
    expect(frozen(book)).toBe(1);
  });

  it.each([
    [2, 3],
    [1, 1],
    [0, 0],
  ])(
    'of %i frozen rows where the headings are row 2 there are %i where they are row 3',
    async (before, after) => {
      const book = await open({ tabs: { Farm: [] } });
      const area = write(book, request(5, 2, { at: 'area', tab: 'Farm', row: 1, column: 1 }));
      freeze(book, before);
      write(book, own({ ...over(book, area, 6, 2), freezeRows: 3 }, { frozenRows: 2 }));
      expect(frozen(book)).toBe(after);
    },
  );

  it('working columns are hidden on a tab of ours, stay what the grower makes of them, and go along', async () => {
    const book = await open();
    const hidden = (of: Workbook, tab: string): number[] =>
      of.gate.uncounted(() => [1, 2, 3, 4, 5, 6].filter((c) => sheetOf(of, tab).isColumnHiddenByUser(c)));
    const area = write(book, withWorking(request(3, 4, { at: 'new-tab', tab: 'Ours' })));
    expect(hidden(book, 'Ours')).toEqual([3, 4]);
    write(book, withWorking(own(over(book, area, 3, 6), { memoryColumn: 4 })));
    expect(hidden(book, 'Ours')).toEqual([3, 4, 5, 6]);
    const grown = await open();
    write(grown, withWorking(request(3, 4, { at: 'area', ...AT })));
    expect(hidden(grown, 'Farm')).toEqual([]);
  });

  it.each([false, true])(
    'the column of the memory is hidden anew where it was hidden: %s',
    async (isHidden) => {
      const book = await open({ tabs: { Farm: [] } });
      const area = write(book, request(3, 2, { at: 'area', tab: 'Farm', row: 1, column: 1 }));
      if (isHidden) book.gate.uncounted(() => sheetOf(book).hideColumns(2));
      write(book, withWorking(own(over(book, area, 3, 3), { memoryColumn: 2 })));
      const hidden = book.gate.uncounted(() => [1, 2, 3].map((c) => sheetOf(book).isColumnHiddenByUser(c)));
      expect(hidden).toEqual([false, false, isHidden]);
    },
  );
});

it('a drop-down of the grower inside stays itself where boxes are written anew', async () => {
  const book = await open();
  const boxAt = (row: number, wish: WriteBlock): WriteBlock => ({
    ...wish,
    cells: wish.cells.map((cells, r) =>
      cells.map((cell, c): BlockCell => (c === 1 && r === row ? { k: 'b', v: false, box: true } : cell)),
    ),
  });
  const area = write(book, boxAt(1, request(4, 3, { at: 'area', ...AT })));
  const { book: cells } = book.state;
  const sheetId = cells.idOf('Farm')!;
  const criterion = {
    type: 'isValueInList',
    values: ['wet', 'dry'],
    displayStyle: 'arrow',
    colors: { wet: '#aaccff' },
  };
  const rule = { id: 'of the grower', criterion, isBlocking: false };
  const ranges = [cells.rangeData(sheetId, { left: 3, right: 3, top: 4, bottom: 5 })];
  cells.must({ type: 'ADD_DATA_VALIDATION_RULE', sheetId, ranges, rule });
  write(book, boxAt(2, over(book, area, 4, 3)));
  const kinds = book.gate.uncounted(() => book.range('Farm', 'C4:D5').getDataValidations());
  expect(kinds.map((row) => row.map((one) => one?.getCriteriaType()))).toEqual([
    [undefined, undefined],
    ['CHECKBOX', 'CUSTOM_FORMULA'],
  ]);
  expect(cells.model.getters.getValidationRuleForCell({ sheetId, row: 4, col: 3 })).toMatchObject(rule);
});

it('rows and columns that a smaller table leaves are cells without a format: a date typed there is a date', async () => {
  const book = await open();
  const area = first(book, 4, 4);
  write(book, over(book, area, 2, 2));
  for (const a1 of ['B6', 'E3', 'C5']) {
    book.type('Farm', a1, '2026-04-21');
    expect(book.value('Farm', a1)).toEqual(new Date('2026-04-21T00:00:00Z'));
  }
});

describe('a table whose cells are gone', () => {
  // Issue 12, fault 5.
  it.each([{ at: 'new-tab', tab: 'Plan' } as const, { at: 'area', ...AT } as const])(
    'counts as none: another is written, %o',
    async (place) => {
      const book = await open();
      write(book, request(3, 2, { at: 'new-tab', tab: 'Plan' }));
      book.gate.uncounted(() => sheetOf(book, 'Plan').clear());
      expect(write(book, request(4, 2, place))).toMatchObject({ rows: 4 });
    },
  );

  it('its tab deleted: another is written', async () => {
    const book = await open();
    write(book, request(3, 2, { at: 'new-tab', tab: 'Plan' }));
    book.gate.uncounted(() => book.spreadsheet.deleteSheet(sheetOf(book, 'Plan')));
    expect(write(book, request(4, 2, { at: 'new-tab', tab: 'Plan' }))).toMatchObject({ rows: 4 });
  });
});

describe('a formula put into a cell', () => {
  const put = (book: Workbook, a1: string) => {
    const place = { tab: 'Farm', column: 4, row: Number(a1.slice(1)) };
    return book.ask('changeCells', {
      cells: [{ ...place, before: BLANK, after: formula('=FENCE_LENGTH(200;300;2)') }],
    });
  };

  // Issue 12, fault 9.
  it('never replaces a formula, even one that shows nothing', async () => {
    const book = await open();
    for (const formula of ['=IF(1=1,"","x")', '=SUM(1,2)']) {
      book.type('Farm', 'D4', formula);
      const before = book.formula('Farm', 'D4');
      expect(put(book, 'D4')).toMatchObject({
        ok: false,
        error: expect.stringContaining('was changed after it was read here'),
      });
      expect(book.formula('Farm', 'D4')).toBe(before);
    }
  });

  it('lives in a cell of plain text, and leaves another format alone', async () => {
    const book = await open();
    for (const [a1, format, after] of [
      ['D4', '@', '0.###############'],
      ['D5', '0.00', '0.00'],
    ] as const) {
      book.gate.uncounted(() => book.range('Farm', a1).setNumberFormat(format));
      expect(put(book, a1)).toMatchObject({ ok: true });
      expect(book.formula('Farm', a1)).toContain('FENCE_LENGTH');
      expect(typeof book.value('Farm', a1)).toBe('number');
      expect(book.gate.uncounted(() => book.range('Farm', a1).getNumberFormat())).toBe(after);
    }
  });
});
