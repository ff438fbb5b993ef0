import { findPlan } from './find-plan';
import type { NoPlan, Plan, PlanProblem } from './model';
import { finish, partOf, type Steps } from './steps';
import { whyNoPlan } from './why-no-plan';

/**
 * Plans the season: for every group, which paddock it stands in from which day to which.
 *
 * THE MODEL
 *
 * Days are whole. A group is in the rotation from its entry, the later of `from` and the season start, to its
 * end, the earliest of `until`, the season end and the first day on which it weighs `untilWeightKg` or more. Its
 * last night in the rotation is the one before its end. A stay takes up the days inDay … outDay − 1; the group
 * moves on outDay.
 *
 * Never broken:
 * - The stays of a group follow each other without a gap from its entry to its end, and each is in another
 *   paddock than the one before.
 * - One group at a time in a paddock; on the day one leaves, another may come in.
 * - Only inside the open dates, both included, and not on the days from shutFrom to shutUntil, both included.
 * - A group moves on move days: an allowed weekday that is not a day without moves. The first day may be any, and
 *   so may its end.
 * - A stay lasts from the shortest to the longest stay. The last stay of a group may be shorter; and a stay may be
 *   shorter, one day at least, where the shortest stay would take the group over the ground limit.
 * - A group that already stands somewhere begins there on the day it came in, which counts in the length of the
 *   stay; it leaves on or after the season start. Where the rules leave it no day to leave (it is there too long
 *   already, the paddock has closed), it leaves on the first move day there is: what has happened cannot be broken.
 *   Where there is none before its end, it stays to its end.
 * - Where no move day comes between the shortest and the longest day of a stay, it is lengthened to the next one.
 *
 * The score, lower is better:
 * - 10 for each day short of the rest due, counted at the entry into a paddock from the day it was last left: by
 *   an earlier stay, or `lastUsed`. Never used before: no rest is due. Rest due: see restDue. The entry of a group
 *   that already stands there is past and not counted.
 * - 10 for each day over the ground limit: each day k of a stay after which head × weight, summed over its first
 *   k days with the weight at mid-day, is more than the limit × area.
 * - 10 for each day ahead that a stay is longer than the longest.
 * - 1 for each stay, and 0.5 for each move to a paddock that does not adjoin the one left, where for either of
 *   the two the adjoining paddocks are given.
 * - evenness × (load ÷ even share)² for each stay, its load being liveweight-days per area; see evenShare. It adds
 *   up stay by stay, so that twice the load of one paddock is not made good by half the load of another.
 *
 * - 0.2 for each move of the next 28 days that is not one of the plan before, in group, paddock and day, and 0.05 for
 *   each later one. So a change is made only where it buys something; the same problem again gives the same plan.
 *
 * Wishes are rules: on that day the group moves, into that paddock, for that many days, and nobody else is in it on that
 * day. Where no plan is found with all, they are taken in the order of their days, each that a plan is found with.
 *
 * What has happened needs no more than `standing` and `lastUsed`: a move that was skipped leaves `lastUsed` of its
 * paddock as it was, so its rest runs on; one that was not planned sets where the group stands, or `lastUsed`.
 *
 * Same problem, same plan: there is no clock and no chance in the search.
 */
export function planRotation(problem: PlanProblem): Plan | NoPlan {
  return finish(planSteps(problem));
}

/** The same in steps, for whoever cannot wait: a worker that is to be stopped, a page that is to stay alive. */
export function* planSteps(problem: PlanProblem): Steps<Plan | NoPlan> {
  const { before: _, wishes: __, ...free } = problem;
  return (yield* partOf(findPlan(problem), 0, 1)) ?? (yield* whyNoPlan(free));
}
