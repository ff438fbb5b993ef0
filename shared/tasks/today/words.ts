/** The sentences of today's page. */
export const lacksHeadings = (tab: string): string =>
  `The rotation table on “${tab}” lacks headings that today’s page looks for. Write the table anew first.`;
export const noApostrophe = (tab: string): string =>
  `Give the tab “${tab}” a name without an apostrophe first: formulas look there.`;
export const TICK = 'Tick Moved when a group has moved: the day goes into the rotation table.';
export const TICK_STAYS = 'Ticked: if it stays, nothing was written. Type the day.';
export const WORKED_OUT = 'Worked out from the rotation table; nothing is typed here.';

// What is due
export const KEEP_IN = 'Not trained yet: do not turn them out.';
export const MOVES_OVER = 'The moves of this group are over.';
export const NO_MOVE = 'No move of this group is planned.';
export const LAST_STAY = 'Last stay: no move after it.';

// The next useful task
export const RECORD_NEXT = '“What happened” records what is not as planned.';
