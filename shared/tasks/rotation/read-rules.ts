/** Turns the typed rules into the planner's, or says field by field what is wrong. */
import { type Day, dayFromIso } from '../../core/calendar/day';
import { readAmount } from '../../locale/read-amount';
import type { PlanRules, RestRule } from '../../plan/model';
import { EVENNESS } from '../../table/settings-rows';
import { toInside, type UnitSystem } from '../../units/units';
import { ENDS_AFTER } from '../words';
import type { RulesForm } from './rules-form';
import * as words from './words';

export type RuleProblems = Readonly<Partial<Record<keyof RulesForm, string>>>;

export interface RulesRead {
  /** Absent while anything is wrong. */
  readonly rules: PlanRules | undefined;
  readonly problems: RuleProblems;
}

/** Longest rest and season that the form takes. Judgement: three years are more than anybody plans ahead. */
const MOST_DAYS = 3 * 365 + 1;

export function readRules(form: RulesForm, system: UnitSystem, comma: boolean): RulesRead {
  const problems: Partial<Record<keyof RulesForm, string>> = {};
  const number = (field: keyof RulesForm, text: string, limits: Limits): number => {
    const read = readNumber(text, limits, comma);
    if (typeof read === 'number') return read;
    problems[field] ??= read;
    return Number.NaN;
  };
  const day = (field: 'seasonStart' | 'seasonEnd'): Day => {
    const read = dayFromIso(form[field]);
    if (read === undefined) problems[field] = words.BE_A_DATE;
    return read ?? Number.NaN;
  };
  const seasonStart = day('seasonStart');
  const seasonEnd = day('seasonEnd');
  if (seasonEnd <= seasonStart) problems.seasonEnd = ENDS_AFTER;
  else if (seasonEnd - seasonStart > MOST_DAYS) problems.seasonEnd = words.THREE_YEARS;
  const rest = readRest(form, number);
  const shortestStayDays = number('shortest', form.shortest, { min: 1, max: MOST_DAYS, whole: true });
  const longestStayDays = number('longest', form.longest, { min: 1, max: MOST_DAYS, whole: true });
  if (longestStayDays < shortestStayDays) problems.longest = words.asLongAs(form.shortest, form.longest);
  const limit =
    form.groundLimit.trim() === ''
      ? undefined
      : toInside(number('groundLimit', form.groundLimit, { above: 0 }), 'loadPerArea', system);
  if (!form.weekdays.includes(true)) problems.weekdays = words.CHOOSE_A_DAY;
  const { days: noMoveDays, problem } = readDays(form.noMoveDays);
  if (problem) problems.noMoveDays = problem;
  const rules: PlanRules = {
    rest,
    shortestStayDays,
    longestStayDays,
    ...(limit !== undefined && { groundLimit: limit }),
    evenness: EVENNESS[form.evenness],
    moveWeekdays: form.weekdays,
    noMoveDays,
    seasonStart,
    seasonEnd,
  };
  return { rules: Object.keys(problems).length === 0 ? rules : undefined, problems };
}

interface Limits {
  readonly min?: number;
  readonly max?: number;
  readonly above?: number;
  readonly whole?: true;
}

function readNumber(text: string, { min, max, above, whole }: Limits, comma: boolean): number | string {
  const read = readAmount(text, comma);
  if ('problem' in read)
    return read.problem.startsWith('be ') ? `Must ${read.problem}.` : `Please ${read.problem}.`;
  const { value } = read;
  const got = text.trim();
  if (value === undefined) return words.NOT_NOTHING;
  if (whole && !Number.isInteger(value)) return words.beWhole(got);
  if (min !== undefined && value < min) return words.atLeast(min, got);
  if (max !== undefined && value > max) return words.atMost(max, got);
  if (above !== undefined && value <= above) return words.moreThan(above, got);
  return value;
}

type NumberReader = (field: keyof RulesForm, text: string, limits: Limits) => number;

function readRest(form: RulesForm, number: NumberReader): RestRule {
  const limits = { min: 0, max: MOST_DAYS };
  if (form.rest === 'fixed') return { kind: 'fixed', days: number('restDays', form.restDays, limits) };
  if (form.rest === 'monthly') {
    return { kind: 'monthly', days: form.monthlyRest.map((text) => number('monthlyRest', text, limits)) };
  }
  const growth = form.growth.map((text) => number('growth', text.trim() === '' ? '0' : text, { min: 0 }));
  return { kind: 'forage', growth, needed: number('needed', form.needed, { above: 0 }) };
}

/** Dates in any order, parted by spaces, commas or lines; "2026-06-01 to 2026-06-07" is a stretch of days. */
function readDays(text: string): { days: Day[]; problem: string | undefined } {
  const days = new Set<Day>();
  const parts = text
    .replace(/\s+(?:to|until|–|-)\s+/gi, '…')
    .split(/[\s,;]+/)
    .filter(Boolean);
  for (const part of parts) {
    const [from = '', to = from] = part.split('…');
    const first = dayFromIso(from);
    const last = dayFromIso(to);
    if (first === undefined || last === undefined || last < first || last - first > MOST_DAYS) {
      const got = part.replace('…', ' to ');
      return { days: [], problem: words.writeDates(got) };
    }
    for (let day = first; day <= last; day++) days.add(day);
  }
  return { days: [...days].sort((a, b) => a - b), problem: undefined };
}
