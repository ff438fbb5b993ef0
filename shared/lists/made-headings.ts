/** Headings of columns that we put into a grower's list at their wish, or that growers are told to put there. */
export const MADE_HEADINGS = {
  from: 'In rotation from',
  weighedOn: 'Weighed on',
  openFrom: 'Open from',
  openUntil: 'Open until',
  shutFrom: 'Shut from',
  shutUntil: 'Shut until',
} as const;
