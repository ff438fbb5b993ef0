/** How many were read, in words. */
import { fromInside, symbolOf, type UnitSystem } from '../../../shared/units/units';
import { formatNumber } from '../numbers/format-number';
import { count } from '../parts/day-words';
import type { Lists } from './use-lists';

export function paddockWords({ paddocks }: Lists, units: UnitSystem): string {
  const area = paddocks.reduce((sum, { areaSquareMeters }) => sum + areaSquareMeters, 0);
  const words = `${formatNumber(fromInside(area, 'area', units))} ${symbolOf('area', units)}`;
  return `${count(paddocks.length, 'paddock')} read, ${words} in all.`;
}

export function groupWords({ groups }: Lists): string {
  const head = groups.reduce((sum, group) => sum + group.head, 0);
  return `${count(groups.length, 'group')} read, ${count(head, 'pig')} in all.`;
}
