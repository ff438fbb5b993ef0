import { LIST_UNITS, type ListUnit, unitOfText } from '../units/unit-words';
import { headingUnit, withoutBrackets } from './heading-unit';
import { GROUP_STEMS, GROUP_WORDS, OF_NOW, PADDOCK_STEMS, PADDOCK_WORDS } from './headings';
import type { GroupField, ListKind, PaddockField } from './model';
import { MEAN_WORDS, meansOther, WEIGHT_STEMS, weightSense } from './other-meanings';
import { fold } from './text-day';

type Field = PaddockField | GroupField;

export interface HeadingMatch {
  readonly kind: ListKind;
  readonly field: Field;
  /** 2: the heading is one of the words; 1: it contains them. */
  readonly strength: number;
  readonly unit?: ListUnit;
}

const LONGEST_HEADING = 60;
const PLAIN_PARTS = /[\p{L}\p{N}²]+/gu;

const ENTRIES = [
  ...Object.entries(PADDOCK_WORDS).map(([field, words]) => ({ kind: 'paddocks' as const, field, words })),
  ...Object.entries(GROUP_WORDS).map(([field, words]) => ({ kind: 'groups' as const, field, words })),
] as { kind: ListKind; field: PaddockField | GroupField; words: readonly string[] }[];

/** Every word that stands in a phrase: most cells of a sheet hold none and are passed over quickly. */
const VOCABULARY = new Set(ENTRIES.flatMap((entry) => entry.words.flatMap((phrase) => phrase.split(' '))));

const STEMS = [
  ...new Set(
    [PADDOCK_STEMS, GROUP_STEMS].flatMap((of) => Object.values(of).flat()).flatMap((one) => one.split(' ')),
  ),
  ...WEIGHT_STEMS,
  ...MEAN_WORDS.filter((word) => word.length > 1),
];

/** Everything that a heading may mean: of each kind every field of which it is a word, else the one whose words it holds. */
export function matchHeading(text: string): readonly HeadingMatch[] {
  if (text.length > LONGEST_HEADING || text.trim() === '') return [];
  const parts = fold(text).match(PLAIN_PARTS);
  const isKnown = (part: string): boolean =>
    VOCABULARY.has(part) || STEMS.some((stem) => part.startsWith(stem));
  const unit = unitOfText(withoutBrackets(text), false);
  if (!unit && !parts?.some(isKnown)) return [];
  const { words, whole } = takeApart(text);
  return (['paddocks', 'groups'] as const).flatMap((kind) => {
    // "First day" is no "first" in days: the whole heading is tried first.
    const exact = fieldsNamed(kind, whole);
    const held = exact.length > 0 ? exact : fieldsNamed(kind, words);
    const matches = held.length > 0 ? held : fieldHeld(kind, words, unit);
    return matches.map(({ field, strength }): HeadingMatch => {
      const named = headingUnit(text, field);
      return { kind, field, strength, ...(named && { unit: named }) };
    });
  });
}

/** The words without brackets and punctuation, and the same without a unit at their end. */
function takeApart(text: string): { words: string; whole: string } {
  const bare = withoutBrackets(text);
  const whole = plainWords(bare);
  const end = ` ${plainWords(trailingUnit(bare))}`;
  return { words: end !== ' ' && whole.endsWith(end) ? whole.slice(0, -end.length) : whole, whole };
}

/** Lower-case words without accents and punctuation. */
export function plainWords(text: string): string {
  return fold(text)
    .replace(/[^\p{L}\p{N}²]+/gu, ' ')
    .trim();
}

/** The unit at the end as it stands there, or nothing. */
function trailingUnit(text: string): string {
  const parts = text.trim().split(/[\s,:]+/);
  for (const count of [5, 4, 3, 2, 1]) {
    const end = parts.slice(-count).join(' ');
    if (parts.length > count && unitOfText(end, false)) return end;
  }
  return '';
}

interface FieldMatch {
  readonly field: Field;
  readonly strength: number;
}

