/**
 * Units and the quantities that cells speak in. SI (kg, m, m², Ω/m, °C) and litres inside; conversion at the edge.
 *
 * All factors are exact definitions: international foot and pound (1959), US gallon of 231 cubic inches.
 */
export type UnitSystem = 'US' | 'metric';

export interface Unit {
  readonly symbol: string;
  /** Inside value = cell value × factor + offset. */
  readonly factor: number;
  readonly offset: number;
}

const FOOT_METERS = 0.3048;
const INCH_METERS = FOOT_METERS / 12;
const POUND_KG = 0.45359237;
const ACRE_SQUARE_METERS = 4046.8564224;
const HECTARE_SQUARE_METERS = 10_000;
const US_GALLON_LITERS = 3.785411784;

/** One US mile in metres, for rules stated per mile. */
export const MILE_METERS = 1609.344;

function unit(symbol: string, factor: number, offset = 0): Unit {
  return { symbol, factor, offset };
}

/** What a cell value measures, and the unit it stands in under each system. */
export const QUANTITIES = {
  /** Fence lines, paddock sides, rods. */
  length: { US: unit('ft', FOOT_METERS), metric: unit('m', 1) },
  /** Wire heights. */
  height: { US: unit('in', INCH_METERS), metric: unit('cm', 0.01) },
  /** Wire thickness. */
  diameter: { US: unit('in', INCH_METERS), metric: unit('mm', 0.001) },
  mass: { US: unit('lb', POUND_KG), metric: unit('kg', 1) },
  massPerDay: { US: unit('lb/day', POUND_KG), metric: unit('kg/day', 1) },
  area: { US: unit('ac', ACRE_SQUARE_METERS), metric: unit('ha', HECTARE_SQUARE_METERS) },
  /** Pens and shelters. */
  floorArea: { US: unit('ft²', FOOT_METERS * FOOT_METERS), metric: unit('m²', 1) },
  volumePerDay: { US: unit('gal/day', US_GALLON_LITERS), metric: unit('L/day', 1) },
  temperature: { US: unit('°F', 5 / 9, -160 / 9), metric: unit('°C', 1) },
  massPerArea: {
    US: unit('lb/ac', POUND_KG / ACRE_SQUARE_METERS),
    metric: unit('kg/ha', 1 / HECTARE_SQUARE_METERS),
  },
  /** Load of a stay: liveweight × days on each unit of area. */
  loadPerArea: {
    US: unit('lb·days/ac', POUND_KG / ACRE_SQUARE_METERS),
    metric: unit('kg·days/ha', 1 / HECTARE_SQUARE_METERS),
  },
  ohmsPerLength: { US: unit('Ω per 1000 ft', 1 / (1000 * FOOT_METERS)), metric: unit('Ω per km', 0.001) },
} as const satisfies Record<string, Record<UnitSystem, Unit>>;

export type Quantity = keyof typeof QUANTITIES;

/** Cell value to inside value. */
export function toInside(value: number, quantity: Quantity, system: UnitSystem): number {
  const { factor, offset } = QUANTITIES[quantity][system];
  return value * factor + offset;
}

/** Inside value to cell value. */
export function fromInside(value: number, quantity: Quantity, system: UnitSystem): number {
  const { factor, offset } = QUANTITIES[quantity][system];
  return (value - offset) / factor;
}

/** Unit symbol of a quantity under a system, for example "ft". */
export function symbolOf(quantity: Quantity, system: UnitSystem): string {
  return QUANTITIES[quantity][system].symbol;
}
