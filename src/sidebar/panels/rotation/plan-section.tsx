import type { Day } from '../../../../shared/core/calendar/day';
import { usePage } from '../../page';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import { AllMoves, NextMoves } from './moves-list';
import { SeasonDrawing } from './season-drawing';
import type { Planner } from './use-plan';

/** Works the plan out and shows it before anything is written. */
export function PlanSection({ planner, today }: { planner: Planner; today: Day }) {
  const { say } = usePage();
  const { busy, missing, made, noPlan, stale, problem } = planner;
  return (
    <>
      <Button
        kind="main"
        disabled={busy || missing !== undefined}
        onPress={() => {
          say('Working out the plan…');
          planner.plan();
        }}
      >
        {busy ? 'Working…' : 'Work out the plan'}
      </Button>
      {missing && <p class="hint">{missing}</p>}
      {problem && <Notice kind="problem">{problem}</Notice>}
      {stale && !busy && (
        <Notice kind="warning">
          The lists or rules have changed since. What follows is the old plan; work it out again.
        </Notice>
      )}
      {noPlan && (
        <Notice kind="problem">
          {noPlan.reason} {noPlan.mend}
        </Notice>
      )}
      {made && (
        <>
          <h3>Next moves</h3>
          <NextMoves problem={made.problem} plan={made.plan} today={today} />
          <h3>The season</h3>
          <SeasonDrawing problem={made.problem} plan={made.plan} />
          <AllMoves problem={made.problem} plan={made.plan} />
        </>
      )}
    </>
  );
}
