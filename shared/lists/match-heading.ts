import { type ListUnit, unitOfText } from '../units/unit-words';
import { headingUnit, withoutBrackets } from './heading-unit';
import { GROUP_WORDS, PADDOCK_WORDS } from './headings';
import type { GroupField, ListKind, PaddockField } from './model';
import { meansOther } from './other-meanings';
import { fold } from './text-day';

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
  const parts = fold(text).match(PLAIN_PARTS);
  if (!parts?.some((part) => VOCABULARY.has(part))) return [];
  const { words, whole } = takeApart(text);
  return (['paddocks', 'groups'] as const).flatMap((kind) => {
    // "First day" is no "first" in days: the whole heading is tried first.
    const exact = bestField(kind, whole);
    const match = exact?.strength === 2 ? exact : bestField(kind, words);
    if (!match) return [];
    const unit = headingUnit(text, match.field);
    return [unit ? { kind, ...match, unit } : { kind, ...match }];
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

function bestField(kind: ListKind, words: string) {
  let best: { field: PaddockField | GroupField; strength: number } | undefined;
  let longest = 0;
  for (const entry of ENTRIES) {
    if (entry.kind !== kind) continue;
    for (const phrase of entry.words) {
      if (phrase === words) return { field: entry.field, strength: 2 };
      // "Area of paddock" is an area: what says only whose column it is comes last.
      const weight = phrase.length - (entry.field === 'name' ? LONGEST_HEADING : 0);
      const isPart = entry.field !== 'paddock' && !ALONE.has(phrase) && contains(words, phrase);
      if (isPart && (!best || weight > longest)) {
        best = { field: entry.field, strength: 1 };
        longest = weight;
      }
    }
  }
  return best && !meansOther(best.field, words) ? best : undefined;
}

/** Words that say something only when nothing stands beside them: "birth date" is no weighing. */
const ALONE = new Set(['date', 'datum', 'fecha', 'dato']);

/** Short words ("to", "in", "no") say something only when they stand alone. */
const SHORTEST_PART = 4;

function contains(words: string, phrase: string): boolean {
  return phrase.length >= SHORTEST_PART && ` ${words} `.includes(` ${phrase} `);
}
