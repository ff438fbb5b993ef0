import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import type { CellChange } from '../../../../shared/contract';
import type { Plan } from '../../../../shared/plan/model';
import { describeMoves, movesToCome } from '../../../../shared/table/describe-changes';
import type { RebuildInput } from '../../../../shared/table/rebuild-input';
import { REST_STAYS } from '../../../../shared/table/words';
import type { FarmNow } from '../../../../shared/tasks/happened/farm-now';
import { seasonAfter } from '../../../../shared/tasks/happened/season-after';
import { usePlan } from '../rotation/use-plan';
import { notWorkedOut } from '../rotation/words';
import * as words from './words';

/** As many changes as are shown. Judgement. */
const MOST = 4;

/**
 * What the rest of the season comes to with these cells changed, before they are. What would change without them, because
 * of what was recorded since the table was written, is left out and told.
 */
export function PlanAfter({ farm, cells }: { farm: FarmNow; cells: readonly CellChange[] }) {
  const before = useReplanned(farm, NONE);
  const after = useReplanned(farm, cells);
  return (
    <>
      <h3>In the plan</h3>
      {'still' in after ? after.still : 'still' in before ? before.still : <Changes {...{ before, after }} />}
    </>
  );
}

const NONE: readonly CellChange[] = [];

interface Replanned {
  readonly rebuild: RebuildInput;
  readonly plan: Plan;
}

function useReplanned(farm: FarmNow, cells: readonly CellChange[]): Replanned | { still: JSX.Element } {
  const season = useMemo(() => seasonAfter(farm, cells), [farm, JSON.stringify(cells)]);
  const planner = usePlan('problem' in season ? season.problem : undefined, () => undefined);
  if ('missing' in season) return { still: <p>{season.missing}</p> };
  if (planner.problem) return { still: <p>{notWorkedOut(planner.problem)}</p> };
  const { made, noPlan, stale } = planner;
  if (stale || (!made && !noPlan)) return { still: <p aria-live="polite">Working out what changes…</p> };
  if (!made || !season.rebuild) return { still: <p>{words.noPlanLeft(noPlan?.score.join(' '))}</p> };
  return { rebuild: season.rebuild, plan: made.plan };
}

function Changes({ before, after }: { before: Replanned; after: Replanned }) {
  const { rebuild, plan } = after;
  const changes = describeMoves(rebuild, plan, movesToCome(before.rebuild, before.plan));
  const older = describeMoves(before.rebuild, before.plan);
  return (
    <>
      {rebuild.notes.map((note) => (
        <p key={note} class="hint">
          {note}
        </p>
      ))}
      <ul>
        {changes.slice(0, MOST).map((change) => (
          <li key={change}>{change}</li>
        ))}
        {changes.length > MOST && <li>And {changes.length - MOST} more.</li>}
      </ul>
      {older[0] !== REST_STAYS && <p class="hint">{words.OLDER_CHANGES}</p>}
    </>
  );
}
