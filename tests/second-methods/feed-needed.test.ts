/**
 * FEED_NEEDED against plain summation: the pig is weighed a hundred times a day, eats by the intake equation of that
 * weight, and gains. No integral, no growth stretches.
 */
import { describe, expect, it } from 'vitest';
import { cell, numberOf } from '../cell';

const STEPS_PER_DAY = 100;
const BAND_GAIN = [
  [7, 0.21],
  [11, 0.335],
  [25, 0.585],
  [50, 0.758],
  [75, 0.9],
  [100, 0.917],
  [135, 0.867],
] as const;

const tableGain = (kg: number): number => BAND_GAIN.find(([below]) => kg < below)?.[1] ?? 0.867;

/** Feed of one pig in kg, by the middle of each step. */
function summedFeed(startKg: number, days: number, gain: (kg: number) => number): number {
  let [kg, kcal] = [startKg, 0];
  for (let i = 0; i < Math.round(days * STEPS_PER_DAY); i++) {
    const rise = gain(kg) / STEPS_PER_DAY;
    const middle = kg + rise / 2;
    kcal += (10563 * (1 - Math.exp(-Math.exp(-4.04) * middle))) / STEPS_PER_DAY;
    kg += rise;
  }
  return kcal / 3300 / 0.95;
}

describe('FEED_NEEDED against summation', () => {
  it.each([
    [25, 60],
    [6, 30],
    [90, 40],
    [20, 125],
  ])('by the growth table, from %d kg over %d days', (kg, days) => {
    const wanted = summedFeed(kg, days, tableGain);
    // A step that straddles two bands gains by the first of them, which costs the sum its fourth digit.
    expect(numberOf('FEED_NEEDED', 1, kg, days, undefined, 1, 'metric') / wanted).toBeCloseTo(1, 3);
  });

  it.each([
    [25, 60, 0.6],
    [60, 30, 0.68],
    [150, 14, 0.7],
    [5, 1, 2],
  ])('with a given gain, from %d kg over %d days at %d kg a day', (kg, days, gain) => {
    const wanted = summedFeed(kg, days, () => gain);
    expect(numberOf('FEED_NEEDED', 1, kg, days, gain, 1, 'metric') / wanted).toBeCloseTo(1, 6);
  });

  it('twelve pigs of 60 lb over 30 days at 1.5 lb: 1282.5 lb', () => {
    const pounds = 0.45359237;
    expect((12 * summedFeed(60 * pounds, 30, () => 1.5 * pounds)) / pounds).toBeCloseTo(1282.5, 1);
  });

  it('adds up over stays: 20 days and then 25 are 45', () => {
    const feed = (kg: number, days: number): number =>
      numberOf('FEED_NEEDED', 8, kg, days, undefined, undefined, 'metric');
    const later = numberOf('PIG_WEIGHT', 22, 20, undefined, 'metric');
    expect(feed(22, 20) + feed(later, 25)).toBeCloseTo(feed(22, 45), 8);
  });

  it('outdoors by default 15 % more, for as many pigs as there are', () => {
    const one = numberOf('FEED_NEEDED', 1, 100, 10, 1.6, 1);
    expect(numberOf('FEED_NEEDED', 7, 100, 10, 1.6)).toBeCloseTo(7 * 1.15 * one, 8);
  });

  it('refuses weights outside 5 to 160 kg anywhere in the stay, with what to use instead', () => {
    const feed = (kg: number, days: number, gain?: number) => () =>
      cell('FEED_NEEDED', 1, kg, days, gain, 1, 'metric');
    expect(feed(200, 14, 0)).toThrow(
      'FEED_NEEDED: start_weight must be from 5 kg to 160 kg: sows and boars go by their ration, sucklings by the sow’s, got 200 kg',
    );
    expect(feed(200, 14)).toThrow('to 160 kg: sows and boars');
    expect(feed(4, 1, 2)).toThrow('FEED_NEEDED: start_weight must be from 5 kg');
    expect(feed(150, 14, 1)).toThrow(
      'FEED_NEEDED: days must end before the pig passes 160 kg: sows and boars go by their ration, sucklings by the sow’s, got 164 kg on the last day',
    );
    expect(feed(150, 10, 1)).not.toThrow();
    expect(() => cell('WATER_NEEDED', 1, 161, 20, 'metric')).toThrow(
      'WATER_NEEDED: weight must be from 5 kg to 160 kg: sows and boars need far more',
    );
    expect(() => cell('NUTRIENT_LOAD', 1, 4.9, 1, 1, 'metric')).toThrow(
      'NUTRIENT_LOAD: weight must be from 5 kg to 160 kg: for sows, boars and sucklings',
    );
  });
});
