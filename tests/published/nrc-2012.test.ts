/**
 * National Research Council, Nutrient Requirements of Swine, 11th edition, 2012: Table 16-1 and the intake equations.
 * From memory; the book was not seen. The checks that bear the memory out need nothing of ours: the feed column follows
 * from the other two, and the mixed line is the mean of barrows and gilts.
 */
import { describe, expect, it } from 'vitest';
import { numberOf } from '../cell';
import { expectPrinted } from './expect-printed';
import { numberIn, readTable } from './read-table';

const TABLE = readTable('nrc-table-16-1.csv');
const barrow = (kg: number): number => 10447 * (1 - Math.exp(-Math.exp(-4.283) * kg ** 1.0843));
const gilt = (kg: number): number => 10967 * (1 - Math.exp(-Math.exp(-3.803) * kg ** 0.9072));

/** Energy intake a day, read back from a day's feed: no growth, no outdoor allowance, 5 % waste taken off. */
const meIntake = (kg: number): number => numberOf('FEED_NEEDED', 1, kg, 1, 0, 1, 'metric') * 0.95 * 3300;

describe('Table 16-1', () => {
  for (const row of TABLE) {
    const [from, to] = [numberIn(row, 'from_kg'), numberIn(row, 'to_kg')];
    it(`${from}–${to} kg: feed and waste follow from energy and diet to the gram`, () => {
      const feed = (numberIn(row, 'me_intake') / numberIn(row, 'diet_me') / 0.95) * 1000;
      expectPrinted(feed, row.feed_and_waste ?? '');
    });

    it(`${from}–${to} kg: a pig gains ${row.gain} g a day`, () => {
      expect(numberOf('PIG_WEIGHT', from, 1, undefined, 'metric') - from).toBeCloseTo(
        numberIn(row, 'gain') / 1000,
        10,
      );
      expect(numberOf('DAYS_TO_WEIGHT', from, to, undefined, 'metric')).toBeCloseTo(
        ((to - from) / numberIn(row, 'gain')) * 1000,
        9,
      );
    });
  }

  it('25 to 135 kg take 33.0 + 27.8 + 27.3 + 40.4 = 128.4 days', () => {
    const days = (from: number, to: number): number =>
      numberOf('DAYS_TO_WEIGHT', from, to, undefined, 'metric');
    expectPrinted(days(25, 50), '33.0');
    expectPrinted(days(50, 75), '27.8');
    expectPrinted(days(75, 100), '27.3');
    expectPrinted(days(100, 135), '40.4');
    expectPrinted(days(25, 135), '128.4');
  });

  // The table's own feed over 25 to 135 kg is 304.4 kg; the equation, walked pig by pig, is another way to the same.
  it('feed from 25 to 135 kg is within 2 % of the 304.4 kg that the table adds up to', () => {
    const days = numberOf('DAYS_TO_WEIGHT', 25, 135, undefined, 'metric');
    const feed = numberOf('FEED_NEEDED', 1, 25, days, undefined, 1, 'metric');
    expect(Math.abs(feed / 304.4 - 1)).toBeLessThan(0.02);
  });
});

describe('intake equations', () => {
  it('mean of barrow and gilt is the mixed line within 2 kcal from 20 to 135 kg', () => {
    for (let kg = 20; kg <= 135; kg++) {
      expect(Math.abs(meIntake(kg) - (barrow(kg) + gilt(kg)) / 2), `${kg} kg`).toBeLessThan(2);
    }
  });

  it.each([
    [20, '3134', '0.950', '1.000'],
    [25, '3760', '1.139', '1.199'],
    [40, '5338', '1.618', '1.703'],
    [50, '6181', '1.873', '1.972'],
    [75, '7741', '2.346', '2.469'],
    [100, '8745', '2.650', '2.790'],
    [120, '9285', '2.813', '2.962'],
    [135, '9581', '2.903', '3.056'],
  ])('%d kg: %s kcal, %s kg of feed, %s kg with waste', (kg, kcal, eaten, fed) => {
    expectPrinted(meIntake(kg), kcal);
    const feed = numberOf('FEED_NEEDED', 1, kg, 1, 0, 1, 'metric');
    expectPrinted(feed * 0.95, eaten);
    expectPrinted(feed, fed);
  });

  // Penn State swine course, Lesson 3 (read): 50 to 275 lb at 3 lb of feed per lb of gain, 675 lb. A range check only.
  it('feed from 50 to 275 lb lies within 15 % of the 675 lb of the Penn State swine course', () => {
    const days = numberOf('DAYS_TO_WEIGHT', 50, 275);
    const feed = numberOf('FEED_NEEDED', 1, 50, days, undefined, 1);
    expect(Math.abs(feed / 675 - 1)).toBeLessThan(0.15);
  });

  // Prairie Swine Centre (read): finishers take 2.6 to 3.4 kg of feed a kg of gain.
  it('finisher feed per gain lies between 2.6 and 3.4', () => {
    const days = numberOf('DAYS_TO_WEIGHT', 60, 120, undefined, 'metric');
    const ratio = numberOf('FEED_NEEDED', 1, 60, days, undefined, 1, 'metric') / 60;
    expect(ratio).toBeGreaterThan(2.6);
    expect(ratio).toBeLessThan(3.4);
  });
});
