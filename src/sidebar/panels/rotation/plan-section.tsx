import type { Day } from '../../../../shared/core/calendar/day';
import { groupsLeftOut } from '../../../../shared/plan/groups-left-out';
import { growthNotes } from '../../../../shared/plan/growth-notes';
import { usePage } from '../../page';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import { AllMoves, NextMoves } from './moves-list';
import { PlanWordsShown } from './plan-words';
import type { Season } from './season';
import { SeasonDrawing } from './season-drawing';
import type { Made, Planner } from './use-plan';

interface Props {
  readonly planner: Planner;
  readonly season: Season;
  readonly today: Day;
}

/** Works the plan out and shows it before anything is written. */
export function PlanSection({ planner, season, today }: Props) {
  const { say } = usePage();
  const { busy, made, noPlan, stale, problem } = planner;
  const missing = 'missing' in season ? season.missing : undefined;
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
          The lists, the rules or the table have changed since. What follows is the old plan; work it out
          again.
        </Notice>
      )}
      {noPlan && (
        <Notice kind="problem">
          {noPlan.reason} {noPlan.mend}
        </Notice>
      )}
      {made && <PlanShown made={made} today={today} />}
    </>
  );
}

function PlanShown({ made: { problem, plan, words }, today }: { made: Made; today: Day }) {
  return (
    <>
      <h3>Next moves</h3>
      <NextMoves problem={problem} plan={plan} today={today} />
      <PlanWordsShown plan={plan} words={words} />
      {[...groupsLeftOut(problem), ...growthNotes(problem, plan)].map((note) => (
        <Notice key={note} kind="note">
          {note}
        </Notice>
      ))}
      <h3>The season</h3>
      <SeasonDrawing problem={problem} plan={plan} />
      <AllMoves problem={problem} plan={plan} />
    </>
  );
}
