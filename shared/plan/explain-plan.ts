import type { NoPlan, Plan, PlanProblem } from './model';
import {
  fewerHead,
  longerStay,
  moreMoveDays,
  morePaddocks,
  type PlanChange,
  shorterRest,
} from './plan-changes';
import { scoreStays } from './score-plan';
import { smallestChange, type Tries } from './smallest-change';
import { capital, counted, orList } from './words';

/** How often the problem is solved again at most; judgement. */
const MOST_TRIES = 30;
/** A farm this large (days × groups × paddocks) takes a good part of a second to solve, so fewer tries; judgement. */
const LARGE_FARM = 20_000;
const FEW_TRIES = 10;

/** A plan in words. */
export interface PlanWords {
  /** What the score is made of, one sentence each, worst first. */
  readonly score: readonly string[];
  /** What would mend it, one sentence; undefined where nothing needs mending. */
  readonly mend: string | undefined;
  /** The changes named in `mend`, each as solved, smallest of its sort. */
  readonly changes: readonly string[];
}

/**
 * The score in plain words, and what would mend it, found by solving again: more paddocks, fewer pigs, shorter
 * rest, another move day, longer stays. A change is named only if a plan was found with it that falls short nowhere.
 */
export function explainPlan(problem: PlanProblem, plan: Plan | NoPlan): PlanWords {
  if (!('stays' in plan))
    return { score: [plan.reason], mend: plan.mend, changes: plan.mend ? [plan.mend] : [] };
  const score = scoreSentences(problem, plan);
  if (plan.score.restShortDays + plan.score.overLimitDays === 0)
    return { score, mend: undefined, changes: [] };
  const changes = findMends(problem);
  const mend =
    changes.length > 0
      ? `${capital(orList(changes))} would close it.`
      : 'No single change that was tried would close it: more land, fewer pigs or a shorter season together may.';
  return { score, mend, changes };
}

function scoreSentences(problem: PlanProblem, plan: Plan): string[] {
  const rows = scoreStays(problem, plan.stays);
  const short = rows.map((row) => row.restShortDays).filter((days) => days > 0);
  const over = rows.map((row) => row.overLimitDays).filter((days) => days > 0);
  const { moves, strides } = plan.score;
  const sentences: string[] = [];
  if (short.length > 0) {
    const most = Math.max(...short);
    sentences.push(`Rest falls short on ${counted(short.length, 'move')}, ${counted(most, 'day')} at most.`);
  }
  if (over.length > 0) {
    const days = over.reduce((sum, n) => sum + n, 0);
    sentences.push(
      `The ground carries more than its limit on ${counted(days, 'day')} in ${counted(over.length, 'stay')}.`,
    );
  }
  if (short.length + over.length === 0) sentences.push(goodNews(problem));
  const far = strides > 0 ? `, ${strides} of them to a paddock that does not adjoin` : '';
  sentences.push(`${capital(counted(moves, 'move'))} in all${far}.`);
  return sentences;
}

function goodNews(problem: PlanProblem): string {
  const limit = problem.rules.groundLimit === undefined ? '' : ', and the ground limit is kept';
  return `Every paddock gets the rest it is due${limit}.`;
}

function findMends(problem: PlanProblem): string[] {
  const { groups, paddocks, rules } = problem;
  const size = groups.length * paddocks.length * (rules.seasonEnd - rules.seasonStart);
  const tries: Tries = { left: size > LARGE_FARM ? FEW_TRIES : MOST_TRIES };
  const found: string[] = [];
  const good = (plan: Plan): boolean => plan.score.restShortDays + plan.score.overLimitDays === 0;
  const sorts: PlanChange[][] = [
    [morePaddocks(problem)],
    [fewerHead(problem)],
    [shorterRest(problem)],
    [longerStay(problem)],
    moreMoveDays(problem).slice(0, 2),
  ];
  sorts.forEach((sort, i) => {
    const share: Tries = { left: Math.ceil(tries.left / (sorts.length - i)) };
    tries.left -= share.left;
    for (const change of sort) {
      const n = smallestChange(change, good, share);
      if (n === undefined) continue;
      found.push(change.words(n));
      break;
    }
    tries.left += share.left;
  });
  return found;
}
