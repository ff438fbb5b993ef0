import { type ListUnit, systemOfUnit } from '../units/unit-words';
import type { UnitSystem } from '../units/units';

/** The unit system that the headings of the lists speak in; undefined where they name none, or both equally often. */
export function unitSystemOfLists(
  lists: readonly { readonly units: Readonly<Partial<Record<string, ListUnit>>> }[],
): UnitSystem | undefined {
  const systems = lists.flatMap(({ units }) =>
    Object.values(units).flatMap((unit) => (unit ? [systemOfUnit(unit)] : [])),
  );
  const us = systems.filter((system) => system === 'US').length;
  const metric = systems.filter((system) => system === 'metric').length;
  if (us === metric) return undefined;
  return us > metric ? 'US' : 'metric';
}
