/** The sentences of the script. A text that ends the work says what was (not) written and what to do. */
const NOTHING = 'Nothing was written.';
const NOT_CLEARED = 'Nothing was cleared.';
const READ_AGAIN = 'Read the spreadsheet again.';

// What a write is turned down for; what then stands in the sheet
export const tableStands = (tab: string, area: string): string =>
  `A table of this kind already stands on "${tab}" at ${area}. Write it anew there, or delete that tab first. ${NOTHING}`;
export const newTabName = (most: number): string =>
  `The new tab needs a name of 1 to ${most} letters. ${NOTHING}`;
export const tabTaken = (tab: string): string =>
  `There is already a tab named "${tab}". Choose another name. ${NOTHING}`;
export const TABLE_GONE = `The table is no longer in this file. Write it on a new tab. ${NOTHING}`;
export const tableChanged = (tab: string): string =>
  `The table on "${tab}" was changed after it was read here. ${READ_AGAIN} Look at the plan, then write once more. ${NOTHING}`;
export const tableNeeds = (area: string, tab: string): string => `The table needs ${area} on "${tab}", but`;
export const somethingStands = (needed: string, cells: string): string =>
  `${needed} something stands in ${cells}. Choose an empty area or a new tab, or move those cells. ${NOTHING}`;
export const cellsMerged = (needed: string, cells: string): string =>
  `${needed} cells are merged in ${cells}. Undo that with Format > Merge cells > Unmerge, or choose another place. ${NOTHING}`;
export const tabProtected = (tab: string): string =>
  `The tab "${tab}" is protected. Ask its owner to let you edit it, or write to a new tab. ${NOTHING}`;
export const cellsProtected = (needed: string, cells: string): string =>
  `${needed} cells are protected in ${cells}. Ask the owner to let you edit them, or choose another place. ${NOTHING}`;
export const UNEVEN_ROWS = `The table has uneven rows: please report this. ${NOTHING}`;
export const tooLarge = (rows: number, columns: number): string =>
  `${rows} rows and ${columns} columns are more than a sheet holds. Plan a shorter season. ${NOTHING}`;
export const noLongerHolds = (place: string): string =>
  `${place} was changed after it was read here. ${READ_AGAIN} ${NOTHING}`;
export const didNotKeep = (place: string): string => `${place} did not keep what was written.`;
export const writtenUnseen = (why: string, tab: string): string =>
  `${why} Whether the table was written could not be seen. Look at "${tab}". ${READ_AGAIN} Write once more if it is not there.`;
export const LEFT_AS_IT_WAS = 'The table was left as it was.';
export const NO_TABLE_WRITTEN = 'No table was written.';
export const looksMissing = (left: string, failure: string): string =>
  `The table is written, but its name, colours or widths may be missing${left}: write it once more. ${failure}`;
export const notesStay = (cells: string): string =>
  `Notes stay in their cells (${cells}): see that they still fit where rows have moved.`;
export const partMayStand = (why: string, places: string): string =>
  `${why} Look at ${places}: part of it may stand there.`;
export const tabGone = (name: string): string => `There is no tab named "${name}" any more. ${NOTHING}`;
export const SOMEBODY_WRITES = `Somebody else is writing a table in this file. Wait a moment and try again. ${NOTHING}`;

// What the sidebar asks for
export const CLICK_A_CELL = 'Click a cell in the sheet first.';
export const tooManyCells = (a1: string, mostCells: number): string =>
  `${a1} is more than ${mostCells} cells. Select fewer.`;
export const readAgain = (tab: string, why: string): string => `The tab "${tab}" ${why}. ${READ_AGAIN}`;
export const NO_MATCH = `The sidebar and the script are of different versions. Reload the file. ${NOTHING}`;
export const notTaken = (call: string, path: string): string =>
  `The script cannot take what the sidebar sent (${call}, ${path}). Reload the file. ${NOTHING}`;
export const noSample = (id: string): string => `There is no sample farm named "${id}". ${NOTHING}`;

// Clearing a copy
export const maybeCleared = (error: string): string =>
  `${error} Look at the cells: some of them may be cleared.`;
export const NO_MARK = `This file may be the original: it carries no mark. Mark the original first, copy it, and clear the copy. ${NOT_CLEARED}`;
export const IS_ORIGINAL = `This is the original, not a copy. ${NOT_CLEARED}`;
export const changedSince = (what: string): string =>
  `${what} was changed after it was read here. ${READ_AGAIN} Look at the list once more. ${NOT_CLEARED}`;
export const notOurs = (area: string, tab: string): string =>
  `${area} on "${tab}" is not in a table of ours. ${NOT_CLEARED}`;

// What Google refused
export const SHEET_PROTECTED =
  'That part of the sheet is protected. Ask its owner to let you edit it, or write to a new tab.';
export const TYPED_COLUMNS =
  'These cells belong to a table with typed columns, which takes no formats. In its menu choose Table > Convert to unformatted data, or take another place.';
export const notAllowed = (message: string): string =>
  `Google did not allow it (${message}). Choose something in the menu Sounder Sheet and allow access. If you can only view this file, ask its owner for edit access or make a copy.`;
export const TOOK_TOO_LONG =
  'It took too long and Google stopped it. Close other files with scripts and try again.';
export const refused = (message: string): string =>
  `The spreadsheet refused: ${message}. Look at the sheet, then try again.`;

// The menu
export const tabsThere = (names: string): string =>
  `This file already has a tab named ${names}. Rename it, or start in an empty file. ${NOTHING}`;
export const sampleAdded = (added: string): string =>
  `Added ${added}. Everything in it is invented; its pigs went out six weeks ago. Next: Sounder Sheet > Open the sidebar > Plan the moves.`;
export const HELP = [
  'Type a function into a cell, such as =FENCE_LENGTH(B5;C5): its help opens.',
  'Open the sidebar to plan the moves or work out a number; it writes only into its own tables.',
  'In the rotation table, type the real day into "Moved in": the rest of the season shifts at once.',
  'If a fresh copy shows #NAME?, reload the page.',
  'Planning figures only. The energizer’s manual, local codes and licensed people decide; test the fence with a meter and look at your pigs every day.',
].join('\n\n');

// The check of a spreadsheet
export const BY_HAND = 'For a person, see DEVELOPERS.md.';
export const ALL_HOLDS = 'Everything that can be tried here holds.';
export const someFail = (failed: number, length: number): string =>
  `${failed} of ${length} do not hold. Send this text to whoever gave you the sheet: nothing of your file is in it.`;
export const checkTitle = (version: string, today: string, seconds: number): string =>
  `Sounder Sheet ${version}, check of ${today}, ${seconds} s`;
