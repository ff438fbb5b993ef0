/** Whether a fence bites, and what helps most. */
import { describe, expect, test } from 'vitest';
import { bookOf } from '../../../shared/block/book';
import type { BitePlan } from '../../../shared/tasks/bite/bite-block';
import { growthSetting, innerOhms } from '../../../shared/tasks/bite/bite-settings';
import { judgePlan } from '../../../shared/tasks/bite/judge-plan';
import { READING_LABELS, WALK_TASK } from '../../../shared/tasks/bite/walk-task';
import { WIRES } from '../../../shared/tasks/bite/wires';

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
    expect(judged!.verdict).toBe('weak in weeds');
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
