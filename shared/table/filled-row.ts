import { isoFromDay } from '../core/calendar/day';
import { nameKey } from '../lists/read-list-cell';
import type { PlanGroup, PlanPaddock } from '../plan/model';
import type { PastRow } from './model';

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
}

/**
 * A past move with head, weight and area: those that it was counted with, else, in a row that the grower added by
 * hand, what the lists say now.
 */
export function filledRow(row: PastRow, { groups, paddocks }: Lists): Filled {
  const isWhole =
    row.head !== undefined && row.startWeightKg !== undefined && row.areaSquareMeters !== undefined;
  if (isWhole) return { row };
  const group = groups.find(({ name }) => nameKey(name) === nameKey(row.group));
  const paddock = paddocks.find(({ name }) => nameKey(name) === nameKey(row.paddock));
  return {
    row: { ...(group && figuresOf(group, row)), ...(paddock && groundOf(paddock)), ...row },
    move: `${row.group}, ${row.paddock} ${isoFromDay(row.inDay)}`,
    absent: [...(group ? [] : [row.group]), ...(paddock ? [] : [row.paddock])],
  };
}

/** What was filled in, and what cannot be because a name is not in the lists, in one sentence each. */
export function filledNotes(filled: readonly Filled[]): string[] {
  const moves = filled.flatMap(({ move, absent }) =>
    move !== undefined && absent?.length === 0 ? [move] : [],
  );
  const taken =
    moves.length === 0
      ? []
      : [
          `Head, weight or area was missing in ${moves[0]}${andMore(moves.length - 1)} and is taken from the lists as they are now.`,
        ];
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
