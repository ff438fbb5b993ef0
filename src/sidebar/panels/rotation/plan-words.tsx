import type { PlanWords } from '../../../../shared/plan/explain-plan';
import type { Plan } from '../../../../shared/plan/model';
import { Notice } from '../../parts/notice';

/** How good the plan is, and what would mend it. */
export function PlanWordsShown({ plan, words }: { plan: Plan; words: PlanWords | undefined }) {
  if (!words) return <p aria-live="polite">Looking for what would make it better…</p>;
  const sentences = words.score.map((sentence) => <p key={sentence}>{sentence}</p>);
  if (!fallsShort(plan)) return <Notice kind="done">{sentences}</Notice>;
  return (
    <Notice kind="warning">
      {sentences}
      {words.mend && <p>{words.mend}</p>}
    </Notice>
  );
}

/** Whether a paddock gets too little rest or the ground carries too much. */
export function fallsShort({ score }: Plan): boolean {
  return score.restShortDays + score.overLimitDays > 0;
}
