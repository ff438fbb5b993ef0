import { HOT_FROM_CELSIUS } from '../tables/water-per-feed';
import { ceilForgiving } from '../units/ceil-forgiving';
import { fromInside, type UnitSystem } from '../units/units';

/** Air temperature of the hot day of every table: from it on WATER_NEEDED rises no more. Whole cell units. */
export function hotDay(units: UnitSystem): number {
  return ceilForgiving(fromInside(HOT_FROM_CELSIUS, 'temperature', units));
}