/** The fields of which the heading is a word: "paddock now" is "paddock". */
function fieldsNamed(kind: ListKind, words: string): FieldMatch[] {
  const plain = words.split(' ');
  const bare = plain.filter((word) => !OF_NOW.has(word)).join(' ');
  const named = (phrase: string): FieldMatch[] =>
    ENTRIES.filter((entry) => entry.kind === kind && entry.words.includes(phrase)).map(({ field }) => ({
      field,
      strength: 2,
    }));
  const whole = kind === 'paddocks' && endsRest(words) ? [OPENS_AFTER_REST] : named(words);
  if (whole.length > 0 || bare === '' || bare === words) return whole;
  return named(bare).filter(({ field }) => field !== 'name');
}

const OPENS_AFTER_REST: FieldMatch = { field: 'openFrom', strength: 2 };

/** "Rest until" is the day on which a paddock opens again, not one on which it closes, nor how long it rests. */
function endsRest(words: string): boolean {
  const { restDays, shutUntil } = PADDOCK_WORDS;
  const rest = restDays.find(
    (word) => words.startsWith(`${word} `) && shutUntil.includes(words.slice(word.length + 1)),
  );
  return rest !== undefined;
}

/** The one field whose words the heading holds. */
function fieldHeld(kind: ListKind, words: string, unit: ListUnit | undefined): FieldMatch[] {
  const sense = kind === 'groups' ? weightSense(words) : undefined;
  if (sense === 'target') return [{ field: 'untilWeight', strength: 1 }];
  let best: FieldMatch | undefined;
  let longest = 0;
  for (const entry of ENTRIES) {
    if (entry.kind !== kind) continue;
    for (const phrase of entry.words) {
      // "Area of paddock" is an area: what says only whose column it is comes last.
      const weight = phrase.length - (entry.field === 'name' ? LONGEST_HEADING : 0);
      const isPart = entry.field !== 'paddock' && !ALONE.has(phrase) && contains(words, phrase);
      if (isPart && (!best || weight > longest)) {
        best = { field: entry.field, strength: 1 };
        longest = weight;
      }
    }
  }
  best = stemmed(kind, words, longest) ?? best;
  // "Avg kg", "Ø kg", "Dekar": the unit says what it is.
  const quantity = unit && LIST_UNITS[unit].quantity;
  if (!best && kind === 'groups' && (quantity === 'mass' || sense === 'mean'))
    best = { field: 'weight', strength: 1 };
  if (!best && kind === 'paddocks' && quantity === 'area') best = { field: 'area', strength: 2 };
  if (!best || meansOther(best.field, words)) return [];
  const shift = best.field === 'weight' && sense ? OF_SENSE[sense] : 0;
  return [{ ...best, strength: best.strength + shift }];
}

/** Of several weights, that of now is meant, and not the one at which they came. Judgement. */
const OF_SENSE = { now: 0.3, entry: -0.7, target: 0, mean: 0 } as const;

/** The field of which every beginning of a word stands in the heading. */
function stemmed(kind: ListKind, words: string, longest: number): FieldMatch | undefined {
  const parts = words.split(' ');
  const stems = Object.entries(kind === 'paddocks' ? PADDOCK_STEMS : GROUP_STEMS) as [
    Field,
    readonly string[],
  ][];
  const found = stems.find(([, ofField]) =>
    ofField.some(
      (one) =>
        one.length >= longest && one.split(' ').every((stem) => parts.some((part) => part.startsWith(stem))),
    ),
  );
  return found && { field: found[0], strength: 1 };
}

/** Words that say something only when nothing stands beside them: "birth date" is no weighing. */
const ALONE = new Set('date datum fecha data dato when week vecka woche kw semaine uge uke'.split(' '));

/** Short words ("to", "in", "no") say something only when they stand alone. */
const SHORTEST_PART = 4;

function contains(words: string, phrase: string): boolean {
  return phrase.length >= SHORTEST_PART && ` ${words} `.includes(` ${phrase} `);
}
