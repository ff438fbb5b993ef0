/** Headings of columns that we put into a grower's list at their wish. */
export const MADE_HEADINGS = {
  from: 'In rotation from',
  weighedOn: 'Weighed on',
  openFrom: 'Open from',
  openUntil: 'Open until',
} as const;
