import type { Day } from '../../../../shared/core/calendar/day';
import type { Card } from '../../../../shared/tasks/happened/farm-now';
import { count, dayWords } from '../../parts/day-words';

/** "In North 2 since Fri 3 Jul." */
export function standsWords({ at, isRecorded, hasLeft }: Card): string {
  if (!at) return 'Not in yet.';
  if (hasLeft) return `Left ${at.paddock} on ${dayWords(at.out!)}; the moves are over.`;
  return `In ${at.paddock} since ${dayWords(at.inDay!)}${isRecorded ? '' : ', as planned: no day typed'}.`;
}

/** "Next: North 3 on Mon 6 Jul, in 2 days." Of a card with a next move. */
export function nextWords({ next, at, isRecorded }: Card, today: Day): string {
  const { paddock, inDay = today } = next!;
  if (next === at && !isRecorded) return `The move to ${paddock} has no day yet.`;
  const late = today - inDay;
  const when = late === 0 ? 'today' : late > 0 ? `${count(late, 'day')} late` : `in ${count(-late, 'day')}`;
  return `Next: ${paddock} on ${dayWords(inDay)}, ${when}.`;
}
