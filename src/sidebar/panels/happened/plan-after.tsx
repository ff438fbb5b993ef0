import { useMemo } from 'preact/hooks';
import type { CellChange } from '../../../../shared/contract';
import { describeMoves } from '../../../../shared/table/describe-changes';
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
 * of what was recorded since the table was written, is said apart.
 */
export function PlanAfter({ farm, cells }: { farm: FarmNow; cells: readonly CellChange[] }) {
  const before = useReplanned(farm, NONE);
  const after = useReplanned(farm, cells);
  return (
    <>
      <h3>In the plan</h3>
      {'still' in after ? (
        after.still
      ) : (
        <Changes after={after} before={'still' in before ? [] : before.changes} />
      )}
    </>
  );
}

const NONE: readonly CellChange[] = [];

function useReplanned(farm: FarmNow, cells: readonly CellChange[]) {
  const season = useMemo(() => seasonAfter(farm, cells), [farm, JSON.stringify(cells)]);
  const planner = usePlan('problem' in season ? season.problem : undefined, () => undefined);
  if ('missing' in season) return { still: <p>{season.missing}</p> };
  if (planner.problem) return { still: <p>{notWorkedOut(planner.problem)}</p> };
  const { made, noPlan, stale } = planner;
  if (stale || (!made && !noPlan)) return { still: <p aria-live="polite">Working out what changes…</p> };
  if (!made || !season.rebuild) return { still: <p>{words.noPlanLeft(noPlan?.score.join(' '))}</p> };
  return { notes: season.rebuild.notes, changes: describeMoves(season.rebuild, made.plan) };
}

interface ChangesProps {
  readonly after: { readonly notes: readonly string[]; readonly changes: readonly string[] };
  readonly before: readonly string[];
}

function Changes({ after: { notes, changes }, before }: ChangesProps) {
  const own = changes.filter((change) => !before.includes(change));
  const older = changes.length - own.length;
  const shown = own.length > 0 ? own : [REST_STAYS];
  return (
    <>
      {notes.map((note) => (
        <p key={note} class="hint">
          {note}
        </p>
      ))}
      <ul>
        {shown.slice(0, MOST).map((change) => (
          <li key={change}>{change}</li>
        ))}
        {shown.length > MOST && <li>And {shown.length - MOST} more.</li>}
      </ul>
      {own.length > 0 && older > 0 && <p class="hint">{words.olderChanges(older)}</p>}
    </>
  );
}
