/**
 * Space: A = k × W^0.67. k 0.047 Petherick & Baxter 1981, via Pastorelli 2006 (second hand); k 0.0336 Gonyou 2006, via
 * PMC7205350 (read); 0.041 and 0.028 Pastorelli 2006 (read); Arndt 2019, PMC6335254, measured 0.486 ± 0.040 m² for a
 * late finisher lying flat on its side (read).
 */
import { describe, expect, it } from 'vitest';
import { numberOf } from '../cell';
import { expectPrinted } from './expect-printed';
import { numberIn, readTable } from './read-table';

describe('floor by weight', () => {
  for (const row of readTable('space.csv')) {
    it(`${row.kg} kg`, () => {
      const kg = numberIn(row, 'kg');
      expectPrinted(numberOf('SHELTER_AREA', 1, kg, 0.0336, 'metric'), row.k336 ?? '');
      expectPrinted(numberOf('SHELTER_AREA', 1, kg, undefined, 'metric'), row.k470 ?? '');
      expectPrinted(numberOf('SHELTER_AREA', 1, kg, 0.028, 'metric'), row.k280 ?? '');
    });
  }

  // The rectangle round a pig holds more than the pig: Arndt's measured bodies must fit in, with room but not twice.
  it('holds the body that Arndt measured, lying flat, for late finishers of 100 to 130 kg', () => {
    for (const kg of [100, 115, 130]) {
      const floor = numberOf('SHELTER_AREA', 1, kg, undefined, 'metric');
      expect(floor).toBeGreaterThan(0.486 + 0.04);
      expect(floor).toBeLessThan(3 * 0.486);
    }
  });

  // Arndt: standing bodies cover 0.288 to 0.335 m²; the smallest published floor (pixels of a lying pig) is above that.
  it('the smallest published coefficient still exceeds a standing body', () => {
    expect(numberOf('SHELTER_AREA', 1, 100, 0.028, 'metric')).toBeGreaterThan(0.335);
  });

  // Oklahoma State (second hand): 15 to 20 ft² of roof for a breeding animal.
  it('a sow of 400 to 500 lb gets 15 to 20 ft²', () => {
    expect(numberOf('SHELTER_AREA', 1, 400)).toBeGreaterThan(15);
    expect(numberOf('SHELTER_AREA', 1, 500)).toBeLessThan(20);
  });
});
