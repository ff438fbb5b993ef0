/** Volts at the far end: the worked numbers of the fence facts, a ladder of many cells, wires by their make-up. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judgeLine } from '../../../shared/tasks/bite/judge-line';
import { lineVolts } from '../../../shared/tasks/bite/line-volts';
import { walkSentence, walksOf } from '../../../shared/tasks/bite/walk-log';
import { wireResistance } from '../../../shared/tasks/bite/wire-resistance';
import { WIRES } from '../../../shared/tasks/bite/wires';

const ENERGIZER = { volts: 8000, ohms: 300 };
const wire = (name: string) => wireResistance(WIRES.find((one) => one.name === name)?.strands ?? []);

describe('wires by their make-up (calculated from published and remembered resistivities, Ω/km)', () => {
  test.each([
    ['Polywire, 3 stainless', 13581],
    ['Polywire, 6 stainless', 3820],
    ['Polywire, 9 stainless', 2547],
    ['Polywire, 6 stainless and 3 copper', 114],
    ['High-tensile steel, 12.5 gauge', 34.8],
    ['Mild steel, 14 gauge', 44.1],
    ['Mild steel, 17 gauge', 96.8],
  ])('%s: %d Ω/km', (name, ohmsPerKm) => {
    expect((wire(name) * 1000) / ohmsPerKm).toBeCloseTo(1, 2);
  });

  test('three stainless: more than 100 times 14 gauge mild steel (a supplier’s laboratory note)', () => {
    expect(wire('Polywire, 3 stainless') / wire('Mild steel, 14 gauge')).toBeGreaterThan(100);
  });
});

describe('the leaky line, 8,000 V and 300 Ω (400-cell ladder in the fence facts)', () => {
  test.each([
    [0.035, 5000, 6687.5],
    [0.035, 10000, 5340.6],
    [4, 500, 7507],
  ])('%d Ω/m over %d m: %d V in weeds', (ohmsPerMeter, meters, volts) => {
    const line = { meters, liveWires: 1, ohmsPerMeter };
    expect(lineVolts(ENERGIZER, line, 1e7, 500).weeds).toBeCloseTo(volts, 1);
  });

  test.each([
    [4, 500, 1428.6],
    [0.113, 500, 4670.2],
    [0.035, 5000, 4102.6],
  ])('a pig of 500 Ω at the end of %d Ω/m × %d m gets %d V', (ohmsPerMeter, meters, volts) => {
    const line = { meters, liveWires: 1, ohmsPerMeter };
    // V × 500 ÷ (Rs + R + 500), by hand.
    expect(lineVolts(ENERGIZER, line, 1e7, 500).pig).toBeCloseTo(volts, 1);
  });

  test('all four states against a ladder of 400 cells solved from the far end', () => {
    const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        positive(0.01, 5),
        positive(10, 1500),
        fc.integer({ min: 1, max: 3 }),
        positive(1e6, 1e8),
        (ohmsPerMeter, meters, liveWires, leak) => {
          const volts = lineVolts(ENERGIZER, { meters, liveWires, ohmsPerMeter }, leak, 500);
          const ladder = (leakOhms: number, touch: number) =>
            ladderVolts(ohmsPerMeter / liveWires, meters, leakOhms, touch);
          const pairs = [
            [volts.clean, ladder(Infinity, Infinity)],
            [volts.weeds, ladder(leak, Infinity)],
            [volts.pig, ladder(Infinity, 500)],
            [volts.pigInWeeds, ladder(leak, 500)],
          ] as const;
          for (const [ours, theirs] of pairs) expect(ours / theirs).toBeCloseTo(1, 3);
        },
      ),
      { numRuns: 40 },
    );
  });
});

/** Half a cell of wire, the leak, half a cell; one volt assumed at the end, walked back to the energizer. */
function ladderVolts(ohms: number, meters: number, leak: number, touch: number): number {
  const cells = 400;
  const half = (ohms * meters) / cells / 2;
  let volts = 1;
  let amps = 1 / touch;
  for (let i = 0; i < cells; i++) {
    volts += amps * half;
    amps += (volts * (meters / cells)) / leak;
    volts += amps * half;
  }
  return ENERGIZER.volts / (volts + amps * ENERGIZER.ohms);
}

describe('the judgement', () => {
  const good = { clean: 7000, weeds: 5000, pig: 4000, pigInWeeds: 3000 };
  test.each([
    [good, 'enough'],
    [{ ...good, pigInWeeds: 1900 }, 'not enough when a pig touches'],
    [{ ...good, weeds: 2999 }, 'not enough in weeds'],
    [{ ...good, clean: 2999, weeds: 100 }, 'not enough even clean'],
  ])('%o: %s', (volts, words) => expect(judgeLine(volts, 3000, 2000)).toBe(words));
});

describe('the fence walk', () => {
  const reading = (day: number, volts: number) => ({ day, place: '', volts, found: '' });
  const readings = [
    reading(12, 5200),
    reading(5, 6100),
    reading(12, 4700),
    reading(5, 6400),
    reading(19, 2900),
  ];

  test('lowest of each day, in the order of days', () => {
    expect(walksOf(readings)).toEqual([
      { day: 5, lowest: 6100, readings: 2 },
      { day: 12, lowest: 4700, readings: 2 },
      { day: 19, lowest: 2900, readings: 1 },
    ]);
  });

  test('told in a sentence', () => {
    expect(walkSentence(walksOf(readings), 3000, (day) => `day ${day}`)).toBe(
      '3 walks. Last day 19: 2900 V, 1800 V down since day 12. Lowest 2900 V on day 19. 1 below 3000 V.',
    );
    expect(walkSentence([], 3000, String)).toBe('No reading yet.');
  });
});
