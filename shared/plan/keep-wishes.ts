import { groupSpan } from './group-span';
import type { PlanProblem, Wish } from './model';

/** The ranges of stays of a GroupTable. */
interface Ranges {
  readonly outs: Int32Array;
  readonly firstOut: Int32Array;
  readonly afterOut: Int32Array;
}

/** Takes the stays that a wish forbids out of the ranges of group `g`: its own wishes and those of others. */
export function keepWishes(problem: PlanProblem, g: number, days: number, ranges: Ranges): void {
  for (const wish of problem.wishes ?? []) {
    const day = wish.day - problem.rules.seasonStart;
    // Days of the stay that a group is in already: see wishedOuts.
    if (day < 0) continue;
    if (wish.group === g) keepOwn(problem, wish, day, days, ranges);
    else if (wish.paddock !== undefined) {
      // Nobody else stands there on that day.
      const from = wish.paddock * (days + 1);
      endBy(ranges, from, day);
      ranges.afterOut[from + day] = 0;
    }
  }
}

/** Whether the stay in which group `g` already stands may end on a day. */
export function wishedOuts(
  { wishes = [] }: PlanProblem,
  g: number,
  since: number,
  paddock: number,
): (out: number) => boolean {
  const isKept = (wish: Wish, out: number): boolean => {
    if (wish.group !== g) return wish.paddock !== paddock || out <= wish.day || wish.day < since;
    if (wish.day > since) return out <= wish.day;
    return wish.days === undefined || out === wish.day + wish.days;
  };
  return (out) => wishes.every((wish) => isKept(wish, out));
}

function keepOwn({ paddocks }: PlanProblem, wish: Wish, day: number, days: number, ranges: Ranges): void {
  const { outs, firstOut, afterOut } = ranges;
  for (const p of paddocks.keys()) {
    const from = p * (days + 1);
    endBy(ranges, from, day);
    const stay = from + day;
    if (wish.paddock !== undefined && wish.paddock !== p) afterOut[stay] = 0;
    if (wish.days === undefined) continue;
    const at = outs.indexOf(day + wish.days);
    if (at >= firstOut[stay]! && at < afterOut[stay]!) {
      firstOut[stay] = at;
      afterOut[stay] = at + 1;
    } else afterOut[stay] = 0;
  }
}

/** Stays in one paddock that begin before a day end on it at the latest. */
function endBy({ outs, afterOut }: Ranges, paddockFrom: number, last: number): void {
  let after = 0;
  while (after < outs.length && outs[after]! <= last) after += 1;
  for (let stay = paddockFrom; stay < paddockFrom + last; stay++)
    afterOut[stay] = Math.min(afterOut[stay]!, after);
}

/** Whether the group is in the rotation on the day of the wish, be it that of the stay that it is in. */
export function isInSpan({ groups, rules }: PlanProblem, wish: Wish): boolean {
  const group = groups[wish.group];
  if (!group || (wish.day < rules.seasonStart && wish.day !== group.standing?.since)) return false;
  const { entry, end } = groupSpan(group, rules);
  return entry <= wish.day && wish.day < end;
}
