/** The sentences about the grower's lists: which is meant, what a row says, what can hardly be right. */
import { READ_AGAIN } from '../block/words';

type Kind = 'paddocks' | 'groups';
const ONE: Readonly<Record<Kind, string>> = { paddocks: 'paddock', groups: 'group' };

// A cell that the sheet is working out
export const STILL_LOADING = '“Loading...”: the sheet still works it out, so read it again in a moment';

// Which list, which column
export const whichIs = (cell: string, field: string, one: string, other: string): string =>
  `${cell}: which is the ${field}, ${one} or ${other}?`;
export const noHeadings = (a1: string, tab: string): string =>
  `No row of headings was found at or above ${a1} of “${tab}”. Select a cell of the list. If you have just typed there, press “Read the spreadsheet again” first.`;
export const otherTab = (before: string, now: string): string =>
  `The table was made from the list on “${before}”; that on “${now}” is read now.`;
export const headingLost = (heading: string, field: string): string =>
  `The heading “${heading}” stood for “${field}” and is not in the list any more: nothing is read for it. Choose another under “Which heading stands for what”.`;
export const liesOnSide = (range: string): string =>
  `The list at ${range} lies on its side, its names across. Type =TRANSPOSE(${range}) into cell A1 of a new tab and press “Read the spreadsheet again”: there it stands upright, and follows what you change here.`;
export const otherTable = (what: Kind, cell: string): string =>
  `Not read as ${what}: what stands from ${cell} on, as a table of its own.`;
export const anotherTable = (tab: string, row: number): string =>
  `“${tab}” holds another rotation table, a copy or an earlier one (headings in row ${row}). What is typed there does not count.`;
export const copiedTable = (tab: string, row: number): string =>
  `“${tab}” holds a rotation table without its name, as a copied tab does (headings in row ${row}). It is not read as a list and cannot be written anew: bring the tab that it was copied from back, or write a new table.`;
export const loneName = (cell: string, name: string, kind: Kind): string =>
  `${cell}: “${name}” has nothing beside it and is not read as a ${ONE[kind]}.`;
export const noColumn = (cell: string, kind: Kind, field: string, isArea: boolean): string =>
  `${cell}: the ${ONE[kind]} list must have a column for ${field}${isArea ? ' (or one for width and one for length)' : ''}; none was found`;
export const weightOfAll = (heading: string, cell: string): string =>
  ` (${heading} in ${cell} is the weight of all pigs together; that of one pig is needed)`;
export const emptyList = (cell: string, kind: Kind): string =>
  `${cell}: the list must hold at least one ${ONE[kind]}, got none`;
export const sameName = (cell: string, other: string, name: string): string =>
  `${cell}: name must differ from ${other}, got ${name} in both`;
export const unknownUnit = (
  cell: string,
  unit: string,
  heading: string,
  field: string,
  known: string,
): string => `${cell}: the unit ${unit} in ${heading} is not known for ${field}; write ${known}`;
export const noUnit = (cell: string, heading: string, unit: string): string =>
  `${cell}: ${heading} names no unit that is known here; its numbers are read in ${unit}.`;
export const movesNotRead = (cell: string): string =>
  `${cell}: the moves here are not read. Write where each group stands now, and since when, into columns “Paddock” and “Since” of the group list.`;
export const listsChanged = (lists: string): string => `Your lists have changed: ${lists}. ${READ_AGAIN}`;

export const isRecord = (tabs: readonly string[]): string =>
  `No list of groups was found, but a record on ${tabs.map((tab) => `“${tab}”`).join(' and ')}, the same groups again and again. What it says last:`;
export const inWords = (kind: Kind, tab: string, first: number, last: number): string =>
  `No headings stand above rows ${first} to ${last} of “${tab}”. Read as ${kind}, line by line:`;
export const saidLast = (
  group: string,
  head: number | undefined,
  weight: string | undefined | 0,
  place: string | undefined,
): string =>
  `${group}: ${[head === undefined ? 'no head' : `${head} pigs`, weight || 'no weight', place || 'no place'].join(', ')}`;

// What a row of a list says
export const readFromText = (readings: readonly string[]): string =>
  `Read from text: ${readings.join('; ')}.`;
export const belowTotal = (cell: string, name: string): string =>
  `${cell}: “${name}” stands below the total and is read like those above it.`;
export const maybeTotal = (cell: string, name: string): string =>
  `${cell}: “${name}” is as much as all rows above it together. If it adds them up, call it “Total”, for it is read like the others now.`;
export const dashed = (cell: string, name: string, field: string): string =>
  `${cell}: “${name}” has a dash for its ${field} and is left out.`;
export const notRead = (cell: string, got: string, field: string, name: string, must: string): string =>
  `${cell}: ${got} is not read as “${field}” of “${name}”: it must ${must}.`;
export const isShut = (cell: string, name: string, from?: string, until?: string): string =>
  `${cell}: “${name}” is shut${from ? ` from ${from}` : ''}${until ? ` to ${until}, that day included` : ' on'}: no pigs are planned there then.`;
