/** What to do where the sheet says something else than the page has read of it. */
export const READ_AGAIN =
  'Press “Read the spreadsheet again” so that it counts, look at the numbers and write once more. Nothing was written.';
