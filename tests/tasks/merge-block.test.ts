/** Blocks remember: what happens to a table in the sheet, and what a rebuild through the real script makes of it. */
import { describe, expect, it } from 'vitest';
import { columnLetters } from '../../shared/block/a1';
import { text } from '../../shared/block/cells';
import { composeBlock } from '../../shared/block/compose-block';
import type { BlockInfo } from '../../shared/contract';
import { readWalk } from '../../shared/tasks/bite/read-walk';
import { WALK_BLOCK, WALK_SETTINGS, walkBlock } from '../../shared/tasks/bite/walk-block';
import { rebuildBlock } from '../../shared/tasks/merge/rebuild-block';
import { startSettings } from '../../shared/tasks/settings';
import { composePenBlock, PEN_BLOCK, PEN_SETTINGS } from '../../shared/tasks/training/pen-block';
import { readPen } from '../../shared/tasks/training/read-pen';
import { openWorkbook, type Workbook } from '../../src/headless';
import { scriptText } from './script-text';
import { NOTHING_KEPT, readFromSheet, writeAnew, writeInSheet, writeOver } from './sheet-block';

const ORIGIN = { row: 1, column: 1 };

async function pen() {
  const book = await openWorkbook({ tabs: { Farm: [['my own notes']] }, codeJs: await scriptText() });
  const start = startSettings(PEN_SETTINGS, 'US');
  const info = writeInSheet(book, PEN_BLOCK, composePenBlock(start, [], 'US', ORIGIN), {
    at: 'new-tab',
    tab: 'Pen',
  });
  const rowOf = (label: string): number =>
    book.values('Pen').findIndex((row) => row.some((value) => String(value).startsWith(label))) + 1;
  return { book, info, rowOf };
}

function penAnew(book: Workbook, info: BlockInfo) {
  return writeAnew(book, PEN_BLOCK, info, (corner, old) => {
    const { settings, onHand } = readPen(old);
    const values = { ...startSettings(PEN_SETTINGS, 'US'), ...settings.values };
    return composePenBlock(values, onHand, 'US', corner);
  });
}

function named(book: Workbook, name: string): BlockInfo {
  const reply = book.ask('overview', {});
  if (!reply.ok) throw new Error(reply.error);
  return (reply.data as { blocks: BlockInfo[] }).blocks.find((block) => block.name === name)!;
}

describe('a table that nobody typed into', () => {
  it.each<[string, (book: Workbook) => void]>([
    ['stands as it was', () => undefined],
    ['has rows above it', (book) => book.spreadsheet.getSheetByName('Pen')!.insertRowsBefore(1, 3)],
    ['has a column left of it', (book) => book.spreadsheet.getSheetByName('Pen')!.insertColumnsBefore(1, 1)],
    ['stands on a renamed tab', (book) => book.spreadsheet.getSheetByName('Pen')!.setName('Pen, north')],
  ])('%s: no finding, the same table again', async (_, change) => {
    const { book } = await pen();
    change(book);
    const info = named(book, PEN_BLOCK);
    const before = readFromSheet(book, info).values;
    const again = penAnew(book, info);
    expect(again.kept).toEqual(NOTHING_KEPT);
    expect(readFromSheet(book, again.info).values).toEqual(before);
  });

  it('is found with its memory in a copy of the file', async () => {
    const { book, info } = await pen();
    const copy = await book.copy();
    expect(penAnew(copy, info).kept).toEqual(NOTHING_KEPT);
  });
});

