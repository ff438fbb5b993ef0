/** The sentences of the rotation table and of the list for the barn door. */
import { counted } from '../plan/words';

// The table's head
export const TYPE_DAY =
  'Yellow cells are yours. Moved? Type the day under Moved in, or the word skipped; the later moves shift.';
export const othersBelow = (more: number): string => ` (${more} more below the settings)`;

// Beside its settings
export const BEFORE_CHANGES =
  'Write the table anew before head or weights in your list change, so that the past keeps its figures.';

// The list for the barn door
/** Common practice, no source, save for what the energizer's manual says. */
export const REMINDERS: readonly string[] = [
  'Switch the energizer off before you touch or shift wire; its manual comes first.',
  'Set up and test the next fence before the pigs are let in; check the voltage again when they are in.',
  'Trained pigs refuse to cross a place where a wire stood: open where none has been (common practice, no source).',
  'Water first, then pigs; shade and wallow on hot days. Never move heavy pigs alone.',
];

// What is read of the table
export const noHeadings = (cell: string): string =>
  `${cell}: the table must have its headings (Group, Paddock, …), not found`;
export const mustBeGiven = (cell: string, heading: string): string =>
  `${cell}: ${heading} must be given where a day moved in is typed, got a blank`;
export const badMovedIn = (cell: string, word: string, got: string): string =>
  `${cell}: moved in must be a date, or the word ${word}, got ${got}`;
export const movedInMustBe = (cell: string, what: string, got: string): string =>
  `${cell}: moved in must be ${what}, got ${got}`;
export const takenFromLists = (move: string, more: number): string =>
  `Head, weight or area was missing in ${andMore(move, more)}: it is taken from the lists as they are now.`;
export const otherColumn = (move: string, more: number): string =>
  `Formulas of the table show another column of your lists (${andMore(move, more)}): what the lists say is written instead. Have columns of a list changed places?`;
export const notInLists = (name: string, move: string, more: number): string =>
  `“${name}” is not in your lists, and head, weight or area is missing in ${andMore(move, more)}. Where it has another name now, write that name into the table before you write it anew, or these figures stay blank.`;
export const notInPaddocks = (paddock: string, row: number, day: string): string =>
  `“${paddock}” (row ${row}, until ${day}) is not in the paddock list, so its stays count as no use of any paddock. Where it is a paddock of the list under another name, write the name as in the list.`;
const andMore = (move: string, more: number): string =>
  more === 0 ? move : `${move} and ${counted(more, 'more move')}`;
export const wishNotListed = (paddock: string, row: number): string =>
  `“${paddock}” (row ${row}) is not in the paddock list: the plan does not go by it. Write the name as in the list, or clear the cell.`;
export const fixedFigures = (cells: string): string =>
  `A change of these figures counts only once the table is written anew: ${cells}. They are text, in another unit than the table, in a column with a cell that NOW() or RAND() changes, or on a tab or by a name that no formula can look up.`;

// What was typed on it
export const goesAlong = (moves: string): string =>
  `What was typed beside these moves goes along to another day: ${moves}.`;
export const toDay = (move: string, day: string): string => `${move} (to ${day})`;
export const daysStay = (moves: string): string =>
  `Days typed on moves to come stay, and the group’s later moves shift with them: ${moves}.`;
export const daysPlanned = (move: string, days: number, planned: number): string =>
  `${move} (${days}; the plan was made with ${planned})`;
export const pastDays = (moves: string): string =>
  `Days of past moves are set to the days up to the group’s next move: ${moves}.`;
export const daysBecome = (move: string, before: number, days: number | undefined): string =>
  `${move} (${before} becomes ${days})`;
export const countedDone = (moves: string): string =>
  `Counted as done on the planned day, for a later move of the group has a day typed: ${moves}. Where a stop was left out, type skipped instead of the day.`;

// What changes when it is written anew
export const REST_STAYS = 'The rest of the plan stays as it is.';
export const groupGone = (group: string): string => `${group} is not in the group list any more.`;
export const headKept = (group: string, moves: number, head: string): string =>
  `${group}: ${counted(moves, 'move')} that ${moves === 1 ? 'has happened is' : 'have happened are'} kept from now on with ${head} head, as your list says now.`;
export const leaves = (group: string, paddock: string, day: string, before: string): string =>
  `${group} leaves ${paddock} on ${day}, not on ${before}.`;
export const instead = (group: string, is: string, was: string, more: number): string =>
  `${group}: ${is} instead of ${was}, and on from there.${more === 0 ? '' : ` ${counted(Math.abs(more), 'move')} ${more > 0 ? 'more' : 'fewer'} in all.`}`;
export const moreFrom = (group: string, moves: number, from: string): string =>
  `${group}: ${counted(moves, 'move')} more, from ${from} on.`;
export const fewerFrom = (group: string, moves: number, from: string): string =>
  `${group}: ${counted(moves, 'move')} fewer, from ${from} on.`;
interface Units {
  readonly mass: string;
  readonly area: string;
}
export const unitsChange = (before: Units, now: Units): string =>
  `The table changes from ${before.mass} and ${before.area} to ${now.mass} and ${now.area}. Moves that have happened are converted; numbers of your lists without a unit are read as ${now.mass}, ${now.area} and so on from now on. If the pigs were weighed in ${before.mass}, choose the units again.`;
export const UNITS_POINT =
  'Formulas of yours that point at the table get numbers in the other unit. A budget that reads the table is wrong until it is written anew.';
export const paddockGone = (group: string, paddock: string, since: string, end: string): string =>
  `${group} stands in ${paddock} since ${since}, which is not in the paddock list any more: its stay there ends on ${end}, and by the new plan it comes in anew.`;
export const overdue = (group: string, moves: number, taken: string): string =>
  `${group}: ${counted(moves, 'move')} planned before today ${moves === 1 ? 'has' : 'have'} no day moved in; by the new plan the group ${taken}.`;
export const stillStands = (paddock: string, since: string): string =>
  `still stands in ${paddock} since ${since}`;
export const NOT_IN_YET = 'has not come in yet';
export const typedAhead = (group: string, from: string, to: string): string =>
  `${group} has no place from ${from} to ${to}: a day moved in is typed ahead, and the plan begins on it. Clear that day, or give the group a place until then.`;
export const bothStand = (groups: string, paddock: string): string =>
  `${groups} both stand in ${paddock} by their last typed moves: correct one of them.`;
