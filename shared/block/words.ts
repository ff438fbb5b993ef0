/** Sentences that tables of every kind share, and the script with the page. */

/** What to do where the sheet says something else than the page has read of it. */
export const READ_AGAIN =
  'Press “Read the spreadsheet again” so that it counts, look at the numbers and write once more. Nothing was written.';

/** Above the corner table of a map; readers look for it, so it stays as it is. */
export const CORNERS_TITLE =
  'Corners: correct a latitude or longitude here; area, perimeter and posts follow.';

export const TOO_MANY_CALLS = 'Too many calls in a short time, says Google. Wait a minute and try again.';
