/** Words of a farm's own sheet: headings, names and remarks. Invented, from no list that the readers use. */
import fc from 'fast-check';

/** Names that spreadsheets, pages and criteria would like to read as something else. */
const ODD_NAMES = [
  '=SUM(A1:A9)',
  '=HYPERLINK("http://example.com";"x")',
  '+49 30 1234',
  '-2 below',
  '@home',
  "'quoted",
  "O'Brien's",
  'the "long" one',
  '🐖 wallow',
  'two\nlines',
  '<b>bold</b>',
  '<img src=x onerror=alert(1)>',
  '12',
  '007',
  '2026-05-01',
  '50%',
  '1/2',
  'TRUE',
  '>5',
  '<>North',
  'a*b?',
  '~tilde',
  '* star',
  'Straße',
  'مرعى الشمال',
  'שדה צפוני',
  '‏ימין',
  'ﬁeld',
  'e\u0301tang',
  'North field',
  'Pasture by the creek',
  'Red mob',
  'Total eclipse',
  'Summer',
  'No 1, by the creek',
  'A1',
  'R1C1',
  '#1',
  '{1;2}',
  '[label](http://example.com)',
  'back\\slash',
  '  spaces around  ',
  'tab\there',
];

const LETTERS =
  'abcdefghijklmnopqrstuvwxyzäöüéñçøåABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 -_.,;:!?&%$€/()*+=<>"\'`~#@|^{}[]';
const free = fc
  .array(fc.constantFrom(...LETTERS), { minLength: 1, maxLength: 14 })
  .map((parts) => parts.join(''))
  .filter((text) => /[a-z]/i.test(text) && !/^\s*(total|sum|average|avg|mean|count|subtotal)\b/i.test(text));
export const anyName = fc.oneof(
  {
    weight: 3,
    arbitrary: fc.constantFrom('North', 'South', 'Oak', 'Hill', 'Creek', 'West end', 'Orchard', 'Lane 4'),
  },
  { weight: 4, arbitrary: fc.constantFrom(...ODD_NAMES) },
  { weight: 3, arbitrary: free },
  { weight: 1, arbitrary: fc.constant('x'.repeat(240)) },
);

/** What makes two names one: letter case and white space do not count. */
export function sameName(name: string): string {
  return name.trim().replace(/\s+/g, ' ').toLowerCase();
}

/** As many different names as asked for, the first ones odd, later ones made different by a number. */
export function differentNames(names: readonly string[], count: number): string[] {
  const seen = new Set<string>();
  return Array.from({ length: count }, (_, i) => {
    let name = names[i % names.length]!;
    while (seen.has(sameName(name))) name = `${name} ${i + 1}`;
    seen.add(sameName(name));
    return name;
  });
}

export const HEADINGS = {
  paddock: ['Paddock', 'Paddock name', 'Field', 'Pasture', 'Paddock no.', 'Name of paddock', 'Plot'],
  area: ['Area', 'Size', 'Paddock size', 'Surface', 'Paddock area'],
  width: ['Width', 'Short side'],
  length: ['Length', 'Long side'],
  openFrom: ['Open from', 'Opens', 'Available from', 'Not before', 'Usable from'],
  openUntil: ['Open until', 'Closes', 'Available until', 'Not after'],
  lastUsed: ['Last used', 'Last grazed', 'Last use', 'Pigs left', 'Empty since'],
  rest: ['Rest (days)', 'Rest needed', 'Own rest', 'Minimum rest', 'Rest days'],
  adjoining: ['Adjoining', 'Next to', 'Neighbours', 'Adjoining paddocks', 'Borders'],
  fence: ['Fence length', 'Fence line', 'Perimeter'],
  group: ['Group', 'Herd', 'Mob', 'Batch', 'Group name', 'Pig group'],
  head: ['Head', 'Pigs', 'No. of pigs', 'Head count', 'Number of animals'],
  weight: ['Weight', 'Avg weight', 'Average weight', 'Live weight', 'Pig weight'],
  weighedOn: ['Weighed on', 'Date weighed', 'Weigh date', 'Last weighed'],
  gain: ['Daily gain', 'ADG', 'Gain per day', 'Average daily gain'],
  from: ['In the rotation from', 'On pasture from', 'Joins on', 'Start date'],
  until: ['Until', 'Leaves on', 'Ship date', 'Off pasture'],
} as const;

/** Columns of no concern to us, with what may stand in them. `=` is a live formula of the grower's own. */
export const OTHER_HEADINGS = ['Remarks', 'Soil', 'Trees', 'Breed', 'Ear tags', 'Owner', 'Map sheet'];
export const OTHER_CELLS = [
  '',
  '',
  'stony, total mess',
  'clay',
  '=ROW()*2',
  '=1+1',
  7.25,
  true,
  'see A1',
  '3–4 oaks',
] as const;

export const CASES: readonly ((text: string) => string)[] = [
  (text) => text,
  (text) => text.toUpperCase(),
  (text) => text.toLowerCase(),
  (text) => ` ${text} `,
];
/** A unit behind a heading, as growers write it. */
export const UNIT_FORMS: readonly ((text: string, unit: string) => string)[] = [
  (text, unit) => `${text} (${unit})`,
  (text, unit) => `${text} [${unit}]`,
  (text, unit) => `${text}, ${unit}`,
  (text, unit) => `${text} ${unit}`,
  (text, unit) => `${text}\n(${unit})`,
];
