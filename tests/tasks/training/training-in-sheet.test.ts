/** The training blocks, written through the real script into the preview's engine and recalculated there. */
import { describe, expect, it } from 'vitest';
import type { BlockInfo, WireCell } from '../../../shared/contract';
import { grownBlock } from '../../../shared/tasks/merge/grown-block';
import { rebuildBlock } from '../../../shared/tasks/merge/rebuild-block';
import { startSettings } from '../../../shared/tasks/settings';
import { composeLogBlock, LOG_BLOCK } from '../../../shared/tasks/training/log-block';
import { LOG_HEADINGS } from '../../../shared/tasks/training/log-headings';
import { composePenBlock, PEN_BLOCK, PEN_SETTINGS } from '../../../shared/tasks/training/pen-block';
import { logStates, readLog } from '../../../shared/tasks/training/read-log';
import { readPen } from '../../../shared/tasks/training/read-pen';
import { readyLookup } from '../../../shared/tasks/training/ready-lookup';
import { openWorkbook, type Workbook } from '../../../src/headless';
import { scriptText } from '../script-text';
import {
  NOTHING_KEPT,
  readAsWritten,
  readFromSheet,
  readTab,
  writeAnew,
  writeInSheet,
  writeOver,
} from '../sheet-block';

const ORIGIN = { row: 1, column: 1 };

async function farm(today = '2026-05-20'): Promise<Workbook> {
  return openWorkbook({ tabs: { Farm: [[]] }, codeJs: await scriptText(), today });
}

describe('the pen list', () => {
  // Common practice, no source: a pen whose every side is one 16 ft panel takes 4 panels and 12 posts.
  it('lists panels and posts with one call each of TRAINING_PEN and STRAND_HEIGHTS', async () => {
    const book = await farm();
    book.resetCounts();
    const settings = { ...startSettings(PEN_SETTINGS, 'US'), weight: 216 };
    writeInSheet(book, PEN_BLOCK, composePenBlock(settings, [], 'US', ORIGIN), { at: 'new-tab', tab: 'Pen' });
    const rows = book.values('Pen');
    const head = rows.findIndex((row) => row[0] === 'Item');
    expect(rows.slice(head + 1, head + 8).map((row) => row.slice(0, 3))).toEqual([
      ['panels', 4, 'panels'],
      ['inside length of a side', 16, 'ft'],
      ['posts', 12, 'posts'],
      ['clips', 36, 'clips'],
      ['offset insulators', 12, 'insulators'],
      ['live wire', 64, 'ft'],
      ['height of a single wire', expect.closeTo(17.2, 1), 'in'],
    ]);
    // Two wires: twice the wire, 2 × 64 ft, and twice the insulators.
    expect(rows[head + 8]?.slice(0, 3)).toEqual(['offset insulators, all wires', 24, 'insulators']);
    expect(rows[head + 9]?.slice(0, 3)).toEqual(['live wire, all wires', 128, 'ft']);
    // Two strands for growing pigs: 10 and 18 in (published, second hand), in the pen as on pasture (judgement).
    const heights = rows.findIndex((row) => String(row[0]).startsWith('Wire heights'));
    expect(rows[heights]?.slice(1, 4)).toEqual([expect.closeTo(10, 6), expect.closeTo(18, 6), '']);
    expect(rows[heights + 1]?.[0]).toBe('');
    // Lighter pigs, and the two wires left as they were: it says so.
    const weight = rows.findIndex((row) => row[0] === 'Weight of one') + 1;
    book.type('Pen', `B${weight}`, '44');
    expect(String(book.value('Pen', `A${heights + 2}`))).toMatch(/^Look out: pigs under 45 lb take three/);
    expect(Object.keys(book.cellCalls).sort()).toEqual(['STRAND_HEIGHTS', 'TRAINING_PEN']);
  });

  it('subtracts what is on hand, follows a typed setting, and a rebuild keeps both', async () => {
    const book = await farm();
    const settings = startSettings(PEN_SETTINGS, 'metric');
    const info = writeInSheet(book, PEN_BLOCK, composePenBlock(settings, [], 'metric', ORIGIN), {
      at: 'new-tab',
      tab: 'Pen',
    });
    const head = book.values('Pen').findIndex((row) => row[0] === 'Item') + 1;
    const pigs = book.values('Pen').findIndex((row) => row[0] === 'Pigs') + 1;
    book.type('Pen', `B${pigs}`, '40');
    book.type('Pen', `D${head + 3}`, '10');
    book.type('Pen', `D${head + 9}`, '5000');
    // 40 pigs × 2.4 m² = 96 m², √96 = 9.8 m: two 4.9 m panels a side, 8 panels, 4 × 6 = 24 posts.
    expect(book.value('Pen', `B${head + 1}`)).toBe(8);
    expect(book.value('Pen', `E${head + 3}`)).toBe(14);
    expect(book.value('Pen', `E${head + 9}`)).toBe(0);

    const read = readPen(readAsWritten(book, info));
    expect(read.settings.values.head).toBe(40);
    const next = () =>
      composePenBlock({ ...settings, ...read.settings.values }, read.onHand, 'metric', ORIGIN);
    const kept = () => rebuildBlock(PEN_BLOCK, readFromSheet(book, info), next).kept;
    // What the cell functions filled was typed by nobody, so nothing counts as typed.
    expect(kept()).toEqual(NOTHING_KEPT);
    book.type('Pen', `A${head + 10}`, 'ring Bea');
    expect([...kept().inPlace, ...kept().below]).toEqual([`A${head + 10} (“ring Bea”)`]);
    book.type('Pen', `A${head + 10}`, '');
    // Typed where the answers stand: named, also where the same number stands elsewhere in the list.
    for (const [cell, value] of [
      [`B${head + 1}`, '10'],
      [`A${head + 3}`, 'stakes'],
      [`B${head + 8}`, '10'],
    ] as const) {
      const before = book.range('Pen', cell).getFormula();
      book.type('Pen', cell, value);
      const { inPlace, below } = kept();
      expect([...inPlace, ...below].map((one) => one.split(' ')[0])).toContain(cell);
      book.range('Pen', cell).setValue(before);
    }
    const again = rebuildBlock(PEN_BLOCK, readFromSheet(book, info), next);
    expect(again.cells.map((row) => row.slice(0, -1))).toMatchObject(next().cells);
    writeAnew(book, PEN_BLOCK, info, next);
    expect(book.value('Pen', `B${head + 1}`)).toBe(8);
    expect(book.value('Pen', `D${head + 3}`)).toBe(10);
    expect(book.value('Pen', `D${head + 9}`)).toBe(5000);
  });
});

