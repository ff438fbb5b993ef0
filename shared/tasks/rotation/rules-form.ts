/** The rules as they stand in the form: text, as typed. */
import { type Day, isoFromDay } from '../../core/calendar/day';
import type { ReadGroup, ReadPaddock } from '../../lists/model';
import type { PlanRules } from '../../plan/model';
import { startLongestStay } from '../../plan/start-longest-stay';
import { type EvennessWord, evennessWord } from '../../table/settings-rows';
import { fromInside, type UnitSystem } from '../../units/units';

import { planProblem } from './plan-problem';
import { readRules } from './read-rules';

export type RestKind = 'fixed' | 'monthly' | 'forage';

export interface RulesForm {
  readonly seasonStart: string;
  readonly seasonEnd: string;
  readonly rest: RestKind;
  readonly restDays: string;
  /** Twelve each, January first. */
  readonly monthlyRest: readonly string[];
  readonly growth: readonly string[];
  readonly needed: string;
  readonly shortest: string;
  readonly longest: string;
  /** Sunday first. */
  readonly weekdays: readonly boolean[];
  readonly noMoveDays: string;
  readonly groundLimit: string;
  readonly evenness: EvennessWord;
}

/**
 * Where the form starts. The rest of 40 days and the stay of 3 to 7 days lie inside the 30 to 90 days of rest
 * and 3 to 7 days of stay that ATTRA/NCAT gives for pigs in woods; that they suit open ground is judgement. Where 7
 * days do not let the rest be had, startLongestStay begins with more.
 */
const START = { restDays: '40', shortest: '3', longest: '7' };

/** A season where no group says when it ends. Judgement. */
const USUAL_SEASON_DAYS = 180;

/** The rules to begin with: the longest stay long enough for the rest, where 14 days or less are. */
export function startingRules(
  paddocks: readonly ReadPaddock[],
  groups: readonly ReadGroup[],
  today: Day,
): RulesForm {
  const form = usualRules(paddocks, groups, today);
  // No rule of these has a unit.
  const { rules } = readRules(form, 'metric', false);
  return rules ? { ...form, longest: String(startLongestStay(planProblem(paddocks, groups, rules))) } : form;
}

function usualRules(paddocks: readonly ReadPaddock[], groups: readonly ReadGroup[], today: Day): RulesForm {
  // A group without a day is in the season from its start to its end: no other group's day moves them for it.
  const starts = groups.map(({ from, standsIn }) => from ?? standsIn?.since ?? today);
  const start = Math.min(...(starts.length > 0 ? starts : [today]));
  const longest = Math.max(
    start,
    ...groups.map(({ until }) => until ?? Math.max(start, today) + USUAL_SEASON_DAYS),
  );
  const closed = groundClosed(paddocks, groups.length);
  const end = closed > start ? Math.min(longest, closed) : longest;
  return {
    seasonStart: isoFromDay(start),
    seasonEnd: isoFromDay(end > start ? end : start + USUAL_SEASON_DAYS),
    rest: 'fixed',
    ...START,
    monthlyRest: new Array<string>(12).fill(START.restDays),
    growth: new Array<string>(12).fill(''),
    needed: '',
    weekdays: new Array<boolean>(7).fill(true),
    noMoveDays: '',
    groundLimit: '',
    evenness: 'some',
  };
}

/** The day from which on fewer paddocks are open than there are groups: the season cannot last longer. */
function groundClosed(paddocks: readonly ReadPaddock[], groups: number): Day {
  const closes = paddocks.map(({ openUntil = Infinity, shutFrom = Infinity, shutUntil }) =>
    Math.min(openUntil + 1, shutUntil === undefined ? shutFrom : Infinity),
  );
  return closes.sort((a, b) => b - a)[groups - 1] ?? Infinity;
}

/** The form that stands for some rules: the inverse of readRules. */
export function rulesFormOf(rules: PlanRules, system: UnitSystem, comma: boolean): RulesForm {
  const { rest, groundLimit } = rules;
  const words = (value: number): string => {
    const text = String(Number(value.toPrecision(10)));
    return comma ? text.replace('.', ',') : text;
  };
  const empty = new Array<string>(12).fill('');
  return {
    seasonStart: isoFromDay(rules.seasonStart),
    seasonEnd: isoFromDay(rules.seasonEnd),
    rest: rest.kind,
    restDays: rest.kind === 'fixed' ? words(rest.days) : START.restDays,
    monthlyRest: rest.kind === 'monthly' ? rest.days.map(words) : empty.map(() => START.restDays),
    growth: rest.kind === 'forage' ? rest.growth.map(words) : empty,
    needed: rest.kind === 'forage' ? words(rest.needed) : '',
    shortest: words(rules.shortestStayDays),
    longest: words(rules.longestStayDays),
    weekdays: rules.moveWeekdays,
    noMoveDays: rules.noMoveDays.map(isoFromDay).join(', '),
    groundLimit: groundLimit === undefined ? '' : words(fromInside(groundLimit, 'loadPerArea', system)),
    evenness: evennessWord(rules.evenness),
  };
}
