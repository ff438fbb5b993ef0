/** The sentences of the page of the rotation. */
// The plan
export const notWorkedOut = (why: string): string => `The plan could not be worked out: ${why}`;
export const OLD_PLAN = 'The lists, the rules or the table have changed since. What follows is the old plan.';
export const STILL_PLANNING = 'The plan is still being worked out.';
export const NOT_UP_TO_DATE = 'This plan is not up to date.';
export const FROM_THE_PLAN =
  'This comes from the plan above. Write the table anew first, so that the sheet says the same.';
export const NO_MOVES_LEFT = 'No moves are left in this season.';
export const DRAWN = 'Season by paddock. The list of all moves below says the same in words.';
export const READY = 'The plan is ready.';
export const NO_PLAN = 'There is no plan under these rules.';

// The table that stands
export const tableStands = (tab: string, moves: number, typed: number): string =>
  `A rotation table stands on “${tab}” with ${moves} moves, ${typed} of them with a day under “Moved in”. Only what comes after the last real move of each group is planned anew.`;
export const seasonEnded = (day: string): string =>
  `The season of this table ended on ${day}. For a new one type its first and last day above: it gets a table of its own, and this one stays as it is.`;
export const PUT_RIGHT = 'The table cannot be written anew before this is put right in the sheet:';
export const stillShow = (moves: number, tab: string): string =>
  `${moves} moves of the table on “${tab}” still show head, weight and feed as your lists are now. Keep its figures before you change the lists for another season. If you have changed them already, set them back first (File > Version history).`;
export const DRAWN_ANEW =
  'Drawn anew each time; what you typed into it stays. The picture of an earlier season stays too.';

// The rules
export const SEASON_END_NOTE =
  'The day the pigs leave the pasture; their last night there is the one before.';
export const REST_NOTE =
  '30 to 90 days is advised for pigs in woods, longer on wet soil (ATTRA/NCAT). 40 to start with is judgement: look at your ground.';
export const growthUnit = (unit: string): string =>
  `In the same unit, for example ${unit} a day and ${unit}. Ask your local adviser for the rates.`;
export const STAY_NOTE =
  '3 to 7 days is advised for pigs in woods (ATTRA/NCAT); on open ground that is judgement. Shorter is kinder to the ground, but needs more paddocks: the start is the shortest of 7 to 14 days that gives the rest.';
export const HOW_MUCH_MOVED = "How much will you move for the ground's sake?";
export const NO_MOVES_NOTE = 'Such as 2026-07-04, or 2026-07-01 to 2026-07-10 for a trip.';
export const LIMIT_NOTE =
  'How much weight of pig the ground bears for how many days. Leave it empty until your own records give it (GROUND_LIMIT).';

// How hard the ground is used
export const useOf = (per: string, unit: string): string =>
  `Weight of pig × days on each ${per} (${unit}). The stays to come bear `;
export const hard = (stays: string, places: string): string =>
  `${stays} more than twice the middle: ${places}.`;
export const WHOLE_SEASON = 'Over the whole season:';
export const tooFewRecords = (stays: string): string =>
  `Cover is typed for ${stays}. Your own ground limit needs at least 3, with less cover where the load was higher.`;
export const ownLimit = (stays: string): string => `Your own records of ${stays} give a ground limit of `;
export const leftOut = (low: string, high: string): string =>
  `With one record left out at a time it is ${low} to ${high}.`;
export const UNSURE = 'These are too few records to say how sure that is.';

// To take along
export const NO_WINDOW = 'The browser did not open the window. Allow pop-ups for this page and try again.';
export const IN_DOWNLOADS = 'The calendar file pig-moves.ics is in your downloads.';
export const CALENDAR_HOLDS =
  'Moves from today on, with what to carry and a reminder at noon of the day before.';
export const DELETE_OLD =
  'The calendar does not follow later changes: delete its old moves before you add a new file.';