/** As the panel does: with what was typed right below. */
function writeLogAnew(book: Workbook, named: BlockInfo): BlockInfo {
  const alone = readFromSheet(book, named).info;
  const { info, below } = grownBlock(readTab(book, named.tab), alone, () => []);
  const adoptRows = info.rows - alone.rows;
  const old = readFromSheet(book, named, adoptRows);
  const block = rebuildBlock(LOG_BLOCK, old, (corner, standing) => {
    const { settings, rows, headings, lines } = readLog(standing);
    const room = { lines, below };
    return composeLogBlock({ minimumDays: 3, ...settings.values }, rows, headings, corner, room);
  });
  expect(block.kept).toEqual(NOTHING_KEPT);
  return writeOver(book, LOG_BLOCK, old, block);
}

describe('the training log', () => {
  async function log(rows: Record<string, string>[], today?: string) {
    const book = await farm(today);
    const info = writeInSheet(book, LOG_BLOCK, composeLogBlock({ minimumDays: 3 }, [], [], ORIGIN), {
      at: 'new-tab',
      tab: 'Training',
    });
    const head = book.values('Training').findIndex((row) => row[0] === LOG_HEADINGS[0]) + 1;
    const cell = (row: number, heading: string): string =>
      `${String.fromCharCode(65 + (LOG_HEADINGS as readonly string[]).indexOf(heading))}${head + row}`;
    rows.forEach((row, i) => {
      for (const [heading, typed] of Object.entries(row)) book.type('Training', cell(i + 1, heading), typed);
    });
    const at = (row: number, heading: string): unknown => book.value('Training', cell(row, heading));
    return { book, info, at, cell };
  }

  const TRAINED = {
    'Pig or batch': 'Red',
    Group: 'Spring',
    'In the pen on': '2026-05-10',
    'Saw the wire on': '2026-05-10',
    'Backed off on': '2026-05-11',
    'Passed check on': '2026-05-12',
    Observer: 'Ada',
  };

  it('is ready from the later of the check and the fewest days', async () => {
    const { at, book } = await log([TRAINED, { ...TRAINED, 'Passed check on': '2026-05-18' }]);
    expect(at(1, 'Status')).toBe('ready');
    expect(at(1, 'Still missing')).toBe('');
    // 10 May + 3 days
    expect(at(1, 'Ready from')).toEqual(new Date('2026-05-13'));
    expect(at(2, 'Ready from')).toEqual(new Date('2026-05-18'));
    // The group waits for its last batch.
    expect(at(1, 'Group ready from')).toEqual(new Date('2026-05-18'));
    expect(at(1, 'Days in')).toBe(2);
    book.type('Training', 'B4', '14');
    expect(book.value('Training', 'A4')).toBe('Fewest days in the pen');
    expect(at(1, 'Status')).toBe('wait');
    expect(at(1, 'Ready from')).toEqual(new Date('2026-05-24'));
  });

  it('a group list finds the day of a group by its name, also when rows have changed places', async () => {
    const late = { ...TRAINED, 'Pig or batch': 'Boar', Group: 'Summer', 'Passed check on': '2026-05-18' };
    const { book, info, cell } = await log([TRAINED, late]);
    book.type('Farm', 'A6', 'Spring');
    book.type('Farm', 'B6', readyLookup(readAsWritten(book, info), 'A6')!);
    // 10 May + 3 days.
    expect(book.value('Farm', 'B6')).toEqual(new Date('2026-05-13'));
    for (const heading of Object.keys(TRAINED) as (keyof typeof TRAINED)[]) {
      book.type('Training', cell(1, heading), late[heading]);
      book.type('Training', cell(2, heading), TRAINED[heading]);
    }
    expect(book.value('Farm', 'B6')).toEqual(new Date('2026-05-13'));
    book.type('Training', cell(2, 'Passed check on'), '');
    expect(book.value('Farm', 'B6')).toBe('not ready');
  });

  it('says what is missing, one thing left out at a time', async () => {
    const words: Record<string, RegExp> = {
      'In the pen on': /^day in the pen$/,
      'Saw the wire on': /^saw the wire$/,
      'Backed off on': /^backed off$/,
      'Passed check on': /^passed the check$/,
      Observer: /^name of the observer$/,
    };
    const rows = Object.keys(words).map((heading) => {
      const { [heading as keyof typeof TRAINED]: _, ...rest } = TRAINED;
      return rest as Record<string, string>;
    });
    const { at } = await log(rows);
    Object.values(words).forEach((pattern, i) => {
      expect(at(i + 1, 'Still missing')).toMatch(pattern);
      expect(at(i + 1, 'Status')).toBe('not ready');
      expect(at(i + 1, 'Ready from')).toBe('not ready');
      expect(at(i + 1, 'Group ready from')).toBe('not ready');
    });
  });

  it('never takes a seller’s word, an order that cannot be, a day ahead or a day in words', async () => {
    const { at } = await log([
      { 'Pig or batch': 'Bought', 'Seller says trained': 'yes, fully' },
      { ...TRAINED, 'Pig or batch': 'Backwards', Group: 'B', 'Saw the wire on': '2026-05-01' },
      { ...TRAINED, 'Pig or batch': 'Ahead', Group: 'C', 'Passed check on': '2026-06-01' },
      { ...TRAINED, 'Pig or batch': 'Words', Group: 'D', 'Backed off on': 'last Tuesday' },
      { ...TRAINED, 'Pig or batch': 'Word and deed', Group: 'E', 'Seller says trained': 'yes' },
      { ...TRAINED, 'Pig or batch': 'no group', Group: '' },
    ]);
    expect(at(1, 'Status')).toBe('not ready');
    expect(at(1, 'Still missing')).toBe(
      'day in the pen; saw the wire; backed off; passed the check; name of the observer (a seller’s word does not count)',
    );
    expect(at(2, 'Still missing')).toBe('days in their order');
    expect(at(3, 'Still missing')).toBe('a day that lies ahead');
    expect(at(4, 'Still missing')).toMatch(/^backed off; a day that is typed as words/);
    expect([2, 3, 4].map((row) => at(row, 'Ready from'))).toEqual(['not ready', 'not ready', 'not ready']);
    expect(at(5, 'Status')).toBe('ready');
    expect(at(6, 'Group ready from')).toBe('');
    expect(at(7, 'Status')).toBe('');
  });

  it('keeps everything typed on a rebuild: gaps, own columns, notes, and free rows stay', async () => {
    const { book, info, at } = await log([
      { ...TRAINED, Note: '=limps?'.slice(1) },
      {},
      { ...TRAINED, 'Pig or batch': 'Blue', Group: 'Spring' },
    ]);
    book.type('Training', 'P8', 'Ear tag');
    book.type('Training', 'P11', '007a');
    book.type('Training', 'B4', '5');
    book.type('Training', 'Q9', 'bold one');
    const read = readLog(readAsWritten(book, info));
    expect(read.headings.slice(LOG_HEADINGS.length)).toEqual(['Ear tag', 'Own column 1']);
    writeAnew(book, LOG_BLOCK, info, () =>
      composeLogBlock({ minimumDays: 3, ...read.settings.values }, read.rows, read.headings, ORIGIN),
    );
    expect(at(1, 'Note')).toBe('limps?');
    expect(at(2, 'Pig or batch')).toBe('');
    expect(at(3, 'Pig or batch')).toBe('Blue');
    expect(book.value('Training', 'P11')).toMatch(/007a$/);
    expect(book.value('Training', 'Q9')).toBe('bold one');
    expect(at(3, 'Ready from')).toEqual(new Date('2026-05-15'));
    expect(book.values('Training').length).toBeGreaterThanOrEqual(8 + 8);
  });

  it('a row without a name says so and keeps its group from being ready', async () => {
    const { at, book, info, cell } = await log([
      TRAINED,
      { Group: 'Spring', Head: '4', 'In the pen on': '2026-05-19' },
      { ...TRAINED, 'Pig or batch': ' ', Group: 'Fall' },
      { Note: 'ask Bea' },
      { ...TRAINED, 'Pig or batch': 'Late', Group: 'Hill ' },
      { ...TRAINED, 'Pig or batch': 'Early', Group: 'Hill' },
    ]);
    expect(at(1, 'Status')).toBe('ready');
    expect(at(1, 'Group ready from')).toBe('not ready');
    expect(at(2, 'Status')).toBe('name missing');
    expect(at(2, 'Still missing')).toMatch(/^name of the pig or batch; saw the wire; /);
    expect(at(2, 'Ready from')).toBe('not ready');
    // All days are there; only nobody can say which pigs they are of.
    expect(at(3, 'Still missing')).toBe('name of the pig or batch');
    expect(at(3, 'Group ready from')).toBe('not ready');
    expect(at(4, 'Status')).toBe('name missing');
    // A space behind the group's name parts the two for the eye of the machine only.
    expect(at(5, 'Still missing')).toBe('the group’s name without a space too many');
    expect(at(6, 'Group ready from')).toBe('not ready');
    expect(at(7, 'Status')).toBe('');
    expect(logStates(readAsWritten(book, info)).map(({ name, status }) => [name, status])).toEqual([
      ['Red', 'ready'],
      ['', 'name missing'],
      ['', 'name missing'],
      ['', 'name missing'],
      ['Late', 'not ready'],
      ['Early', 'ready'],
    ]);
    book.type('Training', cell(5, 'Group'), 'Hill');
    expect(at(6, 'Group ready from')).toEqual(new Date('2026-05-13'));
  });

  it('rows put in between or typed right below keep a group from being ready; the next log takes them in', async () => {
    const { book, info, at } = await log([TRAINED, { ...TRAINED, 'Pig or batch': 'Blue', Group: 'Fall' }]);
    const sheet = book.spreadsheet.getSheetByName('Training')!;
    const end = info.row + info.rows - 1;
    expect(book.value('Training', `A${end}`)).toMatch(/^For more rows/);
    const group = (row = 1): unknown => at(row, 'Group ready from');
    for (const row of [9, 10, end]) {
      book.insertRows('Training', row, 1);
      book.type('Training', `B${row}`, 'Spring');
      expect(book.value('Training', row === 9 ? 'M10' : 'M9'), `row put in at ${row}`).toBe('not ready');
      sheet.deleteRows(row, 1);
      expect(group()).toEqual(new Date('2026-05-13'));
    }
    const below = { A: 'Late', B: 'Spring', C: '1', D: '2026-05-19' };
    for (const [column, typed] of Object.entries(below)) {
      book.type('Training', `${column}${end + 1}`, typed);
      book.type('Training', `${column}${end + 2}`, typed);
    }
    book.type('Training', `O${end + 2}`, `=C${end + 2}+1`);
    book.type('Training', `A${end + 3}`, 'ring the vet');
    expect(group()).toBe('not ready');
    expect(group(2)).toEqual(new Date('2026-05-13'));
    expect(book.value('Training', `A${end}`)).toMatch(/^Rows below this line are not counted yet/);

    const next = writeLogAnew(book, info);
    expect(next.rows).toBe(info.rows + 2);
    // They follow the fifteen free rows, where the end line stood.
    expect([at(16, 'Pig or batch'), at(16, 'Status'), at(17, 'Pig or batch')]).toEqual([
      'Late',
      'not ready',
      'Late',
    ]);
    expect(book.formula('Training', `O${end + 1}`)).toBe(`=C${end + 1}+1`);
    expect(group()).toBe('not ready');
    // Words of the grower's own right below are no row, and no hindrance either.
    expect(book.value('Training', `A${end + 3}`)).toBe('ring the vet');
    expect(book.value('Training', `A${end + 2}`)).toMatch(/^For more rows/);
  });

  it('formulas stay whole when the rows below the log are deleted', async () => {
    const { book, info, at } = await log([TRAINED]);
    const end = info.row + info.rows - 1;
    book.type('Training', `B${end + 1}`, 'Spring');
    expect(at(1, 'Group ready from')).toBe('not ready');
    const sheet = book.spreadsheet.getSheetByName('Training')!;
    sheet.deleteRows(end + 1, sheet.getMaxRows() - end);
    expect(at(1, 'Group ready from')).toEqual(new Date('2026-05-13'));
    writeLogAnew(book, info);
    expect(at(1, 'Group ready from')).toEqual(new Date('2026-05-13'));
    expect(book.values('Training').flat()).not.toContain('#REF');
  });

  it('a log stays as it is while rows are free; own columns stay where they are', async () => {
    const { book, info, at, cell } = await log([TRAINED]);
    book.type('Training', 'Q11', 'bold one');
    for (let row = 2; row <= 10; row++) book.type('Training', cell(row, 'Pig or batch'), `Pig ${row}`);
    expect(writeLogAnew(book, info)).toEqual(info);
    expect([book.value('Training', 'P8'), book.value('Training', 'Q8')]).toEqual(['', 'Own column 1']);
    expect(book.value('Training', 'Q11')).toBe('bold one');
    // Four free: fifteen again, but no further than what stands below.
    book.type('Training', cell(11, 'Pig or batch'), 'Pig 11');
    book.type('Training', `A${info.rows + 4}`, 'my own line');
    const grown = writeLogAnew(book, info);
    expect(grown.rows).toBe(info.rows + 3);
    expect(at(11, 'Status')).toBe('not ready');
    expect(book.value('Training', `A${info.rows + 4}`)).toBe('my own line');
    // A column put in between stays between.
    book.spreadsheet.getSheetByName('Training')!.insertColumnsBefore(3, 1);
    book.type('Training', 'C8', 'Sow');
    book.type('Training', 'C9', 'Bea');
    const wide = { ...grown, columns: grown.columns + 1 };
    writeLogAnew(book, wide);
    expect([book.value('Training', 'C9'), book.value('Training', 'K9')]).toEqual(['Bea', 'ready']);
    expect(book.value('Training', 'N9')).toEqual(new Date('2026-05-13'));
    expect(book.value('Training', 'R11')).toBe('bold one');
  });

  it('feeds a group list: a date when ready, words that stop the plan when not', async () => {
    const { book, cell } = await log([TRAINED]);
    book.type('Farm', 'A1', `=Training!${cell(1, 'Group ready from')}`);
    const wire = (): WireCell =>
      (book.ask('readTabs', { tabs: ['Farm'] }) as { data: { values: WireCell[][] }[] }).data[0]!
        .values[0]![0]!;
    expect(wire()).toEqual({ d: '2026-05-13' });
    book.type('Training', cell(1, 'Observer'), '');
    expect(wire()).toBe('not ready');
  });
});
