import { useEffect, useRef, useState } from 'preact/hooks';
import { type PlanWords, plainWords } from '../../../../shared/plan/explain-plan';
import type { NoPlan, Plan, PlanProblem } from '../../../../shared/plan/model';
import type { PlanNews } from '../../../../shared/plan/plan-news';
import type { Planned } from '../../../../shared/tasks/rotation/rotation-task';
import type { Made as PlanMade } from '../../../../shared/tasks/rotation/table-input';
import { usePage } from '../../page';
import { runPlan } from '../../planner/run-plan';
import * as words from './words';

/** What is typed is worked out when the typing has paused for so long; judgement. */
const PAUSE_MS = 400;

/** A plan with its words. */
export interface Made extends PlanMade {
  readonly words: PlanWords;
}

export interface Planner {
  readonly made: Made | undefined;
  /** Why there is no plan, in words. */
  readonly noPlan: PlanWords | undefined;
  /** Lists, rules or typed moves have changed since the plan was made. */
  readonly stale: boolean;
  /** A plan, or what would mend it, is being looked for. */
  readonly busy: boolean;
  /** Share of that work done, 0 to 1. */
  readonly share: number;
  /** The grower stopped it. */
  readonly isStopped: boolean;
  /** Why the planner broke. */
  readonly problem: string | undefined;
  readonly plan: () => void;
  readonly stop: () => void;
}

interface Result {
  /** The problem as text, to see whether it is still the same. */
  readonly of: string;
  readonly problem: PlanProblem;
  readonly outcome: Plan | NoPlan;
  readonly words: PlanWords;
  /** Whether what would mend it has been looked for. */
  readonly isExplained: boolean;
}

interface Run {
  readonly of: string;
  readonly state: 'busy' | 'done' | 'stopped' | 'failed';
  readonly share: number;
  readonly problem?: string;
}

/** Plans by itself whenever the problem is another one. `onFound`: once it is there, with what would mend it. */
export function usePlan(problem: PlanProblem | undefined, onFound: (planned: Planned) => void): Planner {
  const [result, setResult] = useState<Result>();
  const [run, setRun] = useState<Run>();
  const stopRun = useRef<() => void>(() => undefined);
  const { say } = usePage();
  const key = JSON.stringify(problem ?? null);
  const isAnswered = result?.of === key && result.isExplained;

  const hear = (of: PlanProblem, news: PlanNews): void => {
    if (news.kind === 'share') {
      setRun((now) => now && { ...now, share: news.share });
    } else if (news.kind === 'plan') {
      const { outcome } = news;
      setResult({ of: key, problem: of, outcome, words: plainWords(of, outcome), isExplained: false });
      say('stays' in outcome ? words.READY : words.NO_PLAN);
    } else {
      setResult((now) => now && { ...now, words: news.words, isExplained: true });
      setRun((now) => now && { ...now, state: 'done' });
    }
  };
  const begin = (): void => {
    if (!problem) return;
    stopRun.current();
    setRun({ of: key, state: 'busy', share: 0 });
    stopRun.current = runPlan(problem, {
      hear: (news) => hear(problem, news),
      fail: (message) => setRun({ of: key, state: 'failed', share: 0, problem: message }),
    });
  };
  useEffect(() => {
    if (!problem || isAnswered) return;
    const timer = setTimeout(begin, result ? PAUSE_MS : 0);
    return () => {
      clearTimeout(timer);
      stopRun.current();
    };
  }, [key]);

  const own = run?.of === key ? run : undefined;
  const busy = problem !== undefined && !isAnswered && (!own || own.state === 'busy');
  useEffect(() => {
    if (result?.of !== key || busy) return;
    const { problem: of, outcome, words } = result;
    onFound({ problem: of, outcome, words });
  }, [key, busy, result]);
  return {
    made: result && madeOf(result),
    noPlan: result && 'reason' in result.outcome ? result.words : undefined,
    stale: result !== undefined && result.of !== key,
    busy,
    share: own?.share ?? 0,
    isStopped: own?.state === 'stopped',
    problem: own?.problem,
    plan: begin,
    stop: () => {
      stopRun.current();
      setRun({ of: key, state: 'stopped', share: 0 });
      say('Stopped.');
    },
  };
}

function madeOf({ problem, outcome, words }: Result): Made | undefined {
  return 'stays' in outcome ? { problem, plan: outcome, words } : undefined;
}
