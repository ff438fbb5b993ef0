import { dayWords } from '../core/calendar/day-words';
import { findPlan, isFlawless } from './find-plan';
import { hasRoom } from './has-room';
import type { NoPlan, Plan, PlanProblem, PlanRules, Stay, Wish } from './model';
import {
  fewerHead,
  longerStay,
  moreMoveDays,
  morePaddocks,
  type PlanChange,
  shorterRest,
  wholeSeasonOpen,
} from './plan-changes';
import { daysTooLong, scoreStays } from './score-plan';
import { smallestChange, type Tries } from './smallest-change';
import { loadSpread } from './stay-loads';
import { finish, partOf, type Steps } from './steps';
import * as words from './words';

/** How often the problem is solved again for each sort of change, less often on very large farms; judgement. */
const MOST_TRIES = 5;
const LEAST_TRIES = 2;
/** Days × groups × paddocks up to which all tries are affordable. */
const LARGE_FARM = 150_000;

/** A change of the rules alone that was found to help, to be applied with a button. */
export interface RulesOffer {
  /** "Use 8 days" */
  readonly button: string;
  /** The rules with it. */
  readonly rules: PlanRules;
}

/** A plan in words. */
export interface PlanWords {
  /** What the score is made of, one sentence each, worst first. */
  readonly score: readonly string[];
  /** What would mend it, one sentence; undefined where nothing needs mending. */
  readonly mend: string | undefined;
  /** The changes named in `mend`, each as solved, smallest of its sort. */
  readonly changes: readonly string[];
  /** Those of them that the form can take up. */
  readonly offers: readonly RulesOffer[];
}

/**
 * The score in plain words, and what would mend it, found by solving again: more paddocks, fewer pigs, shorter
 * rest, another move day, longer stays. A change is named only if a plan was found with it that falls short nowhere.
 * Where none falls short and a paddock is used hard, a longer stay is looked for that eases it.
 */
export function explainPlan(problem: PlanProblem, plan: Plan | NoPlan): PlanWords {
  return finish(explainSteps(problem, plan));
}

/** The same in steps. */
export function* explainSteps(problem: PlanProblem, plan: Plan | NoPlan): Steps<PlanWords> {
  const plain = plainWords(problem, plan);
  if (!('stays' in plan)) return plain;
  const { before: _, wishes = [], ...free } = problem;
  const kept = wishes.filter((wish) => !plan.droppedWishes?.includes(wish));
  const left = { ...free, wishes: kept };
  if (fallsShort(plan)) {
    if (shortDays(plan) === sum(typedTooLong(problem, plan))) return plain;
    const mends = mendWords(yield* findMends(left));
    const { changes } = mends;
    return {
      ...plain,
      ...mends,
      mend: changes.length > 0 ? words.wouldClose(changes) : words.NO_SINGLE_CHANGE,
    };
  }
  if (!hasHardUse(problem, plan)) return plain;
  const ease = mendWords(yield* findEase(left));
  return { ...plain, ...ease, mend: ease.changes[0] && words.wouldEase(ease.changes[0]) };
}

function mendWords(mends: readonly Mend[]): Pick<PlanWords, 'changes' | 'offers'> {
  return {
    changes: mends.map(({ change, n }) => change.words(n)),
    offers: mends.flatMap(({ change, n }) =>
      change.button ? [{ button: change.button(n), rules: change.apply(n).rules }] : [],
    ),
  };
}

/** The plan in words, without looking for what would mend it. */
export function plainWords(problem: PlanProblem, plan: Plan | NoPlan): PlanWords {
  if ('stays' in plan)
    return { score: scoreSentences(problem, plan), mend: undefined, changes: [], offers: [] };
  return { score: [plan.reason], mend: plan.mend, changes: plan.mend ? [plan.mend] : [], offers: [] };
}

function scoreSentences(problem: PlanProblem, plan: Plan): string[] {
  if (plan.stays.length === 0) return [words.NO_MOVE];
  const rows = scoreStays(problem, plan.stays);
  const short = rows.map((row) => row.restShortDays).filter((days) => days > 0);
  const over = rows.map((row) => row.overLimitDays).filter((days) => days > 0);
  const { moves, strides } = plan.score;
  const sentences = (plan.droppedWishes ?? []).map((wish) => droppedSentence(problem, wish));
  if (short.length > 0) {
    const most = Math.max(...short);
    sentences.push(words.restShort(short.length, most));
  }
  if (over.length > 0) {
    const days = over.reduce((sum, n) => sum + n, 0);
    sentences.push(words.overLimit(days, over.length));
  }
  const typed = typedTooLong(problem, plan);
  for (const { stay } of typed) sentences.push(typedSentence(problem, stay));
  const tooLong = (plan.score.tooLongDays ?? 0) - sum(typed);
  if (tooLong > 0) {
    sentences.push(words.stayTooLong(tooLong));
  }
  if (!fallsShort(plan)) sentences.push(goodNews(problem));
  sentences.push(...hardUse(problem, plan), ...stayingLonger(problem));
  sentences.push(words.movesInAll(moves, strides));
  return sentences;
}

