/** The sentences of what happened: why it cannot be recorded, and what to do. */
import { READ_AGAIN } from '../../block/words';

// What is missing, what has changed
export const NO_LOG = 'There is no herd log yet.';
export const LOG_FULL = 'The herd log has no row left: write it anew first, under “Keep the herd log”.';
export const NO_FREE_ROW =
  'The row under the moves is not free: write the table anew first, under “Plan the moves”.';
export const columnGone = (table: string, heading: string): string =>
  `The rotation table at ${table} has no column “${heading}” any more.`;
export const CHANGED_SINCE = `The sheet was changed after the page had read it. ${READ_AGAIN}`;
export const groupGone = (group: string): string => `“${group}” is not in the group list any more.`;
export const groupUnknown = (group: string): string =>
  `“${group}” is neither in the group list nor in the rotation table.`;
export const notInPaddocks = (paddock: string): string => `“${paddock}” is not in your paddock list.`;

// Moves
export const notInYet = (group: string): string =>
  `${group} has not come in yet: the day on which it does stands in your group list.`;
export const dayOrBefore = (today: string, got: string): string =>
  `The day must be ${today} or before, got ${got}: a move is recorded once it has happened.`;
export const newDayOrLater = (earliest: string, got: string): string =>
  `The new day must be ${earliest} or later, got ${got}.`;
export const seasonEnds = (end: string): string =>
  `The season ends on ${end}: the new day must be before it.`;
export const dayMustBe = (what: string, got: string): string => `The day must be ${what}, got ${got}.`;
export const dayAfter = (group: string, paddock: string, came: string, got: string): string =>
  `${group} came to ${paddock} on ${came}: the day must be after that, got ${got}.`;
export const ALL_DAYS_THERE = 'Every move up to today has its day already: nothing is to be written.';
export const noMove = (group: string): string => `No move of ${group} is planned. Nothing was written.`;
export const hasDay = (move: string): string => `${move} has a day already.`;
export const comesBefore = (move: string): string =>
  `${move} comes before it. If that move was left out, record first that it was skipped.`;
export const standsAlready = (group: string, paddock: string, since: string, isRecorded: boolean): string =>
  `${group} stands in ${paddock} since ${since}${isRecorded ? '' : ' as planned, no day typed'}. Two groups cannot stand in one paddock: record first where ${group} went.`;
export const CHOOSE_STAY = 'Choose the stay that the cover was left by.';
export const coverMust = (got: string): string => `Cover left must be in percent, from 0 to 100, got ${got}.`;

// Head and weight
export const GIVE_ONE = 'Give how many there are now, or what they weigh each.';
export const beforeItCame = (group: string, came: string): string =>
  `${group} came in on ${came}: a head from a day before that changes nothing. What the list says holds until then.`;
export const stillHasMoves = (group: string, paddock: string, day: string): string =>
  `${group} still has moves, the last into ${paddock} on ${day}. If all of them have gone, say so below.`;

// A paddock shut
export const lastDayMust = (from: string, got: string): string =>
  `The last day must be ${from} or later, got ${got}.`;
export const standsThere = (group: string, paddock: string, since: string): string =>
  `${group} stands in ${paddock} since ${since}: record first where it went.`;
export const shutAlready = (paddock: string, from: string, until: string | undefined): string =>
  `Your list says already that ${paddock} is shut from ${from}${until ? ` to ${until}` : ''}, and it has room for one such time: record this one once that is over, or clear those days.`;
