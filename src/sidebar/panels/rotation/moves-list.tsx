import type { Day } from '../../../../shared/core/calendar/day';
import type { Plan, PlanProblem, Stay } from '../../../../shared/plan/model';
import { count, dayWords } from '../../parts/day-words';
import { ScrollRegion } from '../../parts/scroll-region';
import * as words from './words';

const SHOWN_AHEAD = 3;

/** The next moves from today on; the first ones of the season where it has not begun. */
export function nextStays(plan: Plan, today: Day): readonly Stay[] {
  return plan.stays.filter(({ inDay }) => inDay >= today).slice(0, SHOWN_AHEAD);
}

export function NextMoves({ problem, plan, today }: { problem: PlanProblem; plan: Plan; today: Day }) {
  const next = nextStays(plan, today);
  if (next.length === 0) return <p>{words.NO_MOVES_LEFT}</p>;
  return (
    <ol class="next">
      {next.map((stay) => (
        <li key={`${stay.group}-${stay.inDay}`}>
          <strong>{dayWords(stay.inDay)}</strong>: {problem.groups[stay.group]?.name} to{' '}
          <strong>{problem.paddocks[stay.paddock]?.name}</strong>, for{' '}
          {count(stay.outDay - stay.inDay, 'day')}
        </li>
      ))}
    </ol>
  );
}

/** All moves in words: the same as the drawing. */
export function AllMoves({ problem, plan }: { problem: PlanProblem; plan: Plan }) {
  return (
    <details>
      <summary>All {count(plan.stays.length, 'move')} as a list</summary>
      <ScrollRegion label="All moves">
        <table>
          <thead>
            <tr>
              <th scope="col">In</th>
              <th scope="col">Group</th>
              <th scope="col">Paddock</th>
              <th scope="col">Days</th>
            </tr>
          </thead>
          <tbody>
            {plan.stays.map((stay) => (
              <tr key={`${stay.group}-${stay.inDay}`}>
                <td>{dayWords(stay.inDay)}</td>
                <td>{problem.groups[stay.group]?.name}</td>
                <td>{problem.paddocks[stay.paddock]?.name}</td>
                <td class="number">{stay.outDay - stay.inDay}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
    </details>
  );
}
