/** The sentences about the grower’s lists on the page. */
import type { ListKind } from '../../../shared/lists/model';
import { fromInside, symbolOf, type UnitSystem } from '../../../shared/units/units';
import { formatNumber } from '../numbers/format-number';
import { count } from '../parts/day-words';
import type { Lists } from './use-lists';

// How many were read
export function paddockWords({ paddocks }: Lists, units: UnitSystem): string {
  const area = paddocks.reduce((sum, { areaSquareMeters }) => sum + areaSquareMeters, 0);
  const words = `${formatNumber(fromInside(area, 'area', units))} ${symbolOf('area', units)}`;
  return `${count(paddocks.length, 'paddock')} read, ${words} in all.`;
}

export function groupWords({ groups }: Lists): string {
  const head = groups.reduce((sum, group) => sum + group.head, 0);
  return `${count(groups.length, 'group')} read, ${count(head, 'pig')} in all.`;
}

// Which list, which column
export const whichIs = (field: string, tab: string): string => `Which is the ${field} on “${tab}”?`;
export const SELECT_CELL = 'Select any cell of it in the sheet, then press the button.';
export const PADDOCK_HEADINGS =
  'It needs a row of headings such as “Paddock” and “Area (ac)” (or “Width (ft)” and “Length (ft)”), and a row for each paddock.';
export const GROUP_HEADINGS =
  'It needs a row of headings such as “Group”, “Head”, “Weight (lb)” and “Weighed on”, and a row for each group.';
export const NEEDED = 'Needed: choose the column that holds it.';
export const UNIT_GOES_BEFORE = 'A unit in a heading, such as “Area (ha)”, goes before this choice.';
export const toPutRight = (things: string): string =>
  `${things} to put right in the sheet. Then press “Read the spreadsheet again”.`;

export const IN_CASE = 'In your lists, in case it is not meant:';

// What the lists lack
export const doneColumn = (column: string, tab: string): string =>
  `Done: written into column ${column} of “${tab}”.`;
export const newColumn = (heading: string, cell: string): string =>
  `The list has no column for it: “${heading}” is written into ${cell}, at its right edge. `;
export const WEIGHED_TODAY = 'A weight without a day of weighing gets today’s. ';
export const LEFT_BLANK = 'What you leave blank stays as it is. A dash leaves one out of the plan.';
export const doneList = (area: string, tab: string, kind: ListKind): string =>
  `Done: the list of ${kind} stands at ${area} of “${tab}”.`;
export const listGoesTo = (area: string, tab: string): string =>
  `It is written to ${area} of “${tab}”, beside what stands there, where you can change it.`;
export const shut = (paddock: string, day: string, tab: string): string =>
  `Done: “${paddock}” is shut from ${day} in “${tab}”.`;
export const placed = (group: string): string => `Done: written beside “${group}” in your group list.`;
export const INTO_FROM = 'Written into the column “In rotation from” of your list: a dash, or today.';
export const dayToCome = (today: string, typed: string): string =>
  `The day must be ${today} or before, got ${typed}. Nothing was written.`;
export const doneDay = (typed: string, cells: string): string => `Done: ${typed} is written into ${cells}.`;
export const whenWeighed = (groups: string): string =>
  `When were ${groups} weighed? Until a day stands beside the weight it counts as today’s, every day anew: the pigs gain nothing.`;

// A sample farm
export const WRITING_SAMPLE = 'Writing the sample farm…';
export const SAMPLE_DONE = 'Done: the sample farm.';
export const NO_LISTS_YET =
  'No lists yet? Add an invented farm on new tabs and try with it: lists, herd log, rotation table and today’s page, in the middle of a season, with one move late.';
export const TAKES_SECONDS = 'Writing it takes some seconds…';
