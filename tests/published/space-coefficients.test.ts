/**
 * Floor: Council Directive 2008/120/EC, Article 3 (read), least floor by weight, for pigs that need not all lie flat at
 * once; Arndt 2019, PMC6335254 (read), 0.486 ± 0.040 m² of a late finisher lying flat on its side.
 */
import { describe, expect, it } from 'vitest';
import { numberOf } from '../cell';

const floor = (kg: number): number => numberOf('SHELTER_AREA', 1, kg, undefined, 'metric');

describe('floor by weight', () => {
  // Every pig lying flat takes more than the law's least: 10 to 69 % by the evidence review.
  it.each([
    [30, 0.3],
    [50, 0.4],
    [85, 0.55],
    [110, 0.65],
    [110.001, 1],
  ])('at %d kg: the %d m² of the directive and 9.5 to 69.5 % more', (kg, least) => {
    expect(floor(kg) / least - 1).toBeGreaterThan(0.095);
    expect(floor(kg) / least - 1).toBeLessThan(0.695);
  });

  // The rectangle round a pig holds more than the pig; a flat body is not much less than half of it.
  it('holds the body that Arndt measured, for late finishers of 100 to 130 kg', () => {
    for (const kg of [100, 115, 130]) {
      expect(floor(kg)).toBeGreaterThan(0.486 + 0.04);
      expect(floor(kg)).toBeLessThan(3 * 0.486);
    }
  });

  // Oklahoma State (second hand): 15 to 20 ft² of roof for a breeding animal.
  it('a sow of 400 to 500 lb gets 15 to 20 ft²', () => {
    expect(numberOf('SHELTER_AREA', 1, 400)).toBeGreaterThan(15);
    expect(numberOf('SHELTER_AREA', 1, 500)).toBeLessThan(20);
  });
});
