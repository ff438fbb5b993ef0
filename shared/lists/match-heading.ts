import { FIELD_QUANTITIES, GROUP_WORDS, PADDOCK_WORDS } from './headings';
import { LIST_UNITS, type ListUnit, unitOfText } from './list-units';
import type { GroupField, ListKind, PaddockField } from './model';

export interface HeadingMatch {
  readonly kind: ListKind;
  readonly field: PaddockField | GroupField;
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

/** Everything that a heading may mean, surest first, at most one field of each kind. */
export function matchHeading(text: string): readonly HeadingMatch[] {
  if (text.length > LONGEST_HEADING || text.trim() === '') return [];
  const parts = text.toLowerCase().match(PLAIN_PARTS);
  if (!parts?.some((part) => VOCABULARY.has(part))) return [];
  const { words, whole, unit } = takeApart(text);
  return (['paddocks', 'groups'] as const).flatMap((kind) => {
    // "First day" is no "first" in days: the whole heading is tried first.
    const exact = bestField(kind, whole);
    const match = exact?.strength === 2 ? exact : bestField(kind, words);
    if (!match) return [];
    const wanted = FIELD_QUANTITIES[match.field];
    const fits = unit !== undefined && wanted !== undefined && fitting(unit, wanted);
    return [fits ? { kind, ...match, unit: fits } : { kind, ...match }];
  });
}

/** A gain in "lb" or "kg" is meant a day. */
function fitting(unit: ListUnit, wanted: string): ListUnit | undefined {
  if (LIST_UNITS[unit].quantity === wanted) return unit;
  if (wanted === 'massPerDay' && (unit === 'lb' || unit === 'kg')) return `${unit}/day`;
  return undefined;
}

/** Words without brackets and punctuation, and the unit named in brackets, after a comma, at the end or alone. */
function takeApart(text: string): { words: string; whole: string; unit: ListUnit | undefined } {
  const bracket = /[([{]([^)\]}]*)[)\]}]/.exec(text)?.[1];
  const bare = text.replace(/[([{][^)\]}]*[)\]}]?/g, ' ');
  const whole = plainWords(bare);
  const unit =
    (bracket && unitOfText(bracket)) || unitOfText(whole) || trailingUnit(bare) || unitOfEach(whole);
  const words = unit && !bracket ? withoutTrailing(whole, unit) : whole;
  return { words, whole, unit };
}

function plainWords(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}²]+/gu, ' ')
    .trim();
}

/** "lbs each" names its unit first. */
function unitOfEach(words: string): ListUnit | undefined {
  return words.endsWith(' each') ? unitOfText(words.slice(0, -' each'.length)) : undefined;
}

function trailingUnit(text: string): ListUnit | undefined {
  const parts = text.trim().split(/[\s,:]+/);
  for (const count of [3, 2, 1]) {
    if (parts.length <= count) continue;
    const unit = unitOfText(parts.slice(-count).join(' '));
    if (unit) return unit;
  }
  return undefined;
}

function withoutTrailing(words: string, unit: ListUnit): string {
  for (const word of LIST_UNITS[unit].words) {
    const end = ` ${plainWords(word)}`;
    if (words.endsWith(end)) return words.slice(0, -end.length);
  }
  return words;
}

function bestField(kind: ListKind, words: string) {
  let best: { field: PaddockField | GroupField; strength: number } | undefined;
  let longest = 0;
  for (const entry of ENTRIES) {
    if (entry.kind !== kind) continue;
    for (const phrase of entry.words) {
      if (phrase === words) return { field: entry.field, strength: 2 };
      // "Area of paddock" is an area: what says only whose column it is comes last.
      const weight = phrase.length - (entry.field === 'name' ? LONGEST_HEADING : 0);
      if (contains(words, phrase) && (!best || weight > longest)) {
        best = { field: entry.field, strength: 1 };
        longest = weight;
      }
    }
  }
  return best;
}

/** Short words ("to", "in", "no") say something only when they stand alone. */
const SHORTEST_PART = 4;

function contains(words: string, phrase: string): boolean {
  return phrase.length >= SHORTEST_PART && ` ${words} `.includes(` ${phrase} `);
}
