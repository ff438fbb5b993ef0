/** "Will it bite" and the fence walk log in the preview's engine, written through the built script. */
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { BlockInfo } from '../../../shared/contract';
import { BITE_BLOCK, type BitePlan, biteBlock } from '../../../shared/tasks/bite/bite-block';
import { BITE_SETTINGS, weedsOhmMeters } from '../../../shared/tasks/bite/bite-settings';
import { judgeLine } from '../../../shared/tasks/bite/judge-line';
import { lineVolts } from '../../../shared/tasks/bite/line-volts';
import { readBite } from '../../../shared/tasks/bite/read-bite';
import { readWalk } from '../../../shared/tasks/bite/read-walk';
import { readingRow, WALK_BLOCK, WALK_SETTINGS, walkBlock } from '../../../shared/tasks/bite/walk-block';
import { wireResistance } from '../../../shared/tasks/bite/wire-resistance';
import { WIRES } from '../../../shared/tasks/bite/wires';
import { grownBlock } from '../../../shared/tasks/merge/grown-block';
import { rebuildBlock } from '../../../shared/tasks/merge/rebuild-block';
import { startSettings } from '../../../shared/tasks/settings';
import type { UnitSystem } from '../../../shared/units/units';
import { openWorkbook, type Workbook } from '../../../src/headless';
import { scriptText } from '../script-text';
import {
  beside,
  cellBeside,
  errorsIn,
  NOTHING_KEPT,
  readAsWritten,
  readFromSheet,
  readTab,
  writeAnew,
  writeInSheet,
  writeOver,
} from '../sheet-block';

// The engine's first evaluation takes seconds on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

const LINES = [
  { name: 'Lane', meters: 400, liveWires: 2, wire: 'Polywire, 6 stainless and 3 copper' },
  { name: '=Hill', meters: 500, liveWires: 1, wire: 'Polywire, 6 stainless' },
  { name: 'Perimeter', meters: 5000, liveWires: 1, wire: 'High-tensile steel, 12.5 gauge' },
];

const planOf = (units: UnitSystem): BitePlan => ({
  lines: LINES,
  wires: WIRES,
  units,
  settings: startSettings(BITE_SETTINGS, units),
});

/** None is a start value, which the verdict would name. */
const ANY_SETTINGS = fc.record({
  volts: fc.integer({ min: 2001, max: 12_000 }).filter((volts) => volts !== 8000),
  ohms: fc.integer({ min: 5, max: 290 }),
  weeds: fc.integer({ min: 50, max: 9000 }),
  pig: fc.integer({ min: 300, max: 1500 }),
  onFence: fc.integer({ min: 1500, max: 5000 }),
  delivered: fc.integer({ min: 300, max: 3000 }),
});

const farm = async () => openWorkbook({ tabs: { Notes: [['mine']] }, codeJs: await scriptText() });

