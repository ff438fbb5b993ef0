/** Which column of a row of headings is which field: by the words of the headings and by what stands below them. */
import type { TabContent } from '../contract';
import { LIST_UNITS, type ListUnit } from '../units/unit-words';
import { mayBeHeading } from './below-a-list';
import { fitOf, hasTwins, looksLike, namesRepeat } from './column-content';
import type { Heading } from './headings-at';
import { type HeadingMatch, matchHeading, plainWords } from './match-heading';
import type { Doubt, GroupField, ListKind, PaddockField } from './model';
import { meansOther } from './other-meanings';
import { yearIn } from './year-in';

type Field = PaddockField | GroupField;

/** A heading with everything that it may stand for. */
export interface ClaimedHeading extends Heading {
  readonly matches: readonly HeadingMatch[];
  /** The same, weighed against what stands in the column. */
  readonly claims: readonly Claim[];
}

interface Claim extends HeadingMatch {
  readonly score: number;
}

export interface Taken {
  readonly column: number;
  readonly text: string;
  readonly strength: number;
  readonly score: number;
  readonly unit?: ListUnit;
}

export interface ChosenColumns {
  readonly taken: ReadonlyMap<Field, Taken>;
  readonly doubts: readonly Doubt[];
}

/** What a column speaks for, beside the strength of its heading's words, in the same measure. Judgement. */
const OF_CONTENT = { fits: 0.2, open: 0, contradicts: -1.6 } as const;
const HAS_UNIT = 0.2;
/** Without names there is no list. */
const IS_NEEDED = 0.05;
/** A heading that may stand for two fields comes after one that stands for one. */
const SHARED = 0.1;
/** "Since" right beside the paddock is the day that the pigs came there. */
const BESIDE_PADDOCK = 0.3;
/** A column known by what stands in it hardly counts, so that one known by its heading is never given up for it. */
export const GUESSED = 0.1;
/** Two columns that are so close are asked. Judgement. */
const CLOSE = 0.25;

/** The headings of a row, each with what its words and the cells below it speak for. */
export function claimedHeadings(
  tab: TabContent,
  row: number,
  headings: readonly Heading[],
  today?: number,
): readonly ClaimedHeading[] {
  const isOfList = !(tab.values[row - 1] ?? []).some((cell) => !mayBeHeading(cell));
  const matched = inPairs(
    headings.map((heading) => {
      const matches = matchHeading(heading.text);
      const more = isOfList ? matchesOfContent(matches, tab, row, heading.column) : [];
      return { ...heading, matches: [...matches, ...more] };
    }),
  );
  return matched.map((heading, i) => {
    const before = matched[i - 1];
    const isBeside =
      before?.column === heading.column - 1 && before.matches.some(({ field }) => field === 'paddock');
    const claims = heading.matches.flatMap((match): Claim[] => {
      const rivals = heading.matches.filter(({ kind }) => kind === match.kind);
      if (match.field === 'since' && rivals.length > 1 && !isBeside) return [];
      // Every paddock has a name of its own: what comes again is said of several.
      const isSaidOfSeveral =
        match.field === 'name' && match.kind === 'paddocks' && hasTwins(tab, row, heading.column);
      // A day to come speaks against "last used" only where the heading may mean something else.
      const fit = isSaidOfSeveral
        ? 'open'
        : fitOf(match.field, tab, row, heading.column, rivals.length > 1 ? today : undefined);
      const score =
        match.strength +
        OF_CONTENT[fit] +
        (match.unit ? HAS_UNIT : 0) +
        (NEEDED.has(match.field) ? IS_NEEDED : 0) +
        (match.field === 'since' && isBeside ? BESIDE_PADDOCK : 0) -
        SHARED * (rivals.length - 1);
      const isSure = match.strength >= EXACT && rivals.length === 1 && match.field !== 'fenceLength';
      return isSure || NEEDED.has(match.field) || fit !== 'contradicts' ? [{ ...match, score }] : [];
    });
    return { ...heading, claims };
  });
}

/**
 * "Pigs" over names of groups heads the names, not how many there are; areas with their unit are areas whatever stands above
 * them. Feed is weighed too: weights tell nothing.
 */
function matchesOfContent(
  matches: readonly HeadingMatch[],
  tab: TabContent,
  row: number,
  column: number,
): HeadingMatch[] {
  const isHead = matches.some(({ field, strength }) => field === 'head' && strength >= EXACT);
  const isNamed = matches.some(({ kind, field }) => kind === 'groups' && field === 'name');
  if (isHead && !isNamed && looksLike('name', tab, row, column))
    return [{ kind: 'groups', field: 'name', strength: EXACT + CLOSE }];
  return matches.length === 0 && looksLike('area', tab, row, column)
    ? [{ kind: 'paddocks', field: 'area', strength: 1 }]
    : [];
}

type MatchedHeading = Pick<ClaimedHeading, 'column' | 'text' | 'matches'>;

/** Where one heading is "closed from", "until" beside it or "closed until" ends that time; else they say when it opens or closes. */
function inPairs(headings: readonly MatchedHeading[]): readonly MatchedHeading[] {
  const isOf = (field: Field, { matches }: MatchedHeading): boolean =>
    matches.some((match) => match.field === field);
  const ends = headings.filter((heading) => isOf('shutUntil', heading));
  const first = headings.find((heading) => isOf('shutFrom', heading));
  const beside = ends.find(({ column }) => column - 1 === first?.column);
  const second = first && (beside ?? ends.find((heading) => isOf('openFrom', heading)));
  return headings.map((heading) => {
    const gone: readonly Field[] = heading === second ? ['openFrom', 'openUntil'] : ['shutUntil'];
    return { ...heading, matches: heading.matches.filter(({ field }) => !gone.includes(field)) };
  });
}

