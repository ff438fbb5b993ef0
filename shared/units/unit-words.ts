/** Units that growers write into headings or behind numbers, and what they come to inside. */
import { MILE_METERS, QUANTITIES, type UnitSystem } from './units';

export type ListQuantity = 'area' | 'length' | 'mass' | 'massPerDay' | 'time';

interface UnitWords {
  readonly quantity: ListQuantity;
  /** Inside value (m², m, kg, kg/day, days) = cell value × factor. */
  readonly factor: number;
  readonly words: readonly string[];
  /** Words that mean other things too: a unit only in brackets, after a comma, or behind a number. */
  readonly markedWords?: readonly string[];
  readonly system?: UnitSystem;
}

/** Definitions: international yard and pound (1959); stone of 14 lb (UK Weights and Measures Act 1985); are, metric. */
const FEET_PER_YARD = 3;
const OUNCES_PER_POUND = 16;
const POUNDS_PER_STONE = 14;
const GRAMS_PER_KG = 1000;
const KG_PER_TONNE = 1000;
const METERS_PER_KM = 1000;
const SQUARE_METERS_PER_ARE = 100;
/** The metric dunam, which is also the decare and the stremma; older dunams were of other sizes. */
const SQUARE_METERS_PER_DUNAM = 1000;
const DAYS_PER_WEEK = 7;
const { area, floorArea, length, mass } = QUANTITIES;

const POUND = {
  factor: mass.US.factor,
  words: ['lb', 'lbs', 'pound', 'pounds'],
  markedWords: ['#'],
  system: 'US',
} as const;
const OUNCE = {
  factor: mass.US.factor / OUNCES_PER_POUND,
  words: ['oz', 'ounce', 'ounces'],
  system: 'US',
} as const;
const KILO = {
  factor: mass.metric.factor,
  words: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramm'],
  system: 'metric',
} as const;
const GRAM = {
  factor: mass.metric.factor / GRAMS_PER_KG,
  words: ['gram', 'grams', 'gramm', 'grammes', 'grammi', 'gramos', 'gramas', 'gm', 'gms'],
  markedWords: ['g', 'gr'],
  system: 'metric',
} as const;
const DAY = {
  factor: 1,
  words: ['d', 'day', 'days', 'tage', 'jours', 'dias', 'días', 'giorni', 'dagen', 'dagar', 'dage', 'dager'],
  markedWords: ['tag', 'jour', 'j', 'día', 'dia', 'giorno', 'dag', 'dygn', 'døgn'],
} as const;
const WEEK = { factor: DAYS_PER_WEEK, words: ['wk', 'wks', 'week', 'weeks'], markedWords: [] } as const;

/** A mass in a time: "lb/day"; unitOfText brings "lb per pig a day" into this form. */
function rate(one: Omit<UnitWords, 'quantity'>, time: typeof DAY | typeof WEEK): UnitWords {
  const masses = [...one.words, ...(one.markedWords ?? [])];
  return {
    ...(one.system && { system: one.system }),
    quantity: 'massPerDay',
    factor: one.factor / time.factor,
    words: masses.flatMap((word) => [...time.words, ...time.markedWords].map((per) => `${word}/${per}`)),
  };
}

