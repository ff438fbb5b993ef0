import { plainNumber } from '../refusals';
import { fromInside, type Quantity, symbolOf, type UnitSystem } from '../units/units';

/** "4.41 lb/day": an amount in the units of the farm. */
export function amountWords(inside: number, quantity: Quantity, system: UnitSystem, digits = 3): string {
  return `${plainNumber(fromInside(inside, quantity, system), digits)} ${symbolOf(quantity, system)}`;
}