describe('the "will it bite" block', () => {
  test.each(['US', 'metric'] as const)('%s: the sheet’s volts are the core’s', async (units) => {
    const book = await farm();
    const plan = planOf(units);
    const info = writeInSheet(book, BITE_BLOCK, biteBlock(plan, { row: 1, column: 1 }), {
      at: 'new-tab',
      tab: 'Bite',
    });
    const content = readFromSheet(book, info);
    expect(errorsIn(content)).toEqual([]);
    for (const line of LINES) {
      const strands = WIRES.find(({ name }) => name === line.wire)?.strands ?? [];
      const weeds = weedsOhmMeters(plan.settings.weeds ?? 0, units);
      const volts = lineVolts(
        { volts: 8000, ohms: 300 },
        { ...line, ohmsPerMeter: wireResistance(strands) },
        weeds,
        500,
      );
      const sheet = [4, 5, 6, 7].map((column) => Number(beside(content, line.name, column)));
      // The sheet holds thickness with four digits.
      [volts.clean, volts.weeds, volts.pig, volts.pigInWeeds].forEach((value, i) => {
        expect((sheet[i] ?? 0) / value).toBeCloseTo(1, 3);
      });
    }
    // 5 km of 12.5 gauge at 34.82 Ω/km (example of WIRE_OHMS): 8000 × 500 ÷ (300 + 174.1 + 500), by hand.
    expect(Number(beside(content, 'Perimeter', 6)) / 4106.4).toBeCloseTo(1, 3);
    expect(beside(content, '=Hill', 8)).toBe('not enough when a pig touches');
    // Start values are illustrations: the verdict says so until each of the three is the grower's own.
    const own = [
      ['Energizer, volts without load', '8100'],
      ['Energizer and ground, inner resistance', '290'],
      ['Leak to earth in weeds', String((plan.settings.weeds ?? 0) - 100)],
    ] as const;
    for (const [label, value] of own) {
      expect(beside(readFromSheet(book, info), 'Lane', 8)).toBe(
        'measure first, enough only with example values',
      );
      book.type('Bite', cellBeside(content, label), value);
    }
    expect(beside(readFromSheet(book, info), 'Lane', 8)).toBe('enough');
  });

  test('with any settings the sheet’s volts and verdicts are the page’s', async () => {
    const book = await farm();
    const info = writeInSheet(book, BITE_BLOCK, biteBlock(planOf('metric'), { row: 1, column: 1 }), {
      at: 'new-tab',
      tab: 'Bite',
    });
    const standing = readFromSheet(book, info);
    const verdicts = new Set<string>();
    for (const typed of fc.sample(ANY_SETTINGS, { seed: 13, numRuns: 25 })) {
      for (const { key, label } of BITE_SETTINGS)
        book.type('Bite', cellBeside(standing, label), String(typed[key]));
      const content = readFromSheet(book, info);
      for (const line of LINES) {
        const strands = WIRES.find(({ name }) => name === line.wire)?.strands ?? [];
        const volts = lineVolts(
          typed,
          { ...line, ohmsPerMeter: wireResistance(strands) },
          weedsOhmMeters(typed.weeds, 'metric'),
          typed.pig,
        );
        const sheet = [4, 5, 6, 7].map((column) => Number(beside(content, line.name, column)));
        [volts.clean, volts.weeds, volts.pig, volts.pigInWeeds].forEach((value, i) => {
          expect((sheet[i] ?? 0) / value).toBeCloseTo(1, 3);
        });
        // The verdict by the sheet's own volts, which differ in the fourth digit.
        const [clean = 0, weeds = 0, pig = 0, pigInWeeds = 0] = sheet;
        const verdict = judgeLine({ clean, weeds, pig, pigInWeeds }, typed.onFence, typed.delivered);
        expect(beside(content, line.name, 8)).toBe(verdict);
        verdicts.add(verdict);
      }
    }
    expect([...verdicts].sort()).toEqual([
      'enough',
      'not enough even clean',
      'not enough in weeds',
      'not enough when a pig touches',
    ]);
  });

  test('a further line and typed ohms answer at once, and a rebuild keeps them', async () => {
    const book = await farm();
    const plan = planOf('metric');
    const info = writeInSheet(book, BITE_BLOCK, biteBlock(plan, { row: 1, column: 1 }), {
      at: 'new-tab',
      tab: 'Bite',
    });
    let content = readFromSheet(book, info);
    const free = content.values.findIndex((row) => row[0] === 'Perimeter') + 2;
    const wires = content.values.findIndex((row) => row[0] === 'Mild steel, 17 gauge') + 2;
    book.type('Bite', `A${wires}`, 'Tape');
    book.type('Bite', `H${wires}`, '4000');
    book.type('Bite', `A${free}`, 'Wood edge');
    book.type('Bite', `B${free}`, 'Tape');
    book.type('Bite', `C${free}`, '500');
    book.type('Bite', cellBeside(content, 'Volts the pig should get, at least'), '1000');
    content = readFromSheet(book, info);
    // 4 Ω/m over 500 m, 500 Ω at the end: 1,428.6 V (example of FENCE_VOLTAGE).
    expect(Number(beside(content, 'Wood edge', 6))).toBeCloseTo(1428.6, 1);
    expect(beside(content, 'Wood edge', 8)).toBe('measure first, enough only with example values');
    const read = readBite(content, 'metric');
    expect(read.problems).toEqual([]);
    expect(read.lines.map(({ name, meters }) => [name, meters])).toEqual([
      ...LINES.map(({ name, meters }) => [name, meters]),
      ['Wood edge', 500],
    ]);
    const settings = { ...plan.settings, ...read.settings.values };
    const again = () => biteBlock({ ...plan, ...read, settings }, info);
    expect(rebuildBlock(BITE_BLOCK, content, again).kept).toEqual(NOTHING_KEPT);
    // A line taken away on the page: what stood in its row to be typed over still stands below the table.
    const fewer = () => biteBlock({ ...plan, ...read, settings, lines: read.lines.slice(1) }, info);
    const { kept } = rebuildBlock(BITE_BLOCK, content, fewer);
    const lane = content.info.row + content.values.findIndex(([name]) => name === 'Lane');
    expect(kept.inPlace).toEqual([]);
    expect(kept.below.filter((cell) => !cell.startsWith(`A${lane} `))).toEqual(
      kept.below.filter((cell) => new RegExp(`^[BCD]${lane} `).test(cell)),
    );
    const remark = cellBeside(content, 'A pig that touches', 6);
    book.type('Bite', remark, 'ask Bea');
    expect(rebuildBlock(BITE_BLOCK, readFromSheet(book, info), again).kept).toMatchObject({
      inPlace: [`${remark} (“ask Bea”)`],
      below: [],
    });
    const after = readFromSheet(book, writeAnew(book, BITE_BLOCK, info, again).info);
    expect(beside(after, 'A pig that touches', 6)).toBe('ask Bea');
    expect(Number(beside(after, 'Wood edge', 6))).toBeCloseTo(1428.6, 1);
    expect(beside(after, 'Volts the pig should get, at least')).toBe(1000);
  });
});

