/** On which days pigs may stand in a paddock. */
import type { Day } from '../core/calendar/day';
import type { PlanPaddock } from './model';

/** Fields of a paddock that say when it is open. */
export const OPEN_DAYS = ['openFrom', 'openUntil', 'shutFrom', 'shutUntil'] as const;

/** Whether pigs may stand there on a day. */
export function isOpen(paddock: PlanPaddock, day: Day): boolean {
  const { openFrom = day, openUntil = day } = paddock;
  return openFrom <= day && day <= openUntil && !isShut(paddock, day, day);
}

/** The first day after one on which pigs stand there that it is not open any more. */
export function closesAfter(paddock: PlanPaddock, day: Day): Day {
  const { openUntil = Infinity, shutFrom = -Infinity } = paddock;
  const shuts = isShut(paddock, day, Infinity) ? Math.max(day, shutFrom) : Infinity;
  return Math.min(openUntil + 1, shuts);
}

/** Whether the days in which it is shut share any with `from` to `until`. */
function isShut({ shutFrom, shutUntil }: PlanPaddock, from: Day, until: Day): boolean {
  if (shutFrom === undefined && shutUntil === undefined) return false;
  return (shutFrom ?? -Infinity) <= until && from <= (shutUntil ?? Infinity);
}
