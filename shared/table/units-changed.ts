import { symbolOf, type UnitSystem } from '../units/units';

/** What another unit system does to a table that stands, in sentences; none where it stays the same. */
export function unitsChanged(before: UnitSystem | undefined, now: UnitSystem): readonly string[] {
  if (before === undefined || before === now) return [];
  const units = (system: UnitSystem): string => `${symbolOf('mass', system)} and ${symbolOf('area', system)}`;
  return [
    `The table changes from ${units(before)} to ${units(now)}. Moves that have happened are converted; numbers of your lists without a unit are read as ${symbolOf('mass', now)}, ${symbolOf('area', now)} and so on from now on. If the pigs were weighed in ${symbolOf('mass', before)}, choose the units again in step 1.`,
    'Formulas of yours that point at the table get numbers in the other unit. A budget that reads the table is wrong until it is written anew.',
  ];
}
