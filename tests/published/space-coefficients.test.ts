/**
 * Floor: Council Directive 2008/120/EC, Article 3 (read), least floor by weight, for pigs that need not all lie flat at
 * once; Regulation (EC) 889/2008, Annex III (read), stall of organic pigs by weight, which holds dunging and feeding too;
 * Arndt 2019, PMC6335254 (read), 0.486 ± 0.040 m² of a late finisher lying flat on its side.
 */
import { describe, expect, it } from 'vitest';
import { numberOf } from '../cell';

const floor = (kg: number): number => numberOf('SHELTER_AREA', 1, kg, undefined, 'metric');

describe('floor by weight', () => {
  it.each([
    [50, 0.4, 0.8],
    [85, 0.55, 1.1],
    [110, 0.65, 1.3],
  ])('at %d kg: more than the least of %d m², less than the organic stall of %d m²', (kg, least, stall) => {
    expect(floor(kg)).toBeGreaterThan(least);
    expect(floor(kg)).toBeLessThan(stall);
  });

  it('at 30 kg more than the least of 0.3 m², just above 110 kg more than 1 m²', () => {
    expect(floor(30)).toBeGreaterThan(0.3);
    expect(floor(110.001)).toBeGreaterThan(1);
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
