import { useMemo } from 'preact/hooks';
import type { CellChange } from '../../../../shared/contract';
import { describeMoves } from '../../../../shared/table/describe-changes';
import type { FarmNow } from '../../../../shared/tasks/happened/farm-now';
import { seasonAfter } from '../../../../shared/tasks/happened/season-after';
import { usePlan } from '../rotation/use-plan';
import { notWorkedOut } from '../rotation/words';
import * as words from './words';

/** As many changes as are shown. Judgement. */
const MOST = 4;

/** What the rest of the season comes to with these cells changed, before they are. */
export function PlanAfter({ farm, cells }: { farm: FarmNow; cells: readonly CellChange[] }) {
  const season = useMemo(() => seasonAfter(farm, cells), [farm, JSON.stringify(cells)]);
  const planner = usePlan('problem' in season ? season.problem : undefined, () => undefined);
  return (
    <>
      <h3>In the plan</h3>
      {changesIn(season, planner)}
    </>
  );
}

function changesIn(season: ReturnType<typeof seasonAfter>, planner: ReturnType<typeof usePlan>) {
  if ('missing' in season) return <p>{season.missing}</p>;
  if (planner.problem) return <p>{notWorkedOut(planner.problem)}</p>;
  const { made, noPlan, stale } = planner;
  if (stale || (!made && !noPlan)) return <p aria-live="polite">Working out what changes…</p>;
  if (!made || !season.rebuild) return <p>{words.noPlanLeft(noPlan?.score.join(' '))}</p>;
  const changes = describeMoves(season.rebuild, made.plan);
  return (
    <>
      {season.rebuild.notes.map((note) => (
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
    </>
  );
}
