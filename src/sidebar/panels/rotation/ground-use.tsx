import { firstFew } from '../../../../shared/block/first-few';
import type { Plan, PlanProblem, Stay } from '../../../../shared/plan/model';
import { loadSpread } from '../../../../shared/plan/stay-loads';
import type { PastRow } from '../../../../shared/table/model';
import { seasonUse } from '../../../../shared/table/season-use';
import { fromInside, symbolOf, type UnitSystem } from '../../../../shared/units/units';
import { count, dayWords } from '../../parts/day-words';
import * as words from './words';

interface Props {
  readonly problem: PlanProblem;
  readonly plan: Plan;
  readonly past: readonly PastRow[];
  readonly units: UnitSystem;
}

/** The load of the stays to come, and of each paddock over the season, as bars with their numbers in words. */
export function GroundUse({ problem, plan, past, units }: Props) {
  const use = seasonUse(problem, plan, past);
  const most = Math.max(...use.map(({ load }) => load));
  const spread = loadSpread(problem, plan.stays);
  if (!spread || most <= 0) return null;
  const unit = symbolOf('loadPerArea', units);
  const place = ({ paddock, inDay }: Stay): string =>
    `${problem.paddocks[paddock]?.name} from ${dayWords(inDay)}`;
  return (
    <>
      <p>
        {words.useOf(units === 'US' ? 'acre' : 'hectare', unit)}
        <strong>{loadWords(spread.median, units)}</strong> in the middle and{' '}
        <strong>{loadWords(spread.worst, units)}</strong> at most: {place(spread.worstStay)}.
      </p>
      {spread.hard.length > 0 && (
        <p>
          {words.hard(
            count(spread.hard.length, 'stay bears', 'stays bear'),
            firstFew(spread.hard.map(({ stay }) => place(stay))),
          )}
        </p>
      )}
      <p>{words.WHOLE_SEASON}</p>
      <ul class="bars">
        {use.map(({ load, stays, days, cover }, p) => (
          <li key={problem.paddocks[p]?.name} class="use">
            <span>{problem.paddocks[p]?.name}</span>
            <span class="bar-words">
              {stays === 0
                ? 'not used'
                : `${loadWords(load, units)} in ${count(stays, 'stay')}, ${count(days, 'day')}`}
              {cover !== undefined && `; cover left ${Math.round(100 * cover)} %`}
            </span>
            <span class="bar" style={{ width: `${(100 * load) / most}%` }} />
          </li>
        ))}
      </ul>
    </>
  );
}

/** A load in the grower's unit, three digits of it: more would say more than is known. */
function loadWords(load: number, units: UnitSystem): string {
  return Number(fromInside(load, 'loadPerArea', units).toPrecision(3)).toLocaleString();
}
