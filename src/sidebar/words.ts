/** The sentences of the first screen, and of what failed. */
// The first screen
export const WHAT_TO_DO = 'What do you want to do?';
export const STAYS_HERE =
  'Everything stays in this spreadsheet. Nothing is written until you press a button that says so.';
export const PLAN = 'A dated table of which pigs go to which paddock when, from your own lists.';
export const HAPPENED =
  'A group has moved, is late, was sold; a paddock is shut: recorded, and what it does to the plan.';
export const TODAY =
  'A page for the phone: where each group stands, what is next, and a box to tick when it has moved.';
export const HERD = 'How many there are from which day on, and what they weigh: sold, died, joined, weighed.';
export const MAP = 'Areas, fence and posts from corners on a map; a drawing to print.';
export const MATERIALS =
  'Posts, wire, energizer and all the rest: what you need, what to buy, what it costs.';
export const TRAINING =
  'A pen with a live wire inside, a log that says who is ready, and what to do when one gets out.';
export const BITE = 'Will it bite at the far end, in weeds, with a pig on it; and a log of your fence walks.';
export const BUDGET = 'Feed, water, shelter and nutrients for the season and stay by stay.';
export const NUMBER = 'Fence, posts, feed, water, rest and more; put the formula into your sheet.';
export const COPY = 'What is private in this file, and how to clear it in a copy before you share it.';

// What failed
const REOPEN = 'open the sidebar again from the Sounder Sheet menu';
export const NOTHING_WRITTEN = ' Nothing was written.';
export const NO_SPREADSHEET = `This page works only beside a spreadsheet. Open the spreadsheet and ${REOPEN}.`;
export const TWO_ACCOUNTS =
  'Google refused the call, as it does when several Google accounts are signed in at once. Sign out of the others, or open the spreadsheet in a private (incognito) window with one account only.';
export const NOT_ALLOWED = `The script may not do this under your account. Check that you may edit this spreadsheet, ${REOPEN} and allow the script when Google asks.`;
export const PROTECTED =
  'That part of the spreadsheet is protected. Ask its owner to let you edit it, or choose another place.';
export const OTHER_VERSION = `This page and the spreadsheet’s script are of different versions. Reload the spreadsheet, then ${REOPEN}.`;
export const TOO_SLOW =
  'The spreadsheet took too long. Wait a minute and try again; a smaller list or fewer open tabs helps.';
export const GOOGLES_FAULT = 'The fault is on Google’s side. Wait a little and try again.';
export const CONNECTION_LOST =
  'The connection to the spreadsheet was lost. Check the internet connection and try again, or reload the spreadsheet.';
export const NO_ANSWER = 'The spreadsheet has not answered. Check the internet connection and try again.';
export const LOOK_FIRST = ' Look at the sheet first: the change may have been made all the same.';
export const stopped = (told: string): string =>
  `The spreadsheet’s script stopped ${told}. Try again; if that does not help, reload the spreadsheet and ${REOPEN}.`;

// Starting the page
export const TOO_OLD =
  'This browser is too old for the sidebar. Update it (Chrome or Edge 80, Firefox 113, Safari 16.4 or later), then open the sidebar again. What stands in the spreadsheet works without it.';
export const NOT_STARTED =
  'The sidebar’s script did not start. Reload the spreadsheet and open the sidebar again. If that does not help, put sidebar.html into the script anew: part of it may be missing. What stands in the spreadsheet works without it.';
