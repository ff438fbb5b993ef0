/**
 * Water to have there, drunk and spilled, at 20 °C where nothing is said.
 * - Department of Primary Industries, Western Australia, 2021 (read): weaner 3–5, grower 5–7, finisher 9–12 L a day.
 * - D. Little and others, J Swine Health Prod 31(1):20, 2023 (read): 60 to 117 mL a kg of pig a day across studies.
 * - M. C. Brumm and others, 2000 (abstract): 3.78 to 6.06 L a day in grow-finish trials, by drinker.
 * - L. E. Mount and others, Animal Production 13:561, 1971 (read), pigs of 21 to 73 kg: drunk for each kg of feed up to
 *   2.7 L at 7 to 22 °C and up to 5.0 L at 33 °C; 92 to 184 mL a kg of pig a day over all of it.
 * - K. D. Vande Pol and others, Translational Animal Science, 2022 (abstract, read): pigs of 27 to 131 kg at 30 °C from 8 to
 *   19 o'clock and 20 °C from 20 to 7, 25 °C on average, used more than 16 % more water than at 24 falling to 18 °C.
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
  const ratio = (celsius: number): number => liters(50, celsius) / liters(50, 22);

  it('at 7 °C pigs drink as much for each kg of feed as at 22 °C', () => {
    expect(ratio(7)).toBeCloseTo(1, 12);
  });

  it.each([33, 40])('at %d °C 5.0 L where at 22 °C 2.7', (celsius) => {
    expect(ratio(celsius)).toBeCloseTo(5 / 2.7, 12);
  });

  it.each([30, 31.5])('at %d °C between 2.8 and 5.0 L', (celsius) => {
    expect(ratio(celsius)).toBeGreaterThan(2.8 / 2.7);
    expect(ratio(celsius)).toBeLessThan(5 / 2.7);
  });

  it('is never less than the 92 mL a kg that the least thirsty groups drank, from 21 to 73 kg', () => {
    for (let kg = 21; kg <= 73; kg += 4) expect(liters(kg) / kg, `${kg} kg`).toBeGreaterThan(0.092);
  });
});

// The percentage is cut off behind 16 in the copy that was read.
it('Vande Pol 2022: at 25 °C at least 17 % more than at 20 °C', () => {
  expect(liters(80, 25) / liters(80, 20)).toBeGreaterThan(1.17);
});
