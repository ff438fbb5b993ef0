/**
 * Water: L. E. Mount and others, Animal Production 13:561, 1971 (read): 2.1 to 2.7 litres per kg of feed at 7 to 22 °C,
 * 2.8 to 5.0 at 30 to 33 °C, 0.092 to 0.184 litres per kg of pig a day (21 to 73 kg). swine.extension.org (read):
 * grower 45–130 lb 1 gal, finisher 130–250 lb 1.5 to 2 gal a day; 1/4 to 1/3 gal per lb of dry feed.
 */
import { describe, expect, it } from 'vitest';
import { numberOf } from '../cell';

/** Litres of water per kg of feed eaten (the feed of a day without waste or outdoor allowance). */
function ratio(kg: number, celsius: number): number {
  const eaten = numberOf('FEED_NEEDED', 1, kg, 1, 0, 1, 'metric') * 0.95;
  return numberOf('WATER_NEEDED', 1, kg, celsius, 'metric') / eaten;
}

describe('Mount 1971', () => {
  it.each([7, 12, 20, 22])('at %d °C the ratio is within 2.1 to 2.7', (celsius) => {
    expect(ratio(50, celsius)).toBeGreaterThanOrEqual(2.1);
    expect(ratio(50, celsius)).toBeLessThanOrEqual(2.7 * (1 + 1e-12));
  });

  it.each([30, 31.5, 33])('at %d °C the ratio is within 2.8 to 5.0', (celsius) => {
    expect(ratio(50, celsius)).toBeGreaterThanOrEqual(2.8);
    expect(ratio(50, celsius)).toBeLessThanOrEqual(5 * (1 + 1e-12));
  });

  // This sheet goes by feed, not by kg of pig. Above 62 kg it falls under the measured range, by 7 % at most.
  it('per kg of pig at 20 °C: within the measured 0.092 to 0.184 litres a day from 21 to 62 kg, 7 % under at 73 kg', () => {
    for (let kg = 21; kg <= 73; kg++) {
      const perKg = numberOf('WATER_NEEDED', 1, kg, 20, 'metric') / kg;
      expect(perKg, `${kg} kg`).toBeGreaterThan(0.092 * (kg <= 62 ? 1 : 0.93));
      expect(perKg).toBeLessThan(0.184);
    }
  });
});

describe('extension table, as a range check', () => {
  it('growers of 45 to 130 lb: around 1 gallon', () => {
    expect(numberOf('WATER_NEEDED', 1, 45)).toBeGreaterThan(0.6);
    expect(numberOf('WATER_NEEDED', 1, 90)).toBeGreaterThan(1);
    expect(numberOf('WATER_NEEDED', 1, 130)).toBeLessThan(1.6);
  });

  it('finishers of 130 to 250 lb: 1.5 to 2 gallons, to the nearest half', () => {
    for (let lb = 130; lb <= 250; lb += 10) {
      const gallons = Math.round(2 * numberOf('WATER_NEEDED', 1, lb)) / 2;
      expect(gallons).toBeGreaterThanOrEqual(1.5);
      expect(gallons).toBeLessThanOrEqual(2);
    }
  });

  it('the cool ratio lies within 1/4 to 1/3 gallon per lb of feed', () => {
    const litersPerKg = (gallonsPerLb: number): number => (gallonsPerLb * 3.785411784) / 0.45359237;
    expect(ratio(70, 20)).toBeGreaterThan(litersPerKg(1 / 4));
    expect(ratio(70, 20)).toBeLessThan(litersPerKg(1 / 3));
  });
});
