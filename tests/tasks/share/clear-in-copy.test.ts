/** Private cells are cleared in a copy and nowhere else: through the real script, in the preview's workbook. */
import { describe, expect, it } from 'vitest';
import { number, text } from '../../../shared/block/cells';
import { cut, cutBlock, wholeOf } from '../../../shared/block/read-block';
import type { Overview, TabContent, WireCell } from '../../../shared/contract';
import { blockFingerprint } from '../../../shared/table/block-fingerprint';
import { growerLists } from '../../../shared/tasks/grower-lists';
import { ITEM_HEADINGS } from '../../../shared/tasks/materials/item-rows';
import { readBook } from '../../../shared/tasks/run-task';
import { startSettings } from '../../../shared/tasks/settings';
import { findPrivate, type PrivateFound } from '../../../shared/tasks/share/find-private';
import { markTask } from '../../../shared/tasks/share/mark-task';
import { isMark, originalMark } from '../../../shared/tasks/share/original-mark';
import { composeLogBlock, LOG_BLOCK } from '../../../shared/tasks/training/log-block';
import { composePenBlock, PEN_BLOCK, PEN_SETTINGS } from '../../../shared/tasks/training/pen-block';
import { type Envelope, openWorkbook, portOf, runTask, type Workbook } from '../../../src/headless';
import { scriptText } from '../script-text';
import { readTab, writeInSheet } from '../sheet-block';
import { day, openToday } from '../today/today-farm';

const ORIGIN = { row: 1, column: 1 };

async function farm({ marked }: { marked: boolean }): Promise<Workbook> {
  const book = await openWorkbook({
    tabs: { Own: [['Price I paid', 1200]] },
    codeJs: await scriptText(),
    today: '2026-05-20',
  });
  const row = new Map([
    ['Pig or batch', text('Red')],
    ['Observer', text('Ada')],
    ['Note', text('limps')],
  ]);
  const on = (tab: string) => ({ at: 'new-tab', tab }) as const;
  writeInSheet(book, LOG_BLOCK, composeLogBlock({ minimumDays: 3 }, [row], [], ORIGIN), on('Training'));
  const onHand = [number(3), text(''), number(5)];
  const pen = composePenBlock(startSettings(PEN_SETTINGS, 'US'), onHand, 'US', ORIGIN);
  writeInSheet(book, PEN_BLOCK, pen, on('Pen'));
  if (marked) {
    const { mark } = data<{ mark: string }>(book.ask('fileMark'));
    await runTask(portOf(book), markTask(mark));
  }
  return book;
}

function data<Reply>(envelope: Envelope): Reply {
  if (!envelope.ok) throw new Error(envelope.error);
  return envelope.data as Reply;
}

function privateIn(book: Workbook) {
  const { blocks } = data<Overview>(book.ask('overview'));
  const tabs = data<TabContent[]>(book.ask('readTabs', { tabs: [...new Set(blocks.map(({ tab }) => tab))] }));
  const contents = blocks.map((info) => cutBlock(tabs.find(({ name }) => name === info.tab)!, info));
  return { contents, found: findPrivate(contents) };
}

function clear(book: Workbook, pick: (found: PrivateFound) => boolean = () => true): Envelope {
  const { contents, found } = privateIn(book);
  const picked = found.filter(pick);
  const names = new Set(picked.map(({ block }) => block));
  return book.ask('clearInCopy', {
    rows: [],
    tables: [],
    areas: picked.map(({ area }) => area),
    blocks: contents
      .filter(({ info }) => names.has(info.name))
      .map((block) => {
        const { values, formulas } = cut(readTab(book, block.info.tab), wholeOf(block));
        return { name: block.info.name, expects: blockFingerprint(values, formulas) };
      }),
  });
}

