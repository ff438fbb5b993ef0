/** The sentences of the rotation: what is wrong, what is missing, what the button says. */
// The rules
export const BE_A_DATE = 'Must be a date.';
export const THREE_YEARS = 'The season must be three years or less.';
export const asLongAs = (shortest: string, longest: string): string =>
  `Must be as long as the shortest stay (${shortest}) or longer, got ${longest}.`;
export const CHOOSE_A_DAY = 'Choose at least one day on which pigs can be moved.';
export const NOT_NOTHING = 'Must be a number, got nothing.';
export const beWhole = (got: string): string => `Must be a whole number, got ${got}.`;
export const atLeast = (min: number, got: string): string => `Must be ${min} or more, got ${got}.`;
export const atMost = (max: number, got: string): string => `Must be ${max} or less, got ${got}.`;
export const moreThan = (above: number, got: string): string => `Must be more than ${above}, got ${got}.`;
export const writeDates = (got: string): string =>
  `Write dates as 2026-06-01 or 2026-06-01 to 2026-06-07, got ${got}.`;

// The lists and the table that stands
export const TABLE_FIRST = 'First put right what is wrong in the table that stands there.';
export const RULES_FIRST = 'First put right what is wrong in the rules below.';
export const nothingToPlan = (leftOut: string): string => `There is nothing to plan. ${leftOut}`;
export const FIND_LISTS = 'First both lists must be found.';
export const LISTS_FIRST = 'First put right what is wrong in the lists.';
export const FILL_LISTS = 'First both lists must hold something.';
export const stillToCome = (cell: string, day: string, group: string, paddock: string): string =>
  `${cell}: ${day} is still to come. The plan counts on it: ${group} goes to ${paddock} on that day. Clear the cell if that is not settled.`;
export const badDays = (cell: string, most: number, got: string, days: number | undefined): string =>
  `${cell}: Days must be a whole number from 1 to ${most}, got ${got}. The plan does not go by it${days === undefined ? '' : `, and the table counts ${days}`}. Correct it, or clear the cell.`;
export const badCover = (cell: string, got: string): string =>
  `${cell}: Cover left must be from 0 % to 100 %, got ${got}. No figure goes by it. Correct it, or clear the cell.`;
export const answerRenamed = (question: string): string =>
  `${question} Answer it first: moves of the table look up their head and weight by the name.`;
export const giveDays = (tab: string | undefined): string =>
  `Some moves of the table on “${tab}” have no day. Give them one first.`;
export const newSeason = (tab: string): string =>
  `This is a new season. The table on “${tab}” stays as the record of the last one, with its figures as they are now; the new one gets a tab of its own and is written anew from then on. The days of real moves count as last use of the paddocks.`;

// The plan and the button
export const COUNT_LABEL =
  'Count moves planned up to today as done: their planned day is written under “Moved in”';
export const PHONE_PAGE = '“See today at a glance” makes a page for the phone of it.';
export const STILL_PLANNING = 'The plan is still to be worked out.';
export const OTHER_THAN_PLAN = 'The lists, the rules or the table have changed since the plan was made.';
