import { symbolOf, type UnitSystem } from '../units/units';
import * as words from './words';

/** What another unit system does to a table that stands, in sentences; none where it stays the same. */
export function unitsChanged(before: UnitSystem | undefined, now: UnitSystem): readonly string[] {
  if (before === undefined || before === now) return [];
  return [words.unitsChange(unitsOf(before), unitsOf(now)), words.UNITS_POINT];
}

function unitsOf(system: UnitSystem): { mass: string; area: string } {
  return { mass: symbolOf('mass', system), area: symbolOf('area', system) };
}
