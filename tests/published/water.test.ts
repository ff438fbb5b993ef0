/**
 * Water to have there, drunk and spilled, at 20 °C where nothing is said.
 * - Department of Primary Industries, Western Australia, 2021 (read): weaner 3–5, grower 5–7, finisher 9–12 L a day.
 * - D. Little and others, J Swine Health Prod 31(1):20, 2023 (read): 60 to 117 mL a kg of pig a day across studies.
 * - M. C. Brumm and others, 2000 (abstract): 3.78 to 6.06 L a day in grow-finish trials, by drinker.
 * - L. E. Mount and others, Animal Production 13:561, 1971 (read), pigs of 21 to 73 kg: drunk for each kg of feed up to
 *   2.7 L at 7 to 22 °C and up to 5.0 L at 33 °C.
 */
import { describe, expect, it } from 'vitest';
import { numberOf } from '../cell';

const liters = (kg: number, celsius?: number): number => numberOf('WATER_NEEDED', 1, kg, celsius, 'metric');

describe('by class, Western Australia', () => {
  // Weights typical of the class; the table gives none.
  it.each([
    ['weaner', 20, 3, 5],
    ['grower', 40, 5, 7],
    ['finisher', 80, 9, 12],
    ['finisher', 110, 9, 12],
  ])('%s of %d kg: %d to %d L a day', (_, kg, least, most) => {
    expect(liters(kg)).toBeGreaterThanOrEqual(least);
    expect(liters(kg)).toBeLessThanOrEqual(most);
  });
});

describe('as metered', () => {
  it('finishers use 60 to 117 mL a kg a day', () => {
    for (let kg = 85; kg <= 135; kg += 5) {
      expect(liters(kg) / kg, `${kg} kg`).toBeGreaterThanOrEqual(0.06);
      expect(liters(kg) / kg, `${kg} kg`).toBeLessThanOrEqual(0.117);
    }
  });

  it('is enough for the thirstiest grow-finish trial, 6.06 L a day, from 45 kg on', () => {
    for (let kg = 45; kg <= 135; kg += 5) expect(liters(kg)).toBeGreaterThan(6.06);
  });
});

describe('Mount 1971', () => {
  // 1.25 for spill is the judgement of the contract; feed with the 15 % outdoors, 5 % of it not eaten.
  it.each([
    [7, 2.7],
    [22, 2.7],
    [33, 5],
    [40, 5],
  ])('at %d °C pigs drink %d L for each kg that they eat', (celsius, published) => {
    for (const kg of [21, 50, 73]) {
      const eaten = numberOf('FEED_NEEDED', 1, kg, 1, 0, 1.15, 'metric') * 0.95;
      expect(liters(kg, celsius) / 1.25 / eaten).toBeCloseTo(published, 9);
    }
  });

  it.each([30, 31.5])('at %d °C between 2.8 and 5.0', (celsius) => {
    const eaten = numberOf('FEED_NEEDED', 1, 50, 1, 0, 1.15, 'metric') * 0.95;
    expect(liters(50, celsius) / 1.25 / eaten).toBeGreaterThan(2.8);
    expect(liters(50, celsius) / 1.25 / eaten).toBeLessThan(5);
  });
});
