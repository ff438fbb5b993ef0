import { groupSpan } from './group-span';
import { groupLoadOn } from './group-weights';
import type { PlanProblem } from './model';
import { restDue } from './rest-due';

const ROUNDING = 1e-9;
/** Any paddock that follows the farm's rest rule. */
const PLAIN = { name: '', areaSquareMeters: 1 };

/** A paddock as the count sees it; days from the season start on. */
interface Room {
  /** Its own rest, if it has one. */
  readonly restDays: number | undefined;
  /** From the day it is rested or opens to the day it closes. */
  readonly from: number;
  readonly until: number;
  /** Nights of one stay at most: the longest stay, or what the ground bears of the lightest group. */
  readonly most: number;
}

/**
 * Whether the paddocks have room for all nights of the groups if every rest is had, no stay is too long and none over the
 * ground limit. Where not, every plan falls short somewhere, and none need be looked for. That there is room does not say
 * that there is a plan.
 *
 * Counted over the season and over every stretch in it that is as long as one stay and a rest: in so many days a paddock
 * bears no more than that stay, in one piece or as the end of one and the beginning of the next. Days between on which a
 * paddock is shut are not looked at.
 */
export function hasRoom(problem: PlanProblem): boolean {
  const { rules } = problem;
  const start = rules.seasonStart;
  const days = Math.max(0, rules.seasonEnd - start);
  const nights = nightsBefore(problem, days);
  const due = Array.from({ length: days }, (_, day) => restDue(PLAIN, rules.rest, start + day));
  const rooms = roomsOf(problem, days);
  const ownRests = new Set(rooms.flatMap(({ restDays }) => restDays ?? []));
  const fits = (from: number, until: number): boolean => {
    const least = Math.min(...due.slice(from, until));
    const room = rooms.reduce((sum, paddock) => sum + mostNights(paddock, from, until, least), 0);
    return nights[until]! - nights[from]! <= room;
  };
  if (!fits(0, days)) return false;
  const stay = medianOf(rooms.map(({ most }) => most));
  for (let from = 0; from < days; from++) {
    for (const rest of new Set([due[from]!, ...ownRests])) {
      const until = from + stay + rest;
      if (until <= days && !fits(from, until)) return false;
    }
  }
  return true;
}

function medianOf(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;
}

/** Nights of all groups before each day. */
function nightsBefore({ groups, rules }: PlanProblem, days: number): Int32Array {
  const nights = new Int32Array(days + 1);
  const spans = groups.map((group) => groupSpan(group, rules));
  for (let day = 0; day < days; day++) {
    const here = spans.filter(
      ({ entry, end }) => entry <= rules.seasonStart + day && rules.seasonStart + day < end,
    );
    nights[day + 1] = nights[day]! + here.length;
  }
  return nights;
}

function roomsOf(problem: PlanProblem, days: number): Room[] {
  const { paddocks, groups, rules } = problem;
  const { rest, seasonStart: start, longestStayDays, groundLimit } = rules;
  const lightest = groundLimit === undefined ? 0 : lightestLoad(problem);
  return paddocks.map((paddock, p) => {
    const { openFrom = start, openUntil = rules.seasonEnd - 1, lastUsed, areaSquareMeters } = paddock;
    const isInUse = groups.some(({ standing }) => standing?.paddock === p);
    const ready = lastUsed === undefined ? start : lastUsed + restDue(paddock, rest, lastUsed);
    const borne = lightest > 0 ? (groundLimit! * areaSquareMeters * (1 + ROUNDING)) / lightest : Infinity;
    return {
      restDays: paddock.restDays === undefined ? undefined : restDue(paddock, rest, start),
      from: isInUse ? 0 : Math.max(0, ready - start, openFrom - start),
      until: Math.min(days, openUntil + 1 - start),
      most: Math.min(longestStayDays, Math.floor(borne)),
    };
  });
}

/** The least liveweight that a group has on a day of the season. */
function lightestLoad({ groups, rules }: PlanProblem): number {
  let least = Infinity;
  for (const group of groups) {
    const { entry, end } = groupSpan(group, rules);
    for (let day = Math.max(entry, rules.seasonStart); day < end; day++)
      least = Math.min(least, groupLoadOn(group, day));
  }
  return least;
}

function mostNights(
  { restDays, from, until, most }: Room,
  first: number,
  after: number,
  least: number,
): number {
  const days = Math.max(0, Math.min(until, after) - Math.max(from, first));
  const round = most + (restDays ?? least);
  return round > 0 ? Math.floor(days / round) * most + Math.min(most, days % round) : 0;
}
