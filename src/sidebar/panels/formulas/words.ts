/** The sentences of the page that works out a number. */
export const reading = (name: string): string => `Reading the selected cells for ${name}…`;
export const WHAT_TO_KNOW = 'What do you want to know?';
export const NOTHING_FOUND =
  'Nothing found. Try another word, such as posts, feed or rest. What things cost stands in other tasks: “List the fence materials” and “Budget feed, water and ground”.';
export const cellTaken = (cell: string, holds: string): string =>
  `${cell} already holds “${holds}”. Select an empty cell and press the button again.`;
export const formulaIn = (cell: string): string => `The formula is in ${cell}.`;
export const cellsFirst = (name: string): string =>
  `To put this into the sheet, let ${name} stand in cells: type them there, select them and press “Use selected cells”.`;
export const noTab = (tab: string): string => `There is no tab called “${tab}”.`;
