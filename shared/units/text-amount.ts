import { textNumber } from './text-number';
import { LIST_UNITS, type ListQuantity, unitOfText } from './unit-words';
import { QUANTITIES, type Quantity, toInside, type UnitSystem } from './units';

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
 * The inside value of a number that stands as text, with its unit or without: "118 lb", "28,5", "1 250". A unit goes
 * before the system. Undefined where it has a unit of something else, or may be two numbers: "3,322" where `comma`,
 * whether the spreadsheet writes a decimal comma, is not known, as in a cell function.
 */
export function textAmount(
  { quantity, unit }: { readonly quantity?: Quantity | undefined; readonly unit?: string | undefined },
  text: string,
  system: UnitSystem,
  comma?: boolean,
): number | undefined {
  const typed = textNumber(text, comma ?? false);
  if (!typed || 'either' in typed || (typed.byLocale && comma === undefined)) return undefined;
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