describe('the fence walk log', () => {
  test('counts in plain formulas, and a rebuild keeps the rows as typed', async () => {
    const book = await farm();
    const place = { at: 'area', tab: 'Notes', row: 3, column: 2 } as const;
    const start = startSettings(WALK_SETTINGS, 'US');
    const first = [readingRow({ day: 20565, place: 'Gate', volts: 6100, found: '' })];
    const info = writeInSheet(book, WALK_BLOCK, walkBlock(first, start, place), place);
    let content = readFromSheet(book, info);
    expect(beside(content, 'Change')).toBe('');
    const head = content.values.findIndex((row) => row[0] === 'Date') + info.row;
    const typed = [
      ['2026-04-29', 'Far corner', '4700', 'grass on the wire'],
      ['2026-04-29', 'Gate', '5200', ''],
      ['', '', '', ''],
      ['2026-05-06', 'Far corner', '2900', "'=broken"],
    ];
    typed.forEach((row, r) => {
      row.forEach((value, c) => {
        if (value !== '') book.type('Notes', `${'BCDE'[c]}${head + 2 + r}`, value);
      });
    });
    content = readFromSheet(book, info);
    expect(errorsIn(content)).toEqual([]);
    expect(beside(content, 'Last walk')).toEqual({ d: '2026-05-06' });
    expect(beside(content, 'Lowest of the last walk')).toBe(2900);
    expect(beside(content, 'Walk before')).toEqual({ d: '2026-04-29' });
    expect(beside(content, 'Lowest of the walk before')).toBe(4700);
    expect(beside(content, 'Change')).toBe(-1800);
    expect(beside(content, 'Lowest of all')).toBe(2900);
    expect(beside(content, 'Readings below the level')).toBe(1);
    const read = readWalk(content);
    expect(read.problems).toEqual([]);
    expect(read.readings.map(({ volts }) => volts)).toEqual([6100, 4700, 5200, 2900]);
    const anew = writeAnew(book, WALK_BLOCK, info, () =>
      walkBlock(read.rows, { ...start, ...read.settings.values }, info),
    );
    expect(anew.kept).toEqual(NOTHING_KEPT);
    const after = readFromSheet(book, anew.info);
    expect(readWalk(after).readings).toEqual(read.readings);
    expect(beside(after, 'Change')).toBe(-1800);
  });

  test('a row that cannot be counted is kept and named', async () => {
    const book = await farm();
    const place = { at: 'new-tab', tab: 'Walk' } as const;
    const info = writeInSheet(
      book,
      WALK_BLOCK,
      walkBlock([], startSettings(WALK_SETTINGS, 'US'), { row: 1, column: 1 }),
      place,
    );
    const head = readFromSheet(book, info).values.findIndex((row) => row[0] === 'Date') + 1;
    book.type('Walk', `A${head + 1}`, 'last week');
    book.type('Walk', `C${head + 1}`, 'dead');
    const read = readWalk(readFromSheet(book, info));
    expect(read.rows).toHaveLength(1);
    expect(read.problems).toEqual([
      `Walk!A${head + 1}: date must be a date (a date cell, or text such as "2026-04-20")`,
      `Walk!C${head + 1}: volts must be a number`,
    ]);
  });

  test('volts in words are no 0 V, and the row says what to type', async () => {
    const book = await farm();
    const { info, rows } = await emptyWalk(book);
    const typed: Record<string, string>[] = [
      { A: '2026-06-10', C: '4200' },
      { A: '2026-06-11', B: 'creek', C: '2.1 kV' },
      { A: 'on Friday', C: '2800' },
      { C: '3100' },
      { A: '2026-06-12', C: '3500' },
      { A: '2026-06-12 15:30', C: '3300' },
      { B: 'gate, post broken' },
      { A: 'Saturday', C: 'dead' },
    ];
    typed.forEach((row, r) => {
      for (const [column, text] of Object.entries(row)) book.type('Walk', `${column}${rows + r}`, text);
    });
    const content = readFromSheet(book, info);
    expect(errorsIn(content)).toEqual([]);
    expect(typed.map((_, r) => book.value('Walk', `E${rows + r}`))).toEqual([
      'enough',
      'type the volts as a number',
      'type the day as a date; too low',
      'type the day as a date; enough',
      'enough',
      'enough',
      '',
      'type the day as a date; type the volts as a number',
    ]);
    // A time typed with the day makes no walk of its own.
    expect(beside(content, 'Last walk')).toEqual({ d: '2026-06-12' });
    expect(beside(content, 'Lowest of the last walk')).toBe(3300);
    expect(beside(content, 'Walk before')).toEqual({ d: '2026-06-11' });
    expect(beside(content, 'Lowest of the walk before')).toBe('');
    expect(beside(content, 'Change')).toBe('');
    book.type('Walk', `C${rows + 1}`, '2100');
    expect(beside(readFromSheet(book, info), 'Lowest of the walk before')).toBe(2100);
    expect(beside(readFromSheet(book, info), 'Change')).toBe(1200);
  });

  test('the log grows only when it is nearly full, and takes in readings typed right below', async () => {
    const book = await farm();
    const { info, rows } = await emptyWalk(book);
    const type = (row: number, volts: number): void => {
      book.type('Walk', `A${row}`, '2026-06-12');
      book.type('Walk', `C${row}`, String(volts));
    };
    const end = info.rows;
    for (let row = rows; row < end - 5; row++) type(row, 4000);
    book.type('Walk', `A${end + 8}`, 'my own line');
    const anew = (named: typeof info) => {
      const { info: grown, below } = grownBlock(readTab(book, 'Walk'), named, () => []);
      const adoptRows = grown.rows - named.rows;
      const { rows: walked, lines } = readWalk(readAsWritten(book, named, adoptRows));
      const old = readFromSheet(book, named, adoptRows);
      const block = rebuildBlock(WALK_BLOCK, old, () =>
        walkBlock(walked, startSettings(WALK_SETTINGS, 'US'), named, { lines, below }),
      );
      expect(block.kept).toEqual(NOTHING_KEPT);
      return writeOver(book, WALK_BLOCK, old, block);
    };
    expect(anew(info)).toEqual(info);
    // Full, and one reading too many: no further than the grower's own line.
    for (let row = end - 5; row < end; row++) type(row, 3900);
    type(end + 1, 2700);
    expect(beside(readFromSheet(book, info), 'Lowest of the last walk')).toBe(3900);
    expect(book.value('Walk', `A${end}`)).toMatch(/^Rows below this line are not counted yet/);
    const grown = anew(info);
    expect(grown.rows).toBe(end + 7);
    expect(beside(readFromSheet(book, grown), 'Lowest of the last walk')).toBe(2700);
    expect(book.value('Walk', `E${end}`)).toBe('too low');
    expect(book.value('Walk', `A${end + 8}`)).toBe('my own line');
  });
});

async function emptyWalk(book: Workbook): Promise<{ info: BlockInfo; rows: number }> {
  const block = walkBlock([], startSettings(WALK_SETTINGS, 'US'), { row: 1, column: 1 });
  const info = writeInSheet(book, WALK_BLOCK, block, { at: 'new-tab', tab: 'Walk' });
  const head = readFromSheet(book, info).values.findIndex((row) => row[0] === 'Date');
  return { info, rows: head + 2 };
}
