/** Whether a fence bites, and what helps most. */
import { describe, expect, test } from 'vitest';
import { bookOf } from '../../../shared/block/book';
import type { BitePlan } from '../../../shared/tasks/bite/bite-block';
import { growthSetting, innerOhms, labelVolts } from '../../../shared/tasks/bite/bite-settings';
import { BITE_TASK } from '../../../shared/tasks/bite/bite-task';
import { judgePlan } from '../../../shared/tasks/bite/judge-plan';
import { READING_LABELS, WALK_TASK } from '../../../shared/tasks/bite/walk-task';
import { WIRES } from '../../../shared/tasks/bite/wires';
import { MATERIALS_TASK } from '../../../shared/tasks/materials/materials-task';
import { readBook } from '../../../shared/tasks/run-task';
import { openWorkbook, portOf, runTask } from '../../../src/headless';
import { scriptText } from '../script-text';

const SETTINGS = { volts: 8000, ohms: 300, weeds: 10_000, pig: 500, onFence: 3000, delivered: 2000 };
const plan = (meters: number, wire: number, settings: Partial<typeof SETTINGS> = {}): BitePlan => ({
  lines: [{ name: 'Lane', meters, liveWires: 1, wire: WIRES[wire]!.name }],
  wires: WIRES,
  units: 'metric',
  settings: { ...SETTINGS, ...settings },
});

describe('what helps most', () => {
  test('nothing is offered where the line is enough', () => {
    expect(judgePlan(plan(300, 4))).toEqual([expect.not.objectContaining({ help: expect.anything() })]);
  });

  test('a wire that conducts where the wire is poor', () => {
    const [judged] = judgePlan(plan(1500, 0));
    expect(judged!.verdict).not.toBe('enough');
    expect(judged!.help!.words).toBe('take “High-tensile steel, 12.5 gauge”');
    // The same line with that wire gives what was said of it.
    expect(judgePlan(plan(1500, 4))[0]!.volts.pigInWeeds).toBeCloseTo(judged!.help!.volts, 9);
  });

  test('mowing where growth takes it, on steel', () => {
    const [judged] = judgePlan(plan(8000, 4, { weeds: growthSetting('heavy', 'metric') }));
    expect(judged!.verdict).toBe('not enough in weeds');
    expect(judged!.help!.words).toBe('mow the growth off the line');
  });
});

// Ohm's law at the terminals: U0 = I (Ri + 500), U500 = I × 500.
test.each([
  [8000, 5000, 300],
  [8000, 8000, 0],
  [8000, 0, undefined],
  [8000, 9000, undefined],
])('%d V without load, %d V with 500 Ω: %s Ω inside', (volts, loaded, ohms) => {
  expect(innerOhms(volts, loaded)).toBe(ohms);
});

// 5 J into 500 Ω as an even pulse of 0.1 ms are 5,000 V and 10 A: 5,000 × 10 × 0.0001 (fence facts, calculated there);
// a fifth of the joules, √5 less of the volts.
test.each([
  [5, 5000],
  [1, 2236],
  [0.2, 1000],
])('%d J on the label: %d V into 500 Ω', (joules, volts) => {
  expect(Math.round(labelVolts(joules))).toBe(volts);
});

test('of netting from the materials no other wire is said to help', async () => {
  const farm = await openWorkbook({
    tabs: {
      Land: [
        ['Paddock', 'Width (m)', 'Length (m)', 'Hectares'],
        ['A', 400, 600, 24],
        ['B', 400, 600, 24],
      ],
    },
    codeJs: await scriptText(),
  });
  const port = portOf(farm);
  const done = await runTask(port, MATERIALS_TASK, {
    'What is the fence made of?': 'Netting, with its posts in it',
  });
  expect(done.kind).toBe('written');
  const { plan } = BITE_TASK.read(await readBook(port), {});
  const [judged] = judgePlan(plan!);
  expect(judged!.verdict).not.toBe('enough');
  expect(judged!.help!.words).toMatch(/^(mow|halve) /);
});

test('begins with the fence that one energizer feeds, and with the joules in the shed', async () => {
  const farm = await openWorkbook({
    tabs: {
      Land: [
        ['Paddock', 'Width (m)', 'Length (m)', 'Hectares'],
        ['A', 40, 60, 0.24],
        ['B', 40, 60, 0.24],
      ],
      Pigs: [
        ['Group', 'Head', 'Weight (kg)'],
        ['Reds', 8, 40],
        ['Blacks', 6, 60],
      ],
      Shed: [
        ['Item', 'How many'],
        ['energizer 5 J', 2],
      ],
    },
    codeJs: await scriptText(),
  });
  const { lines, settings } = BITE_TASK.read(bookOf(await portOf(farm)('readFile', {})), {});
  // 200 + 200 − 60 m for each group.
  expect(lines).toEqual([
    {
      Name: 'Fence of a group',
      Length: '340',
      'Live wires': '2',
      Wire: 'Polywire, 6 stainless and 3 copper',
    },
  ]);
  // 8,000 V alone and 5,000 V with 500 Ω on: 500 × (8 ÷ 5 − 1).
  expect(settings.values.ohms).toBe(300);
});

test('a reading in kilovolts is asked, not written', async () => {
  const book = bookOf({
    overview: { blocks: [], tabs: [], locale: 'en_US', today: '2026-05-04' } as never,
    tabs: [],
  });
  const read = (volts: string) => WALK_TASK.read(book, { [READING_LABELS.volts]: volts }).readingProblem;
  expect(read('5.6')).toContain('type 5600');
  expect(read('0')).toBeUndefined();
  expect(read('5600')).toBeUndefined();
});
