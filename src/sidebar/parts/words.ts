/** The sentences that every task says alike: what was typed, where a table goes. */
// What was typed stays
export const movesBelow = (cells: string): string =>
  `No place is left for these in the new table, so they move below it: ${cells}.`;
export const staysTyped = (cells: string): string =>
  `What you typed over cells of the table stays: ${cells}.`;
export const gaveWay = (cells: string): string =>
  `Ours stands again in place of what you had typed: ${cells}.`;
export const keptBelow = (cells: string): string => `Kept below the table, where it has no place: ${cells}.`;
export const taken = (cells: string): string =>
  `The table grows, and something of yours stands in its way: ${cells}. Move it first, further down or onto another tab. Until then nothing is written.`;
export const beside = (from: string): string =>
  `What stands beside the table, from ${from} on, is yours and does not move with its rows: see that it still stands in the right ones.`;
export const astray = (cells: string, isDone = false): string =>
  `Rows of the table ${isDone ? 'have moved' : 'will move'}. These cells of yours point into it and ${isDone ? 'may now' : 'will then'} mean another row: ${cells}. Look at them, or let them look a row up by what stands in it.`;

// A cell that a sentence names
export const SELECT_IT = 'Select it in the sheet';
export const selected = (cell: string): string => `${cell} is selected in the sheet.`;

// Where a table goes
export const SELECT_CORNER =
  'In the sheet, first select the cell for the upper left corner. Nothing that stands there is written over.';
export const passedOver = (tabs: string): string => `Passed over, for it holds no cells: ${tabs}.`;
export const STILL_MISSING = 'Something above is still missing or wrong.';
export const standsOn = (tab: string, takenIn: string): string =>
  `It stands on “${tab}” and is written anew there; what you typed is kept or named. ${takenIn}`;
export const COLUMNS_JOIN =
  'Your own columns right beside it become part of it, so that they move with its rows.';
export const ROW_JOINS = 'The filled row right below it becomes part of it.';
export const rowsJoin = (rows: number): string => `The ${rows} filled rows right below it become part of it.`;
export const apart = (cell: string): string =>
  `What stands from ${cell} on is not part of this table and does not count. Rows that belong to it stand right below its last row, nothing between.`;
export const next = (tasks: string): string => `Next: ${tasks}`;
export const WRITTEN_WITH_LOG =
  'Written with the log by the button above. In the sheet you can type rows yourself.';
export const PUT_RIGHT = 'To put right in the sheet first:';
