import { type Day, isoFromDay } from '../core/calendar/day';
import type { OldRow } from './model';

/** Judgement: a move this far from its planned day is a slip in the month or year rather than a late or early move. */
export const MOST_DAYS_FROM_PLAN = 60;

export interface MovedInSeason {
  readonly seasonStart: Day;
  readonly seasonEnd: Day;
}

type Move = Pick<OldRow, 'plannedIn' | 'movedIn'>;

/**
 * What a typed day moved in must be and is not, as the end of a sentence; undefined where it may stand. It must not
 * be after the season end, not more than 60 days from the day planned, and not before a day typed for a move above
 * that was planned no later. Days still to come are allowed: they are intentions. A planned day outside the season
 * only shows that a day above is wrong, and is not held against this one.
 *
 * `above`: moves of the same group that stand above and have no fault themselves.
 */
export function movedInFault(
  { plannedIn, movedIn }: Move,
  above: readonly Move[],
  { seasonStart, seasonEnd }: MovedInSeason,
): string | undefined {
  if (movedIn === undefined) return undefined;
  if (movedIn > seasonEnd) return `a day of this season, up to ${isoFromDay(seasonEnd)}`;
  if (plannedIn === undefined) return undefined;
  const isPlanInSeason = plannedIn >= seasonStart && plannedIn <= seasonEnd;
  if (isPlanInSeason && Math.abs(movedIn - plannedIn) > MOST_DAYS_FROM_PLAN)
    return `within ${MOST_DAYS_FROM_PLAN} days of the day planned, ${isoFromDay(plannedIn)}`;
  const days = above
    .filter((move) => move.plannedIn !== undefined && move.plannedIn <= plannedIn)
    .flatMap((move) => move.movedIn ?? []);
  const latest = Math.max(-Infinity, ...days);
  if (movedIn >= latest) return undefined;
  return `no earlier than the group's move above, ${isoFromDay(latest)}`;
}
