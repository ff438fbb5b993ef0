import type { Day } from '../../../../shared/core/calendar/day';
import { fallsShort, hasHardUse } from '../../../../shared/plan/explain-plan';
import type { PlanRules } from '../../../../shared/plan/model';
import type { PastRow } from '../../../../shared/table/model';
import type { Season } from '../../../../shared/tasks/rotation/season';
import type { UnitSystem } from '../../../../shared/units/units';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import { GroundUse } from './ground-use';
import { AllMoves, NextMoves } from './moves-list';
import { PlanWordsShown } from './plan-words';
import { SeasonDrawing } from './season-drawing';
import type { Made, Planner } from './use-plan';
import * as words from './words';

interface Props {
  readonly planner: Planner;
  readonly season: Season;
  readonly today: Day;
  /** Takes the rules of an offer into the form. */
  readonly onUse: (rules: PlanRules) => void;
}

/** The plan as it comes by itself, before anything is written. */
export function PlanSection({ planner, season, today, onUse }: Props) {
  const { busy, made, noPlan, stale, problem, isStopped } = planner;
  const isOld = stale && busy;
  return (
    <>
      {'missing' in season && <p class="hint">{season.missing}</p>}
      {problem && <Notice kind="problem">{words.notWorkedOut(problem)}</Notice>}
      {busy && <Working planner={planner} />}
      {(isStopped || problem) && (
        <Button kind="main" onPress={planner.plan}>
          Work out the plan
        </Button>
      )}
      {stale && !busy && <Notice kind="warning">{words.OLD_PLAN}</Notice>}
      <div class={isOld ? 'old-result' : undefined} inert={isOld}>
        {noPlan && <PlanWordsShown kind="problem" words={noPlan} onUse={onUse} />}
        {made && <PlanShown made={made} today={today} onUse={onUse} />}
      </div>
    </>
  );
}

/** The plan in one line that stays in sight while the rules are changed. */
export function PlanLine({ planner }: { planner: Planner }) {
  const { busy, made, noPlan, stale } = planner;
  const [first] = made?.words.score ?? noPlan?.score ?? [];
  if (busy) return <Working planner={planner} />;
  return first && !stale ? (
    <p>
      <strong>The plan:</strong> {first}
    </p>
  ) : null;
}

function Working({ planner: { share, made, stale, stop } }: { planner: Planner }) {
  const words = made && !stale ? 'Looking for what would make it better…' : 'Working it out…';
  return (
    <div class="working">
      <p>{words}</p>
      {share > 0 && (
        <div class="pair">
          <progress aria-label={words} value={share} />
          <Button onPress={stop}>Stop</Button>
        </div>
      )}
    </div>
  );
}

function PlanShown({ made, today, onUse }: { made: Made } & Pick<Props, 'today' | 'onUse'>) {
  const { problem, plan, words } = made;
  return (
    <>
      <h3>Next moves</h3>
      <NextMoves problem={problem} plan={plan} today={today} />
      <PlanWordsShown kind={kindOf(made)} words={words} onUse={onUse} />
    </>
  );
}

function kindOf({ problem, plan }: Made) {
  if (plan.stays.length === 0 || fallsShort(plan)) return 'warning';
  return hasHardUse(problem, plan) ? 'note' : 'good';
}

interface SeasonProps {
  readonly made: Made;
  /** Moves that happened. */
  readonly past: readonly PastRow[];
  readonly units: UnitSystem;
  readonly isOld: boolean;
}

/** The season as a picture, as a list, and by what it does to the ground. */
export function SeasonShown({ made: { problem, plan }, past, units, isOld }: SeasonProps) {
  return (
    <div class={isOld ? 'old-result' : undefined} inert={isOld}>
      <h2>The season</h2>
      <SeasonDrawing problem={problem} plan={plan} />
      <AllMoves problem={problem} plan={plan} />
      <h2>How hard the ground is used</h2>
      <GroundUse problem={problem} plan={plan} past={past} units={units} />
    </div>
  );
}