export const readLikeOthers = (cell: string, text: string, name: string): string =>
  `${cell}: “${text}”: “${name}” is read like the others. If no pigs are to stand there, shut it.`;
export const isItOpen = (cell: string, text: string, paddock: string, which: string, day: string): string =>
  `${cell}: “${text}”: is “${paddock}” open ${which} ${day}?`;
export const chooseOpenFrom = (asked: string, column: string): string =>
  `${asked} Then choose column ${column} for “Open from”.`;
export const writeOpenUntil = (asked: string): string =>
  `${asked} Then write that day in a column “Open until”: remarks are not read for it.`;
export const standsWith = (cell: string, group: string, other: string): string =>
  `${cell}: “${group}” stands with “${other}” and is not counted. To count it, add its pigs to the head of “${other}”.`;
export const breedingStock = (cell: string, group: string, rest: string): string =>
  `${cell}: “${group}” is read as breeding stock: ${rest}.`;
export const NO_GAIN = 'no gain is counted for it where the list gives none';
export const BREEDING_UNWEIGHED = 'it has no weight and is left out; write a weight to have it planned';
export const BREEDING_ELSEWHERE =
  'it stands in none of the paddocks and is left out; write where it stands to have it planned';
const LEFT_OUT_UNTIL = 'It is left out of the plan until you say what is meant.';
export const noPaddock = (cell: string, group: string, place: string): string =>
  `${cell}: “${group}” stands in “${place}”, which is no paddock of your list. ${LEFT_OUT_UNTIL}`;
export const noStart = (cell: string, group: string, said: string): string =>
  `${cell}: “${said}” is no day on which “${group}” goes into the rotation. ${LEFT_OUT_UNTIL}`;
export const earlierYear = (tab: string, kind: Kind): string =>
  `“${tab}” looks like a tab of an earlier year: if your ${kind} of today stand elsewhere, click a cell there and press “This is my ${kind === 'paddocks' ? 'paddock' : 'group'} list”.`;
export const noPigs = (cell: string, group: string): string =>
  `${cell}: “${group}” has no pigs any more and is left out.`;
export const weightFromLog = (
  group: string,
  { cell, called, count }: { cell: string; called: string | undefined; count: number },
): string =>
  `The weight of “${group}” is read from ${cell}${called === undefined ? '' : ` (“${called}” there)`}${count > 1 ? `: the mean of ${count} weighed that day` : ''}.`;
export const weighedToday = (cell: string, group: string): string =>
  `${cell}: no day is given for the weight of “${group}”; it is taken as of today.`;
export const placeTaken = (cell: string, got: string, other: string): string =>
  `${cell}: stands in now must be a paddock of its own, got ${got} as for “${other}”`;

// What can hardly be right in the season
export const usedAhead = (cell: string, paddock: string, day: string): string =>
  `${cell}“${paddock}” was last used on ${day}, a day still to come: its rest is counted from that day.`;
export const closesBefore = (cell: string, paddock: string, day: string, start: string): string =>
  `${cell}“${paddock}” closes on ${day}, and the season begins on ${start}: no pigs are planned there.`;
export const opensAfter = (cell: string, paddock: string, day: string, end: string): string =>
  `${cell}“${paddock}” opens on ${day}, and the season ends on ${end}: no pigs are planned there.`;
export const leavesBefore = (cell: string, group: string, day: string, start: string): string =>
  `${cell}“${group}” leaves on ${day}, and the season begins on ${start}: no moves are planned for it.`;
export const comesAfter = (cell: string, group: string, day: string, end: string): string =>
  `${cell}“${group}” comes in on ${day}, and the season ends on ${end}: no moves are planned for it.`;
export const standsLong = (
  cell: string,
  group: string,
  paddock: string,
  since: string,
  days: number,
): string =>
  `${cell}“${group}” stands in “${paddock}” since ${since}, ${days} days. Has it moved since? Then change the paddock and the day.`;
export const oddWeight = (cell: string, group: string, weight: string): string =>
  `${cell}“${group}” weighs ${weight} a pig. Check that it is the weight of one pig, and its unit.`;
export const fastGain = (cell: string, group: string, gain: string): string =>
  `${cell}“${group}” gains ${gain}, more than growing pigs do. Check the number and its unit.`;
export const wasWeighed = (cell: string, group: string, day: string): string =>
  `${cell}“${group}” was weighed on ${day}`;
export const weighedAfter = (weighed: string, day: string): string =>
  `${weighed}, after it comes in (${day}). Check the date: weight, feed and water before the weighing are not known.`;
export const weighedLongBefore = (weighed: string, day: string, weight: string): string =>
  `${weighed}, long before it comes in (${day}), and is taken to weigh ${weight} by then. Check the date, or weigh again.`;

// Figures that are typed in the sidebar
export const figureMust = (name: string, field: string, must: string): string =>
  `${name}: ${field} must ${must}`;
export const typeOne = (field: string): string => `Type at least one ${field}.`;