function droppedSentence({ groups, paddocks }: PlanProblem, { group, day, paddock, days }: Wish): string {
  const into = paddock === undefined ? undefined : paddocks[paddock]!.name;
  return words.wishNotKept(groups[group]!.name, into, dayWords(day), days);
}

interface TypedStay {
  readonly stay: Stay;
  /** Days beyond the longest stay. */
  readonly days: number;
}

/** Stays that are too long because the grower typed their days: no change of the rules is called for. */
function typedTooLong(problem: PlanProblem, { stays }: Plan): TypedStay[] {
  return (problem.wishes ?? []).flatMap((wish) => {
    const stay = stays.find(
      ({ group, inDay, outDay }) =>
        group === wish.group && inDay === wish.day && outDay - inDay === wish.days,
    );
    const days = stay ? daysTooLong(problem, stay) : 0;
    return stay && days > 0 ? [{ stay, days }] : [];
  });
}

function sum(typed: readonly TypedStay[]): number {
  return typed.reduce((total, { days }) => total + days, 0);
}

function typedSentence({ groups, paddocks, rules }: PlanProblem, stay: Stay): string {
  const { group, paddock, inDay, outDay } = stay;
  return words.typedTooLong(
    groups[group]!.name,
    paddocks[paddock]!.name,
    outDay - inDay,
    rules.longestStayDays,
  );
}

function hardUse(problem: PlanProblem, plan: Plan): string[] {
  const spread = loadSpread(problem, plan.stays);
  if (!spread || spread.hard.length === 0) return [];
  const { paddock, inDay } = spread.worstStay;
  const times = (spread.worst / spread.median).toFixed(1);
  const name = problem.paddocks[paddock]!.name;
  return [words.bearsTimes(name, times, dayWords(inDay))];
}

/** Groups whose list gives a day to leave after the last day of the plan: nothing is planned for them from there. */
function stayingLonger({ groups, rules }: PlanProblem): string[] {
  return groups.flatMap(({ name, until = rules.seasonEnd }) => {
    const days = until - rules.seasonEnd;
    if (days <= 0) return [];
    return [words.planEnds(dayWords(rules.seasonEnd), days, name, dayWords(until))];
  });
}

function goodNews(problem: PlanProblem): string {
  return words.everyRest(problem.rules.groundLimit !== undefined);
}

/** Whether a paddock gets too little rest, the ground carries too much or a stay is too long. */
export function fallsShort({ score }: Plan): boolean {
  return shortDays({ score }) > 0;
}

function shortDays({ score }: Pick<Plan, 'score'>): number {
  return score.restShortDays + score.overLimitDays + (score.tooLongDays ?? 0);
}

/** A change and how many steps of it. */
export interface Mend {
  readonly change: PlanChange;
  readonly n: number;
}

/** The smallest change of each sort with which a plan falls short nowhere; what changes least comes first. */
export function* findMends(problem: PlanProblem): Steps<Mend[]> {
  const sorts: PlanChange[][] = [
    [longerStay(problem)],
    moreMoveDays(problem).slice(0, 2),
    wholeSeasonOpen(problem),
    [morePaddocks(problem)],
    fewerHead(problem),
    [shorterRest(problem)],
  ];
  const mends: Mend[] = [];
  for (const [i, sort] of sorts.entries()) {
    const mend = yield* partOf(firstMend(sort, triesFor(problem)), i / sorts.length, (i + 1) / sorts.length);
    if (mend) mends.push(mend);
  }
  return mends;
}

/** Days by which stays may be longer to ease the ground, and tries at it; judgement. */
const MOST_EASE_DAYS = 4;
const EASE_TRIES = 3;

/** The smallest longer stay with which no paddock is used hard: the large ones then carry more of each round. */
function* findEase(problem: PlanProblem): Steps<Mend[]> {
  const change = { ...longerStay(problem), most: MOST_EASE_DAYS };
  const n = yield* smallestChange(change, isEven, { left: Math.min(EASE_TRIES, triesFor(problem)) });
  return n === undefined ? [] : [{ change, n }];
}

function* isEven(problem: PlanProblem): Steps<boolean> {
  const plan = yield* findPlan(problem);
  return plan !== undefined && !fallsShort(plan) && !hasHardUse(problem, plan);
}

/** Whether some stay bears far more than the others. */
export function hasHardUse(problem: PlanProblem, { stays }: Plan): boolean {
  return (loadSpread(problem, stays)?.hard.length ?? 0) > 0;
}

function triesFor({ paddocks, groups, rules }: PlanProblem): number {
  const size = (rules.seasonEnd - rules.seasonStart) * groups.length * paddocks.length;
  const tries = Math.floor((MOST_TRIES * LARGE_FARM) / Math.max(1, size));
  return Math.max(LEAST_TRIES, Math.min(MOST_TRIES, tries));
}

function* firstMend(sort: readonly PlanChange[], left: number): Steps<Mend | undefined> {
  const tries: Tries = { left };
  for (const change of sort) {
    const n = yield* smallestChange(change, isFlawless, tries, hasRoom);
    if (n !== undefined) return { change, n };
  }
  return undefined;
}