describe('what is typed into a table', () => {
  it('over a figure stays over two rebuilds; cleared, ours comes back', async () => {
    const { book, info, rowOf } = await pen();
    const cell = `B${rowOf('live wire, all wires')}`;
    const ours = book.range('Pen', cell).getFormula();
    book.type('Pen', cell, '77');
    expect(penAnew(book, info).kept.inPlace).toEqual([`${cell} (77)`]);
    expect(book.value('Pen', cell)).toBe(77);
    expect(penAnew(book, info).kept.inPlace).toEqual([`${cell} (77)`]);
    expect(book.value('Pen', cell)).toBe(77);
    book.type('Pen', cell, '');
    penAnew(book, info);
    expect(book.range('Pen', cell).getFormula()).toBe(ours);
  });

  it('over a heading and a label stays, and the values beside them are still read', async () => {
    const { book, info, rowOf } = await pen();
    const [head, pigs] = [rowOf('Item'), rowOf('Pigs')];
    book.type('Pen', `B${pigs}`, '17');
    book.type('Pen', `A${pigs}`, 'Weaners');
    book.type('Pen', `D${head}`, 'In the barn');
    book.type('Pen', `D${head + 1}`, '3');
    const { kept } = penAnew(book, info);
    expect(kept.inPlace).toEqual([`A${pigs} (“Weaners”)`, `D${head} (“In the barn”)`]);
    expect(['A', 'B'].map((column) => book.value('Pen', `${column}${pigs}`))).toEqual(['Weaners', 17]);
    expect(book.value('Pen', `D${head + 1}`)).toBe(3);
  });

  it('stays under its heading where an earlier version had fewer columns', async () => {
    const book = await openWorkbook({ tabs: { Farm: [['my own notes']] }, codeJs: await scriptText() });
    const stays = (...headings: string[]) => {
      const rows = [
        { cells: headings.map(text), style: 'heading' as const },
        { cells: headings.map((heading, i) => (i === 0 ? text('Reds') : text(`${heading} of Reds`))) },
      ];
      return { ...composeBlock(rows), rules: [], widths: [] };
    };
    const place = { at: 'new-tab', tab: 'Stays' } as const;
    const info = writeInSheet(book, 'SOUNDER_STAYS', stays('Group', 'Head', 'Gain', 'Area'), place);
    book.type('Stays', 'C2', 'weighed');
    const wider = stays('Group', 'Head', 'Mean head', 'Gain', 'Area');
    writeAnew(book, 'SOUNDER_STAYS', info, () => wider);
    expect(book.values('Stays')[1]!.slice(0, 5)).toEqual([
      'Reds',
      'Head of Reds',
      'Mean head of Reds',
      'weighed',
      'Area of Reds',
    ]);
  });

  it('as a formula into a setting stays that formula', async () => {
    const { book, info, rowOf } = await pen();
    book.type('Pen', `B${rowOf('Pigs')}`, '=10+2');
    expect(penAnew(book, info).kept).toEqual(NOTHING_KEPT);
    expect(book.range('Pen', `B${rowOf('Pigs')}`).getFormula()).toBe('=10+2');
  });

  it('into a row put in stays below the table, and goes once it is deleted there', async () => {
    const { book, info, rowOf } = await pen();
    const at = rowOf('Pigs');
    book.spreadsheet.getSheetByName('Pen')!.insertRowsBefore(at, 1);
    book.type('Pen', `A${at}`, 'ask Bea');
    const first = penAnew(book, { ...info, rows: info.rows + 1 });
    expect(first.kept.below).toEqual([`A${at} (“ask Bea”)`]);
    const second = penAnew(book, first.info);
    expect(second.kept).toEqual(NOTHING_KEPT);
    expect(book.value('Pen', `A${rowOf('ask Bea')}`)).toBe('ask Bea');
    book.type('Pen', `A${rowOf('ask Bea')}`, '');
    penAnew(book, second.info);
    expect(rowOf('Kept from this table')).toBe(0);
  });

  it('into a column put in where an answer spills moves below, and the figures are as before', async () => {
    const { book, info, rowOf } = await pen();
    book.type('Pen', `B${rowOf('Pigs')}`, '17');
    const before = readFromSheet(book, info).values;
    book.spreadsheet.getSheetByName('Pen')!.insertColumnsBefore(2, 1);
    book.type('Pen', `B${rowOf('Pigs')}`, 'ask Bea');
    const again = penAnew(book, { ...info, columns: info.columns + 1 });
    expect(again.kept).toEqual({ inPlace: [], below: [`B${rowOf('Pigs')} (“ask Bea”)`] });
    expect(readFromSheet(book, again.info).values.slice(0, before.length)).toEqual(before);
  });

  it('is told by the cell in which it stands then', async () => {
    const { book, info, rowOf } = await pen();
    const figure = rowOf('live wire, all wires');
    book.spreadsheet.getSheetByName('Pen')!.insertColumnsBefore(2, 1);
    book.type('Pen', `C${figure}`, '77');
    book.type('Pen', `B${rowOf('Pigs')}`, 'ask Bea');
    const old = readFromSheet(book, { ...info, columns: info.columns + 1 });
    const block = rebuildBlock(PEN_BLOCK, old, (corner, reading) => {
      const { settings, onHand } = readPen(reading);
      const values = { ...startSettings(PEN_SETTINGS, 'US'), ...settings.values };
      return composePenBlock(values, onHand, 'US', corner);
    });
    writeOver(book, PEN_BLOCK, old, block);
    expect(block.kept).toEqual({ inPlace: [`C${figure} (77)`], below: [`B${rowOf('Pigs')} (“ask Bea”)`] });
    expect(block.keptThen).toEqual({
      inPlace: [`B${figure} (77)`],
      below: [`B${rowOf('ask Bea')} (“ask Bea”)`],
    });
    expect([book.value('Pen', `B${figure}`), book.value('Pen', `B${rowOf('ask Bea')}`)]).toEqual([
      77,
      'ask Bea',
    ]);
  });

  it('over the memory stays, below the table', async () => {
    const { book, info, rowOf } = await pen();
    const memory = columnLetters(info.columns);
    book.type('Pen', `${memory}${rowOf('Pigs')}`, 'ask Bea');
    const { kept } = penAnew(book, info);
    expect(kept).toEqual({ inPlace: [], below: [`${memory}${rowOf('Pigs')} (“ask Bea”)`] });
    expect(rowOf('ask Bea')).toBe(rowOf('Kept from this table') + 1);
    expect(penAnew(book, named(book, PEN_BLOCK)).kept).toEqual(NOTHING_KEPT);
    expect(rowOf('ask Bea')).toBe(rowOf('Kept from this table') + 1);
  });

  it('stands nowhere in clear in the memory', async () => {
    const { book, info, rowOf } = await pen();
    book.type('Pen', `D${rowOf('Item') + 1}`, 'borrowed from Bea');
    penAnew(book, info);
    const memory = book.values('Pen').map((row) => String(row[info.columns - 1] ?? ''));
    expect(memory[0]).toMatch(/^SOUNDER TRAINING_PEN 2 /);
    expect(memory.join(' ')).not.toMatch(/borrowed|Bea/);
  });

  it.each([
    ['without a memory, as version 0.1.0 wrote it', undefined],
    ['with a memory of an earlier kind', 'SOUNDER TRAINING_PEN 1 k3x9 | abc def'],
  ])('is carried over from a table %s', async (_, head) => {
    const { book, rowOf } = await pen();
    book.type('Pen', `B${rowOf('Pigs')}`, '23');
    book.type('Pen', `D${rowOf('Item') + 1}`, '6');
    const sheet = book.spreadsheet.getSheetByName('Pen')!;
    const { columns } = named(book, PEN_BLOCK);
    if (head) book.range('Pen', `${columnLetters(columns)}1`).setValue(head);
    else sheet.deleteColumns(columns, 1);
    const again = penAnew(book, named(book, PEN_BLOCK));
    expect(book.value('Pen', `B${rowOf('Pigs')}`)).toBe(23);
    expect(book.value('Pen', `D${rowOf('Item') + 1}`)).toBe(6);
    expect(penAnew(book, again.info).kept).toEqual(NOTHING_KEPT);
  });
});

