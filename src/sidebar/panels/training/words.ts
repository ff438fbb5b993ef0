/** The sentences of the page of training. */
// The log
export const LOG_MOVED = 'The log or the list has moved. Read the spreadsheet again. Nothing was written.';
export const follows = (tab: string): string => `The group list on “${tab}” now follows the log.`;
export const CAN_WAIT =
  'The rotation can wait for the log: the day from which a group is ready goes into your group list, under “In rotation from”. While the log says “not ready”, planning stops with a message.';
export const TYPE_THIS =
  'Type this there, with the cell of the group’s name in place of A6. It finds the group by its name, so the log may be sorted. ';
export const ONE_ROW = 'One row a pig or batch. The sheet says what is still missing before it may go out.';
export const BEFORE_TURN_OUT = 'Before turn-out: how to check a pig';
export const NO_PIGS_YET = 'The log in the sheet has no pigs yet.';

// The pen
export const WHY = 'Why? Where each of these comes from';
export const penDrawn = (side: string, panels: string, heights: string): string =>
  `Pen of ${side} a side, ${panels} on each, live wire inside at ${heights}.`;
export const wireStands = (offset: string): string =>
  `The wire stands about ${offset} off the panels (common practice, no source) and must not touch them.`;
