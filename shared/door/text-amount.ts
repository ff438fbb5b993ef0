import type { NumberParam } from '../catalogue/define';
import { textNumber } from '../units/text-number';
import { LIST_UNITS, type ListQuantity, unitOfText } from '../units/unit-words';
import { QUANTITIES, type Quantity, toInside, type UnitSystem } from '../units/units';

/** Units in words that a quantity of ours may be written in. */
const WRITTEN_IN: Readonly<Partial<Record<Quantity, ListQuantity>>> = {
  length: 'length',
  height: 'length',
  diameter: 'length',
  mass: 'mass',
  massPerDay: 'massPerDay',
  area: 'area',
  floorArea: 'area',
};

/**
 * The inside value of a number that stands in a cell as text, with its unit or without: "118 lb", "28,5", "1 250". A
 * unit goes before the function's own system. Undefined where it may be two numbers ("3,322": a cell function does not
 * know the spreadsheet's locale) or has a unit that is none of the argument's.
 */
export function textAmount(
  { quantity, unit }: Pick<NumberParam, 'quantity' | 'unit'>,
  text: string,
  system: UnitSystem,
): number | undefined {
  const typed = textNumber(text, false);
  if (!typed || 'either' in typed || typed.byLocale) return undefined;
  const { value, behind } = typed;
  if (behind === '') return quantity ? toInside(value, quantity, system) : value;
  if (!quantity) return unit?.toLowerCase() === behind.toLowerCase() ? value : undefined;
  for (const { symbol, factor, offset } of Object.values(QUANTITIES[quantity])) {
    if (symbol.toLowerCase() === behind.toLowerCase()) return value * factor + offset;
  }
  const word = unitOfText(behind, true);
  return word && LIST_UNITS[word].quantity === WRITTEN_IN[quantity]
    ? value * LIST_UNITS[word].factor
    : undefined;
}
