/** Units that growers write into headings or behind numbers, and what they come to inside. */
import { QUANTITIES, type UnitSystem } from '../units/units';

export type ListQuantity = 'area' | 'length' | 'mass' | 'massPerDay' | 'time';

interface UnitWords {
  readonly quantity: ListQuantity;
  /** Inside value (m², m, kg, kg/day, days) = cell value × factor. */
  readonly factor: number;
  readonly words: readonly string[];
  readonly system?: UnitSystem;
}

/** An international yard is 3 ft (definition). */
const FEET_PER_YARD = 3;
const GRAMS_PER_KG = 1000;
const DAYS_PER_WEEK = 7;
const { area, floorArea, length, mass, massPerDay } = QUANTITIES;

export const LIST_UNITS = {
  ac: { quantity: 'area', factor: area.US.factor, words: ['ac', 'acs', 'acre', 'acres'], system: 'US' },
  ha: {
    quantity: 'area',
    factor: area.metric.factor,
    words: ['ha', 'has', 'hectare', 'hectares'],
    system: 'metric',
  },
  'm²': {
    quantity: 'area',
    factor: floorArea.metric.factor,
    words: [
      'm²',
      'm2',
      'm^2',
      'sqm',
      'sq m',
      'square metres',
      'square meters',
      'square metre',
      'square meter',
    ],
    system: 'metric',
  },
  'ft²': {
    quantity: 'area',
    factor: floorArea.US.factor,
    words: ['ft²', 'ft2', 'ft^2', 'sqft', 'sq ft', 'square feet', 'square foot'],
    system: 'US',
  },
  ft: { quantity: 'length', factor: length.US.factor, words: ['ft', 'feet', 'foot'], system: 'US' },
  yd: {
    quantity: 'length',
    factor: length.US.factor * FEET_PER_YARD,
    words: ['yd', 'yds', 'yard', 'yards'],
    system: 'US',
  },
  m: {
    quantity: 'length',
    factor: length.metric.factor,
    words: ['m', 'metre', 'metres', 'meter', 'meters'],
    system: 'metric',
  },
  lb: { quantity: 'mass', factor: mass.US.factor, words: ['lb', 'lbs', 'pound', 'pounds'], system: 'US' },
  kg: {
    quantity: 'mass',
    factor: mass.metric.factor,
    words: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'],
    system: 'metric',
  },
  'lb/day': {
    quantity: 'massPerDay',
    factor: massPerDay.US.factor,
    words: ['lb/day', 'lbs/day', 'lb/d', 'lbs/d', 'lb per day', 'lbs per day', 'lb a day', 'pounds a day'],
    system: 'US',
  },
  'kg/day': {
    quantity: 'massPerDay',
    factor: massPerDay.metric.factor,
    words: ['kg/day', 'kg/d', 'kg per day', 'kg a day'],
    system: 'metric',
  },
  'g/day': {
    quantity: 'massPerDay',
    factor: massPerDay.metric.factor / GRAMS_PER_KG,
    words: ['g/day', 'g/d', 'g per day', 'grams per day', 'g a day'],
    system: 'metric',
  },
  days: { quantity: 'time', factor: 1, words: ['d', 'day', 'days'] },
  weeks: { quantity: 'time', factor: DAYS_PER_WEEK, words: ['wk', 'wks', 'week', 'weeks'] },
} as const satisfies Record<string, UnitWords>;

export type ListUnit = keyof typeof LIST_UNITS;

const BY_WORD = new Map<string, ListUnit>(
  (Object.keys(LIST_UNITS) as ListUnit[]).flatMap((unit) =>
    LIST_UNITS[unit].words.map((word): [string, ListUnit] => [word, unit]),
  ),
);

/** The unit that some text names, any letter case, full stops ignored; undefined where it names none. */
export function unitOfText(text: string): ListUnit | undefined {
  return BY_WORD.get(text.toLowerCase().replace(/\./g, '').replace(/\s+/g, ' ').trim());
}

/** The farm's unit for a quantity where nothing else is said. */
export function farmUnit(quantity: ListQuantity, system: UnitSystem): ListUnit {
  const US = { area: 'ac', length: 'ft', mass: 'lb', massPerDay: 'lb/day', time: 'days' } as const;
  const metric = { area: 'ha', length: 'm', mass: 'kg', massPerDay: 'kg/day', time: 'days' } as const;
  return (system === 'US' ? US : metric)[quantity];
}

/** The system a unit belongs to; undefined for days and weeks. */
export function systemOfUnit(unit: ListUnit): UnitSystem | undefined {
  const words: UnitWords = LIST_UNITS[unit];
  return words.system;
}