describe('a log that was sorted', () => {
  it.each([
    ['with its memory', 6],
    ['without its memory', 5],
  ])('%s: every reading stays whole', async (_, columns) => {
    const book = await openWorkbook({ tabs: { Farm: [['']] }, codeJs: await scriptText() });
    const start = startSettings(WALK_SETTINGS, 'US');
    const rows = [20565, 20572, 20579].map(
      (day, i) =>
        [
          { k: 'd', v: new Date(day * 86_400_000).toISOString().slice(0, 10) },
          text(`place ${i}`),
          { k: 'n', v: 3000 + 100 * i },
          text(i === 1 ? 'grass' : ''),
        ] as const,
    );
    const info = writeInSheet(book, WALK_BLOCK, walkBlock(rows as never, start, ORIGIN), {
      at: 'new-tab',
      tab: 'Walk',
    });
    const head = book.values('Walk').findIndex((row) => row[0] === 'Date') + 1;
    const place = book.range('Walk', `A${head + 1}:${columns === 6 ? 'F' : 'E'}${head + 3}`);
    const [values, formulas] = [place.getValues(), place.getFormulas()];
    const turned = values.map((row, r) => row.map((value, c) => formulas[r]![c] || value)).reverse();
    place.setValues(turned);
    const before = readWalk(readFromSheet(book, info)).readings;
    expect(before.map(({ volts }) => volts)).toEqual([3200, 3100, 3000]);
    const again = writeAnew(book, WALK_BLOCK, info, (corner, old) =>
      walkBlock(readWalk(old).rows, start, corner),
    );
    expect(again.kept).toEqual(NOTHING_KEPT);
    expect(readWalk(readFromSheet(book, again.info)).readings).toEqual(before);
  });
});
