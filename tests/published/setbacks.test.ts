/**
 * Distances from water: North Carolina, "General Guidelines for Swine on Dry Lots", revised 5 November 1997
 * (p2infohouse.org/ref/32/31084/5-2-swine_guidelines.htm, read): 100 ft to water down the slope. England, Farming Rules for
 * Water, as the National Pig Association prints them, 10 April 2018 (read): feeders 10 m from inland and coastal waters,
 * 50 m from a spring, well or borehole. Colorado, department of public health (read): 150 ft from manure facilities to wells.
 */
import { expect, it } from 'vitest';
import { SETBACKS } from '../../shared/tables/setbacks';
import { expectPrinted } from './expect-printed';

it.each([
  ['water', 'North Carolina', '30.48'],
  ['water', 'England', '10.0'],
  ['well', 'Colorado', '45.72'],
  ['well', 'England', '50.0'],
])('to %s, %s: %s m', (to, place, printed) => {
  const [found, ...others] = SETBACKS.filter((one) => one.to === to && one.holds.startsWith(place));
  expect(others).toEqual([]);
  expectPrinted(found?.meters ?? 0, printed);
});
