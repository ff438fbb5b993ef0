/**
 * The rotation problem and its answer, in SI units and whole days.
 *
 * Everything that plans, checks, explains, draws or writes a rotation speaks in these types. They are plain
 * data, so that they survive JSON.
 */
import type { Day } from '../core/calendar/day';

export interface PlanPaddock {
  readonly name: string;
  readonly areaSquareMeters: number;
  /** First day on which pigs may stand here. */
  readonly openFrom?: Day;
  /** Last day on which pigs may stand here. */
  readonly openUntil?: Day;
  /** First and last day of a time in which it is shut; only one of them: ever before, or for good. */
  readonly shutFrom?: Day;
  readonly shutUntil?: Day;
  /** The day the last pigs left, before this plan begins. */
  readonly lastUsed?: Day;
  /** Rest this paddock needs, in place of the farm's rest rule. */
  readonly restDays?: number;
  /** Positions in the paddock list of those that share a side with this one; absent: not known. */
  readonly adjoins?: readonly number[];
}

/** What the herd log says of a group from a day on. */
export interface HerdStep {
  readonly day: Day;
  readonly head?: number;
  /** As weighed on that day. */
  readonly weightKg?: number;
}

export interface PlanGroup {
  readonly name: string;
  readonly head: number;
  readonly weightKg: number;
  readonly weighedOn: Day;
  /** Head and weights that change, in the order of days; before the first, those above hold. */
  readonly herd?: readonly HerdStep[];
  /** Absent: the growth table by weight band. */
  readonly dailyGainKg?: number;
  /** First day in the rotation (out of the training pen). */
  readonly from: Day;
  /** The day the group leaves the rotation: its last night on pasture is the one before. Absent: season end. */
  readonly until?: Day;
  /** Leaves on the first day at or above this weight, if that comes before `until`. */
  readonly untilWeightKg?: number;
  /** Where the group stands when the plan begins and since when: the plan may not move it in the past. */
  readonly standing?: { readonly paddock: number; readonly since: Day };
}

export type RestRule =
  | { readonly kind: 'fixed'; readonly days: number }
  /** Twelve rests, January first; the month is that of the day the group leaves. */
  | { readonly kind: 'monthly'; readonly days: readonly number[] }
  /** Growth by month (mass per area per day, January first) and the growth a paddock needs back. */
  | { readonly kind: 'forage'; readonly growth: readonly number[]; readonly needed: number };

export interface PlanRules {
  readonly rest: RestRule;
  readonly shortestStayDays: number;
  readonly longestStayDays: number;
  /** Liveweight-days per area that the ground bears in one stay, kg·day/m². Absent: no limit. */
  readonly groundLimit?: number;
  /** Weight of even use of the ground in the score (see planRotation); absent: 0. */
  readonly evenness?: number;
  /** Seven flags, Sunday first: on which weekdays pigs may be moved. */
  readonly moveWeekdays: readonly boolean[];
  /** Days on which nobody can move pigs. */
  readonly noMoveDays: readonly Day[];
  /** First day of the plan. */
  readonly seasonStart: Day;
  /** The day the plan ends: the last night is the one before. */
  readonly seasonEnd: Day;
}

/**
 * A move to come as the grower typed it: the group moves on that day, into that paddock, for that many days. On the day
 * since which the group stands where it is, the days are those of that stay.
 */
export interface Wish {
  readonly group: number;
  readonly day: Day;
  readonly paddock?: number;
  readonly days?: number;
}

export interface PlanProblem {
  readonly paddocks: readonly PlanPaddock[];
  readonly groups: readonly PlanGroup[];
  readonly rules: PlanRules;
  /** The plan before: each move that is not one of its moves costs a little. Stays that have begun may be in it. */
  readonly before?: readonly Stay[];
  /** Kept as hard rules where a plan is found with them. */
  readonly wishes?: readonly Wish[];
  /** Even share of the whole season, kg·day/m², where only the rest of it is planned; absent: see evenShare. */
  readonly evenShare?: number;
  /** Share of the usual search that is made at most; absent: 1. Less is sooner, and maybe a worse plan. */
  readonly effort?: number;
}

/** One stay: a group in a paddock from the day it comes in to the day it leaves (that night is elsewhere). */
export interface Stay {
  readonly group: number;
  readonly paddock: number;
  readonly inDay: Day;
  readonly outDay: Day;
}

/** A plan with its score. Stays are in the order of inDay, then group. */
export interface Plan {
  readonly stays: readonly Stay[];
  readonly score: PlanScore;
  /** The wishes that no plan was found with; absent: all are kept. */
  readonly droppedWishes?: readonly Wish[];
}

/**
 * Lower is better. total = 10·restShortDays + 10·overLimitDays + 10·tooLongDays + moves + 0.5·strides + unevenPoints
 * + changePoints.
 */
export interface PlanScore {
  readonly total: number;
  readonly restShortDays: number;
  readonly overLimitDays: number;
  readonly moves: number;
  /** Moves to a paddock that does not adjoin the one left. */
  readonly strides: number;
  /** Days of stays beyond the longest stay, where no move day came sooner; absent: none. */
  readonly tooLongDays?: number;
  /** evenness × (load ÷ even share)², summed over the stays; absent without evenness. */
  readonly unevenPoints?: number;
  /** 0.2 for each move of the next 28 days that is not one of the plan before, 0.05 for a later one; absent: none. */
  readonly changePoints?: number;
}

/** Why no plan exists, and the smallest change found that lets one exist. */
export interface NoPlan {
  readonly reason: string;
  readonly mend: string | undefined;
}