describe('before a copy is given away', () => {
  it('lists what is private, and only that', async () => {
    const { found } = privateIn(await farm({ marked: true }));
    expect(found.map(({ what, filled, kind }) => `${what}: ${filled} (${kind})`)).toEqual([
      '“Pig or batch” in the training log: 1 (logs)',
      '“Observer” in the training log: 1 (logs)',
      '“Note” in the training log: 1 (notes)',
      '“On hand” in the training pen: 2 (stock)',
    ]);
  });

  it('finds what was kept below a table, columns and remarks of the grower’s own', () => {
    const rotation: WireCell[][] = [
      ['Rotation from 2026-05-01 to 2026-10-01', '', '', '', ''],
      ['When a group has moved', '', '', 'owes me 90', ''],
      ['Reds still stand in Lane 2 since 2026-05-06', '', '', '', ''],
      ['Group', 'Paddock', 'Moved in', 'Note', 'Who moved'],
      ['', '', '', '', ''],
      ['Reds', 'Lane 1', { d: '2026-05-02' }, '', 'Sam'],
      ['Reds', 'Lane 2', '', '', ''],
      ['Reds', 'Lane 3', '', '', 'Ann'],
      ['', '', '', '', ''],
      ['Settings of this table', '', '', '', ''],
      ['Units', 'US', '', '', ''],
      ['', '', '', '', ''],
      ['', '', '', '', ''],
      ['Kept from this table as it was before', '', '', '', ''],
      ['Reds', '', '', 'pay 40 to Ray', ''],
    ];
    const items: WireCell[][] = [
      [...ITEM_HEADINGS],
      ['Line posts', 40, 'posts', '', 40, '', '', 'With the spares.'],
      ['Sledge', 1, 'each', '', 1, '', '', 'from the neighbour'],
      ['To buy, together', '', '', '', '', '', 0, ''],
    ];
    const block = (name: string, values: WireCell[][]) => ({
      info: { name, tab: 'T', row: 1, column: 1, rows: values.length, columns: values[0]!.length },
      values,
      formulas: values.map((row) => row.map(() => '')),
    });
    const found = findPrivate([block('SOUNDER_ROTATION', rotation), block('SOUNDER_MATERIALS', items)]);
    expect(found.map(({ what, area }) => [what, area.row, area.column, area.rows])).toEqual([
      ['“Moved in” in the moves', 6, 3, 1],
      ['What stands above the moves', 3, 1, 1],
      ['What stands above the moves', 2, 4, 1],
      ['“Kept from this table as it was before”', 15, 1, 1],
      ['“Kept from this table as it was before”', 15, 4, 1],
      ['“Who moved”, a column of yours in the moves', 6, 5, 1],
      ['“Who moved”, a column of yours in the moves', 8, 5, 1],
      ['Remarks beside items of yours in the fence materials', 3, 8, 1],
    ]);
  });

  it('clears in the copy, keeps everything else there, and leaves the original alone', async () => {
    const original = await farm({ marked: true });
    const before = ['Own', 'Training', 'Pen', 'Sharing'].map((tab) => original.values(tab));
    const copy = await original.copy();
    expect(clear(copy, ({ kind }) => kind !== 'stock')).toEqual({ ok: true, data: { cells: 3 } });
    expect(copy.values('Training').flat()).not.toContain('Ada');
    expect(copy.values('Training').flat()).not.toContain('limps');
    expect(copy.values('Pen')).toEqual(before[2]);
    expect(copy.values('Own')).toEqual([['Price I paid', 1200]]);
    expect(copy.formulas('Training')).toEqual(original.formulas('Training'));
    expect(['Own', 'Training', 'Pen', 'Sharing'].map((tab) => original.values(tab))).toEqual(before);
  });

  it('leaves no half of a row in the herd log, and says true counts', async () => {
    const herd = [
      { group: 'Reds', day: day('2026-05-04'), head: 8 },
      { group: 'Reds', day: day('2026-05-06'), weightKg: 34 },
    ];
    const { book } = await openToday('2026-05-07', { moved: ['2026-05-01'], herd });
    const { mark } = data<{ mark: string }>(book.ask('fileMark'));
    await runTask(portOf(book), markTask(mark));
    const copy = await book.copy();
    const inLog = privateIn(copy).found.filter(({ what }) => what.includes('herd log'));
    // Two groups, two days, a head and a weight.
    expect(inLog.reduce((sum, { filled }) => sum + filled, 0)).toBe(6);
    expect(clear(copy)).toMatchObject({ ok: true });
    expect(privateIn(copy).found).toEqual([]);
    expect(growerLists(await readBook(portOf(copy)), 'US').problems).toEqual([]);
    expect(copy.shownValues('Herd log').flat().join()).not.toContain('Reds');
  });

  it('refuses in the original, and in a file without a mark, marked or copied', async () => {
    const original = await farm({ marked: true });
    expect(clear(original)).toEqual({
      ok: false,
      error: 'This is the original, not a copy. Nothing was cleared.',
    });
    expect(original.values('Training').flat()).toContain('Ada');
    const unmarked = await farm({ marked: false });
    expect(clear(unmarked)).toMatchObject({
      ok: false,
      error: expect.stringContaining('carries no mark'),
    });
    expect(clear(await unmarked.copy())).toMatchObject({ ok: false });
  });

  it('goes by the name of the mark: not by what is typed or pasted over it, nor by a table from another file', async () => {
    const original = await farm({ marked: true });
    const other = await openWorkbook({ tabs: { Own: [['']] }, codeJs: await scriptText() });
    await runTask(portOf(other), markTask('SOUNDER_ORIGINAL_DEADBEEFDEADBEEF'));
    const sheet = other.spreadsheet.getSheetByName('Sharing')!;
    const table = sheet.getRange(1, 1, sheet.getMaxRows(), sheet.getMaxColumns()).getValues();
    const paste = (into: Workbook, tab: string): void => {
      const target = into.spreadsheet.getSheetByName(tab)!;
      target.getRange(1, 1, table.length, table[0]!.length).setValues(table);
    };
    paste(original, 'Sharing');
    expect(clear(original)).toMatchObject({ ok: false, error: expect.stringContaining('is the original') });
    expect(original.values('Training').flat()).toContain('Ada');
    const unmarked = await farm({ marked: false });
    unmarked.spreadsheet.insertSheet('Pasted');
    paste(unmarked, 'Pasted');
    expect((await readBook(portOf(unmarked))).overview.blocks.filter(isMark)).toEqual([]);
    expect(clear(unmarked)).toMatchObject({ ok: false, error: expect.stringContaining('carries no mark') });
  });

  it('marks a copy that is worked in where the mark of the first file stands', async () => {
    const copy = await (await farm({ marked: true })).copy();
    const { mark } = data<{ mark: string }>(copy.ask('fileMark'));
    const outcome = await runTask(portOf(copy), markTask(mark));
    expect(outcome).toMatchObject({ kind: 'written', done: { block: { tab: 'Sharing' } } });
    expect(clear(copy)).toMatchObject({ ok: false, error: expect.stringContaining('is the original') });
    expect(clear(await copy.copy())).toMatchObject({ ok: true });
  });

  it('refuses cells outside our own tables and tables that changed meanwhile', async () => {
    const copy = await (await farm({ marked: true })).copy();
    const own = copy.ask('clearInCopy', {
      rows: [],
      tables: [],
      areas: [{ tab: 'Own', row: 1, column: 2, rows: 1, columns: 1 }],
      blocks: [],
    });
    expect(own).toMatchObject({
      ok: false,
      error: 'B1 on "Own" is not in a table of ours. Nothing was cleared.',
    });
    expect(copy.values('Own')).toEqual([['Price I paid', 1200]]);
    const { found } = privateIn(copy);
    const stale = copy.ask('clearInCopy', {
      rows: [],
      tables: [],
      areas: found.map(({ area }) => area),
      blocks: [{ name: LOG_BLOCK, expects: 'what stood there before' }],
    });
    expect(stale).toMatchObject({ ok: false, error: expect.stringContaining('changed after it was read') });
    expect(copy.values('Training').flat()).toContain('Ada');
  });

  it('writes a mark that does not hold the file’s id', () => {
    expect(originalMark('1AbC')).toMatch(/^SOUNDER_ORIGINAL_[A-P]{16}$/);
    expect(originalMark('1AbC')).not.toBe(originalMark('1AbD'));
  });
});
