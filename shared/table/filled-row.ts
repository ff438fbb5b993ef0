import { isoFromDay } from '../core/calendar/day';
import { nameKey } from '../lists/read-list-cell';
import type { PlanGroup, PlanPaddock } from '../plan/model';
import type { LookedUp, PastRow } from './model';

interface Lists {
  readonly groups: readonly PlanGroup[];
  readonly paddocks: readonly PlanPaddock[];
}

export interface Filled {
  readonly row: PastRow;
  /** "Reds, Oak 2026-04-13", where figures of the move were missing. */
  readonly move?: string;
  /** Names of it that are not in the lists. */
  readonly absent?: readonly string[];
  /** "area of Reds, Oak 2026-04-13", where the table's formula showed something else than the list says. */
  readonly corrected?: string;
}

const FIELDS: Readonly<Record<LookedUp, keyof PastRow>> = {
  head: 'head',
  startWeight: 'startWeightKg',
  growthDays: 'growthDays',
  dailyGain: 'dailyGainKg',
  area: 'areaSquareMeters',
};
const WORDS: Readonly<Record<LookedUp, string>> = {
  head: 'head',
  startWeight: 'weight',
  growthDays: 'days since the weighing',
  dailyGain: 'daily gain',
  area: 'area',
};
/** What units and rounding in a cell may make of a figure. */
const ROUNDING = 1e-6;

/**
 * A past move with head, weight and area: those that it was counted with, else, in a row that the grower added by
 * hand, what the lists say now. A figure that a formula looked up is what the list says: where columns of the list
 * have changed places the formula shows another column.
 */
export function filledRow(row: PastRow, { groups, paddocks }: Lists): Filled {
  const group = groups.find(({ name }) => nameKey(name) === nameKey(row.group));
  const paddock = paddocks.find(({ name }) => nameKey(name) === nameKey(row.paddock));
  const move = `${row.group}, ${row.paddock} ${isoFromDay(row.inDay)}`;
  const listed: Partial<PastRow> = { ...(group && figuresOf(group, row)), ...(paddock && groundOf(paddock)) };
  const wrong = row.lookups.filter((key) => isOther(row[FIELDS[key]], listed[FIELDS[key]]));
  const right = Object.fromEntries(wrong.map((key) => [FIELDS[key], listed[FIELDS[key]]]));
  const corrected =
    wrong.length > 0 ? { corrected: `${wrong.map((key) => WORDS[key]).join(', ')} of ${move}` } : {};
  const isWhole =
    row.head !== undefined && row.startWeightKg !== undefined && row.areaSquareMeters !== undefined;
  if (isWhole) return { row: { ...row, ...right }, ...corrected };
  return {
    row: { ...listed, ...row, ...right },
    move,
    absent: [...(group ? [] : [row.group]), ...(paddock ? [] : [row.paddock])],
    ...corrected,
  };
}

function isOther(shown: PastRow[keyof PastRow], listed: PastRow[keyof PastRow]): boolean {
  if (typeof listed !== 'number' || typeof shown !== 'number') return false;
  return Math.abs(shown - listed) > ROUNDING * Math.max(1, Math.abs(listed));
}

/** What was filled in, and what cannot be because a name is not in the lists, in one sentence each. */
export function filledNotes(filled: readonly Filled[]): string[] {
  const moves = filled.flatMap(({ move, absent }) =>
    move !== undefined && absent?.length === 0 ? [move] : [],
  );
  const taken: string[] =
    moves.length === 0
      ? []
      : [
          `Head, weight or area was missing in ${moves[0]}${andMore(moves.length - 1)} and is taken from the lists as they are now.`,
        ];
  const wrong = filled.flatMap(({ corrected }) => corrected ?? []);
  if (wrong.length > 0)
    taken.push(
      `Formulas of the table show another column of your lists (${wrong[0]}${andMore(wrong.length - 1)}): what the lists say is written instead. Have columns of a list changed places?`,
    );
  const names = [...new Set(filled.flatMap(({ absent }) => absent ?? []))];
  return [...taken, ...names.map((name) => absentNote(name, filled))];
}

function absentNote(name: string, filled: readonly Filled[]): string {
  const moves = filled.flatMap(({ move, absent }) =>
    move !== undefined && absent?.includes(name) ? [move] : [],
  );
  return `“${name}” is not in your lists, and head, weight or area is missing in ${moves[0]}${andMore(moves.length - 1)}. Where it has another name now, write that name into the table before you build it anew, or these figures stay blank.`;
}

function andMore(count: number): string {
  return count === 0 ? '' : ` and ${count} more ${count === 1 ? 'move' : 'moves'}`;
}

function figuresOf(group: PlanGroup, { inDay }: PastRow) {
  const { head, weightKg, weighedOn, dailyGainKg } = group;
  return {
    head,
    startWeightKg: weightKg,
    growthDays: Math.max(0, inDay - weighedOn),
    ...(dailyGainKg !== undefined && { dailyGainKg }),
  };
}

function groundOf({ areaSquareMeters, openFrom, openUntil }: PlanPaddock) {
  return {
    areaSquareMeters,
    ...(openFrom !== undefined && { openFrom }),
    ...(openUntil !== undefined && { openUntil }),
  };
}
