/** The sentences of the page “What happened”. */
import type { Day } from '../../../../shared/core/calendar/day';
import type { Card } from '../../../../shared/tasks/happened/farm-now';
import { count, dayWords } from '../../parts/day-words';

// Where a group stands, what is next

/** "In North 2 since Fri 3 Jul." */
export function standsWords({ at, isRecorded, hasLeft, head }: Card): string {
  if (head === 0) return 'None left, as the herd log has it.';
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

export const NO_MOVE_PLANNED = 'No move is planned.';
export const UNPLANNED_NOTE =
  'The rest of the table and today’s page know of it once the table is written anew.';
export const COVER_NOTE = 'How much of the ground is still covered by plants or litter, by eye.';
export const SHUT_NOTE =
  'The last day; blank for the rest of the season. This goes into your own paddock list.';
export const HEAD_NOTE = 'Sold, died, joined: how many there are now.';
export const ALL_GONE = 'All of them have gone: their moves to come fall away';
export const LOG_NOTE =
  'Heads and weights go into a herd log, a tab of its own. It begins with what your group list says.';
export const BY_HAND =
  'All of this can be typed as well, also on the phone: the day, or the word skipped, under Moved in; another paddock; Days of the stay; Cover left; a row of the herd log; a move that nobody planned in the blank row under the moves. A move without a day counts as done once a later one of its group has one. Then write the table anew (“Plan the moves”) to plan the rest.';
/** The task that plans them. */
export const PLAN_TASK = 'Plan the moves';
export const PLAN_ANEW = 'Plan the rest anew';
export const OLDER_CHANGES = 'Other changes come from what was recorded before.';
export const noPlanLeft = (why: string | undefined): string => `With this no plan is left: ${why}`;
