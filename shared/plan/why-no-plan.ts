import { dayWords } from '../core/calendar/day-words';
import { isPlannable } from './find-plan';
import { groupBound } from './group-bound';
import { groupSpan } from './group-span';
import type { NoPlan, PlanProblem } from './model';
import { NEVER } from './never';
import { isOpen } from './open-days';
import {
  longerStay,
  moreMoveDays,
  morePaddocks,
  type PlanChange,
  wholeSeasonOpen,
  withoutGroup,
} from './plan-changes';
import { planTables } from './plan-tables';
import { smallestChange } from './smallest-change';
import { partOf, type Steps } from './steps';
import * as words from './words';

/** How often the problem is solved again for each sort of change; judgement. */
const TRIES_PER_SORT = 8;

/**
 * Why there is no plan, and the first change found, from the easiest to the hardest, with which there is one.
 *
 * The reasons that name a day, a gap or a group alone are proofs. The last one is not, and says so.
 */
export function* whyNoPlan(problem: PlanProblem): Steps<NoPlan> {
  return { reason: yield* reasonFor(problem), mend: yield* mendFor(problem) };
}

function* reasonFor(problem: PlanProblem): Steps<string> {
  return (
    badStays(problem) ??
    sharedPlace(problem) ??
    tooFewPaddocks(problem) ??
    (yield* stuckAlone(problem)) ??
    words.NOT_TOGETHER
  );
}

function badStays({ rules, paddocks }: PlanProblem): string | undefined {
  const { shortestStayDays, longestStayDays } = rules;
  if (paddocks.length === 0) return words.NO_PADDOCK;
  if (longestStayDays < 1) return words.badLongest(longestStayDays);
  if (shortestStayDays <= longestStayDays) return undefined;
  return words.shortestTooLong(shortestStayDays, longestStayDays);
}

function sharedPlace({ groups, paddocks }: PlanProblem): string | undefined {
  for (const [g, group] of groups.entries()) {
    const place = group.standing?.paddock;
    const other = groups
      .slice(0, g)
      .find(({ standing }) => place !== undefined && standing?.paddock === place);
    if (other) return words.bothStand(other.name, group.name, paddocks[place!]!.name);
  }
  return undefined;
}

function tooFewPaddocks({ groups, paddocks, rules }: PlanProblem): string | undefined {
  const spans = groups.map((group) => groupSpan(group, rules));
  for (let day = rules.seasonStart; day < rules.seasonEnd; day++) {
    const here = spans.filter((span) => span.entry <= day && day < span.end).length;
    const open = paddocks.filter((paddock) => isOpen(paddock, day)).length;
    if (here > open) {
      return words.tooFewOpen(dayWords(day), here, open);
    }
  }
  return undefined;
}

function* stuckAlone(problem: PlanProblem): Steps<string | undefined> {
  const tables = yield* planTables(problem);
  for (const [g, { entry, end, standing }] of tables.groups.entries()) {
    if (standing || entry >= end) continue;
    const { left } = groupBound(tables, g, entry, end, { points: 0, paddock: -1 }, () => NEVER);
    if (left[tables.paddockCount] === Infinity) {
      return words.noneAlone(problem.groups[g]!.name);
    }
  }
  return undefined;
}

function* mendFor(problem: PlanProblem): Steps<string | undefined> {
  const changes: PlanChange[] = [
    ...moreMoveDays(problem),
    longerStay(problem),
    ...wholeSeasonOpen(problem),
    morePaddocks(problem),
    ...withoutGroup(problem),
  ];
  for (const [i, change] of changes.entries()) {
    const tries = { left: TRIES_PER_SORT };
    const search = smallestChange(change, isPlannable, tries);
    const n = yield* partOf(search, i / changes.length, (i + 1) / changes.length);
    if (n !== undefined) return words.wouldMakePlan(change.words(n));
  }
  return undefined;
}
