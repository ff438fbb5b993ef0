/** The sentences that every task says alike. */
import { READ_AGAIN } from '../block/words';

// What has changed since the file was read
export const tabGone = (tab: string): string =>
  `There is no tab named “${tab}” any more. Read the spreadsheet again.`;
export const NO_TABLE = 'There is no rotation table yet. Choose “Plan the moves” first.';
export const TABLE_GONE = 'The table is gone from the file. Press “Read the spreadsheet again”.';
export const meanwhileStands = (tab: string): string =>
  `Meanwhile a table of this kind already stands on “${tab}”. ${READ_AGAIN}`;
export const changedSince = (what: string): string =>
  `${what} was changed in the sheet after the page had read it. ${READ_AGAIN}`;
export const rotationTable = (tab: string): string => `The rotation table on “${tab}”`;
export const notAsked = (wrong: string, asked: string): string =>
  `The form does not ask for ${wrong}. It asks for: ${asked}.`;

// What is asked
export const isNewName = (is: string, was: string): string => `Is ${is} the new name of ${was}?`;

// Where a table goes, and in what units
export const AT_CELL = 'In the empty area at the selected cell';
export const NAME_NEEDED = 'The new tab needs a name.';
export const NAME_TAKEN = 'There is already a tab of this name. Choose another.';
export const NEW_TAB_FOR_UNITS = 'Write the table on a new tab to change them.';

// What a form or a list is asked
export const oneOf = (kind: string, tab: string): string => `“${kind}” must be the tab of one, got “${tab}”`;
export const answerWithText = (label: string): string => `“${label}” must be answered with a text`;
export const oneOfThese = (label: string, options: string, got: string): string =>
  `“${label}” must be one of ${options}, got “${got}”`;
export const mustBeNumber = (cell: string, label: string, got: string): string =>
  `${cell}: ${label} must be a number, got ${got}`;
export const leftOutTotals = (cells: string): string => `Left out as totals: ${cells}.`;

export const ENDS_AFTER = 'The season must end after it starts.';

// Rows below a table
/** Tables are read back by these two, so they stay as they are. */
export const FOR_MORE_ROWS = 'For more rows, write this table anew from the sidebar.';
export const NOT_COUNTED_YET =
  'Rows below this line are not counted yet: write this table anew from the sidebar.';

// The sample farm
export const listsStand = (tabs: string, why: string): string =>
  `The lists stand on ${tabs}; the rest of the sample could not be written. ${why}`;

// How many live wires
export const strandsByWeight = (growingFrom: string): string =>
  `By the lightest pig: two for growing pigs and sows (extension FAQ, second hand); three under ${growingFrom} (judgement).`;
export const tooFewStrands = (growingFrom: string): string =>
  `pigs under ${growingFrom} take three strands, or they slip under or through (judgement).`;

// Look out, wherever a live wire is
export const ELECTRIC_CAUTION =
  'The energizer’s manual and local codes decide. Keep head, neck and body off the wire. One energizer, one circuit a fence, 2.5 m (8 ft) from the next; ground rods 10 m (33 ft) from supply and telephone earths; no live barbed wire, never mains on a fence.';
