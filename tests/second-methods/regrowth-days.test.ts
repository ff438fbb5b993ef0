/** REGROWTH_DAYS against a walk from day to day by the language's own calendar. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayFromCivil } from '../../shared/core/calendar/day';
import type { PlanPaddock } from '../../shared/plan/model';
import { restDue } from '../../shared/plan/rest-due';
import { cell } from '../cell';

const PLAIN: PlanPaddock = { name: 'P', areaSquareMeters: 1 } as PlanPaddock;

/** Days until the growth is there, or undefined where 730 days are not enough. */
function walked(start: string, growth: readonly number[], needed: number): number | undefined {
  const date = new Date(`${start}T00:00:00Z`);
  let missing = needed;
  for (let days = 0; days < 730; days++) {
    const today = growth[date.getUTCMonth()] ?? 0;
    if (today > 0 && missing <= today * (1 + 1e-12)) return days + Math.min(1, missing / today);
    missing -= today;
    date.setUTCDate(date.getUTCDate() + 1);
  }
  return undefined;
}

describe('REGROWTH_DAYS against a walk from day to day', () => {
  it('any start, leap years and years without growth included', () => {
    const starts = fc
      .date({ min: new Date('1999-01-01'), max: new Date('2030-12-31'), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 10));
    const rates = fc.array(fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 90 })), {
      minLength: 12,
      maxLength: 12,
    });
    let [answered, refused] = [0, 0];
    fc.assert(
      fc.property(starts, rates, fc.integer({ min: 1, max: 40_000 }), (start, growth, needed) => {
        const wanted = walked(start, growth, needed);
        if (wanted === undefined) {
          refused++;
          expect(() => cell('REGROWTH_DAYS', start, [growth], needed)).toThrow(
            'REGROWTH_DAYS: growth_needed must be grown within 730 days',
          );
        } else {
          answered++;
          expect(cell('REGROWTH_DAYS', start, [growth], needed)).toBeCloseTo(wanted, 6);
        }
      }),
      { numRuns: 400 },
    );
    expect(answered).toBeGreaterThan(50);
    expect(refused).toBeGreaterThan(5);
  });

  it('counts 29 February: 100 a day from 1 February need 29 days for 2,900 in 2028, in 2027 a day of March', () => {
    const growth = [[0, 100, 50, 0, 0, 0, 0, 0, 0, 0, 0, 0]];
    expect(cell('REGROWTH_DAYS', '2028-02-01', growth, 2900)).toBe(29);
    expect(cell('REGROWTH_DAYS', '2027-02-01', growth, 2900)).toBe(30);
  });

  // Tenths are walked as whole numbers, which have no rounding: what whole days grow is enough, for every pair of months.
  it('never waits for a rounding error at the end of a month, nor does the planner', () => {
    for (let march = 1; march <= 101; march++) {
      for (let april = 1; april <= 31; april += 3) {
        const growth = [0, 0, march / 10, april / 10, 0, 0, 0, 0, 0, 0, 0, 0];
        const needed = (31 * march + 30 * april) / 10;
        expect(cell('REGROWTH_DAYS', '2026-03-01', [growth], needed), `${march} ${april}`).toBeCloseTo(61, 6);
        expect(restDue(PLAIN, { kind: 'forage', growth, needed }, dayFromCivil(2026, 3, 1))).toBe(61);
      }
    }
  });
});