export const LIST_UNITS = {
  ac: { quantity: 'area', factor: area.US.factor, words: ['ac', 'acs', 'acre', 'acres'], system: 'US' },
  ha: {
    quantity: 'area',
    factor: area.metric.factor,
    words: ['ha', 'has', 'hectare', 'hectares', 'hektar', 'hectáreas', 'hectareas', 'ettari', 'hectaren'],
    system: 'metric',
  },
  'm²': {
    quantity: 'area',
    factor: floorArea.metric.factor,
    words: [
      'm²',
      'm2',
      'm^2',
      'mq',
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
  'yd²': {
    quantity: 'area',
    factor: floorArea.US.factor * FEET_PER_YARD ** 2,
    words: ['yd²', 'yd2', 'yd^2', 'sqyd', 'sq yd', 'sq yds', 'square yards', 'square yard'],
    system: 'US',
  },
  are: {
    quantity: 'area',
    factor: SQUARE_METERS_PER_ARE,
    words: [],
    markedWords: ['a', 'ar', 'are', 'ares', 'aren'],
    system: 'metric',
  },
  dunam: {
    quantity: 'area',
    factor: SQUARE_METERS_PER_DUNAM,
    words: [
      'dunam',
      'dunams',
      'dunum',
      'dunums',
      'daa',
      'dekar',
      'decare',
      'decares',
      'stremma',
      'stremmata',
    ],
    system: 'metric',
  },
  ft: {
    quantity: 'length',
    factor: length.US.factor,
    words: ['ft', 'feet', 'foot'],
    markedWords: ["'", '’', '′'],
    system: 'US',
  },
  yd: {
    quantity: 'length',
    factor: length.US.factor * FEET_PER_YARD,
    words: ['yd', 'yds', 'yards'],
    markedWords: ['yard'],
    system: 'US',
  },
  mi: { quantity: 'length', factor: MILE_METERS, words: ['mi', 'mile', 'miles'], system: 'US' },
  m: {
    quantity: 'length',
    factor: length.metric.factor,
    words: ['m', 'metre', 'metres', 'meter', 'meters'],
    system: 'metric',
  },
  km: {
    quantity: 'length',
    factor: length.metric.factor * METERS_PER_KM,
    words: ['km', 'kilometre', 'kilometres', 'kilometer', 'kilometers'],
    system: 'metric',
  },
  lb: { quantity: 'mass', ...POUND },
  oz: { quantity: 'mass', ...OUNCE },
  st: {
    quantity: 'mass',
    factor: mass.US.factor * POUNDS_PER_STONE,
    words: [],
    markedWords: ['st', 'stone', 'stones'],
  },
  kg: { quantity: 'mass', ...KILO },
  g: { quantity: 'mass', ...GRAM },
  t: {
    quantity: 'mass',
    factor: mass.metric.factor * KG_PER_TONNE,
    words: ['tonne', 'tonnes'],
    markedWords: ['t'],
    system: 'metric',
  },
  'lb/day': rate(POUND, DAY),
  'oz/day': rate(OUNCE, DAY),
  'kg/day': rate(KILO, DAY),
  'g/day': rate(GRAM, DAY),
  'lb/week': rate(POUND, WEEK),
  'oz/week': rate(OUNCE, WEEK),
  'kg/week': rate(KILO, WEEK),
  'g/week': rate(GRAM, WEEK),
  days: { quantity: 'time', ...DAY },
  weeks: { quantity: 'time', ...WEEK },
} as const satisfies Record<string, UnitWords>;

export type ListUnit = keyof typeof LIST_UNITS;

const ALL = Object.entries(LIST_UNITS) as [ListUnit, UnitWords][];
/** Made when first asked for: the script is loaded for every formula, and few hold a unit as text. */
const BY_WORD = new Map<boolean, ReadonlyMap<string, ListUnit>>();

function unitsByWord(marked: boolean): ReadonlyMap<string, ListUnit> {
  const wordsOf = ({ words, markedWords = [] }: UnitWords) => (marked ? [...words, ...markedWords] : words);
  const made =
    BY_WORD.get(marked) ??
    new Map(ALL.flatMap(([unit, entry]) => wordsOf(entry).map((word): [string, ListUnit] => [word, unit])));
  BY_WORD.set(marked, made);
  return made;
}

/**
 * The unit that some text names, any letter case, full stops ignored; undefined where it names none. `marked`: the
 * text stands where units stand, in brackets or behind a number, so that "a" is an are.
 */
export function unitOfText(text: string, marked: boolean): ListUnit | undefined {
  const words = unitsByWord(marked);
  const plain = text.toLowerCase().replace(/\./g, '').replace(/\s+/g, ' ').trim();
  const unit = words.get(plain);
  if (unit) return unit;
  // Weights and gains are those of one pig: "lb each", "kg per pig a day".
  const short = plain
    .replace(/ (?:per|a|pro|je|par|por|al|om) | ?\/ ?/g, '/')
    .replace(/\/(?:pig|hog|head|hd|animal|tier|porc|cerdo|capo|porco|varken|gris)(?=\/|$)| each$/g, '');
  const ofOne = short === plain ? undefined : words.get(short);
  return ofOne && LIST_UNITS[ofOne].quantity.startsWith('mass') ? ofOne : undefined;
}

/** The farm's unit for a quantity where nothing else is said. */
export function farmUnit(quantity: ListQuantity, system: UnitSystem): ListUnit {
  const US = { area: 'ac', length: 'ft', mass: 'lb', massPerDay: 'lb/day', time: 'days' } as const;
  const metric = { area: 'ha', length: 'm', mass: 'kg', massPerDay: 'kg/day', time: 'days' } as const;
  return (system === 'US' ? US : metric)[quantity];
}

/** The system a unit belongs to; undefined for days, weeks and stones. */
export function systemOfUnit(unit: ListUnit): UnitSystem | undefined {
  const words: UnitWords = LIST_UNITS[unit];
  return words.system;
}