/** The heading is a word of the field and nothing else. */
const EXACT = 2;
/**
 * A column that must be there, or whose heading says what it is, is taken whatever stands in it, so that what is wrong there
 * is told. "Fence" may say what kind.
 */
const NEEDED: ReadonlySet<Field> = new Set(['name', 'area', 'head', 'weight']);

/** The columns of a list among the headings, and which of them were a close choice. */
export function chooseColumns(
  kind: ListKind,
  tab: TabContent,
  row: number,
  headings: readonly ClaimedHeading[],
  { isPointed = false, today }: { readonly isPointed?: boolean; readonly today?: number | undefined } = {},
): ChosenColumns {
  const claims = headings
    .flatMap(({ column, text, claims }) =>
      claims.filter((claim) => claim.kind === kind).map((claim) => ({ ...claim, column, text })),
    )
    .sort(
      (a, b) =>
        b.score - a.score ||
        yearIn(b.text) - yearIn(a.text) ||
        a.column - b.column ||
        // "Nombre" over numbers is how many there are: any number may be a name, but no name is a number.
        Number(a.field === 'name') - Number(b.field === 'name'),
    );
  const strongest = take(claims);
  // Since when, without where, says nothing: the column may say something else.
  const isIdle = strongest.has('since') && !strongest.has('paddock');
  const taken = isIdle ? take(claims.filter(({ field }) => field !== 'since')) : strongest;
  const used = new Set([...taken.values()].map(({ column }) => column));
  const doubts = claims.flatMap((claim): Doubt[] => {
    const first = taken.get(claim.field);
    const isRival = first && !used.has(claim.column) && claim.score > first.score - CLOSE;
    if (!isRival || claim.field === 'name' || !isAsked(first, claim)) return [];
    return fitOf(claim.field, tab, row, claim.column, today) === 'fits'
      ? [{ field: claim.field, column: first.column, other: claim.column }]
      : [];
  });
  takeByContent(kind, tab, row, headings, { taken, used, isPointed, today });
  return { taken, doubts };
}

/** The strongest claim of each field on a column of its own. */
function take(claims: readonly (Taken & { readonly field: Field })[]): Map<Field, Taken> {
  const taken = new Map<Field, Taken>();
  const used = new Set<number>();
  for (const claim of claims) {
    if (taken.has(claim.field) || used.has(claim.column)) continue;
    taken.set(claim.field, claim);
    used.add(claim.column);
  }
  return taken;
}

/** The later of two seasons is meant, and the same amount in two units is one. */
function isAsked(first: Pick<Taken, 'text' | 'unit'>, other: Pick<Taken, 'text' | 'unit'>): boolean {
  if (yearIn(first.text) !== yearIn(other.text)) return false;
  return !first.unit || !other.unit || first.unit === other.unit;
}

/** Fields that what stands in a column may tell, and what the words must have told before. */
const BY_CONTENT: Readonly<
  Record<ListKind, readonly { field: Field; after: readonly (readonly Field[])[] }[]>
> = {
  paddocks: [
    { field: 'name', after: [['area'], ['width', 'length']] },
    { field: 'area', after: [['name']] },
  ],
  groups: [
    {
      field: 'name',
      after: [
        ['head', 'weight'],
        ['weight', 'weighedOn'],
        ['head', 'weighedOn'],
      ],
    },
    { field: 'weight', after: [['name']] },
    { field: 'head', after: [['name', 'weight']] },
    { field: 'weighedOn', after: [['name', 'weight']] },
  ],
};

interface SoFar {
  readonly taken: Map<Field, Taken>;
  readonly used: Set<number>;
  readonly isPointed: boolean;
  readonly today: number | undefined;
}

/** Adds the first column of unknown heading that looks like a field which the words did not tell. */
function takeByContent(
  kind: ListKind,
  tab: TabContent,
  row: number,
  headings: readonly ClaimedHeading[],
  { taken, used, isPointed, today }: SoFar,
): void {
  for (const { field, after } of BY_CONTENT[kind]) {
    const isKnown = isPointed || after.some((fields) => fields.every((one) => taken.has(one)));
    const hasSides = field === 'area' && taken.has('width') && taken.has('length');
    const isNameOfLog = (column: number): boolean =>
      field === 'name' && taken.has('weight') && taken.has('weighedOn') && namesRepeat(tab, row, column);
    if (!isKnown || taken.has(field) || hasSides) continue;
    // Names without a heading that says so stand before what is known of them.
    const first = Math.min(...used);
    const found = headings.find(
      ({ column, claims, text }) =>
        !used.has(column) &&
        !claims.some((one) => one.kind === kind) &&
        (isPointed || claims.length === 0) &&
        !meansOther(field, plainWords(text)) &&
        (isNameOfLog(column) ||
          ((isPointed || field !== 'name' || column < first) && looksLike(field, tab, row, column, today))),
    );
    if (!found) continue;
    taken.set(field, { column: found.column, text: found.text, strength: GUESSED, score: GUESSED });
    used.add(found.column);
  }
}

/** The units that the headings name. */
export function unitsOf(taken: ReadonlyMap<Field, Taken>): Record<string, ListUnit> {
  return Object.fromEntries(
    [...taken].flatMap(([field, { unit }]) => (unit && unit in LIST_UNITS ? [[field, unit]] : [])),
  );
}
