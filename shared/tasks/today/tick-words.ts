/** What today's page and the trigger behind its boxes say to each other. */

export const TODAY_BLOCK = 'SOUNDER_TODAY';

/** Column of the boxes on their tab, counted from 1: by it alone the trigger leaves most other ticks. */
export const BOX_COLUMN = 2;

/** Headings of the working rows that the trigger reads. */
export const TICK = {
  /** Row and column in the sheet of the group's box. */
  row: 'Box row',
  column: 'Box column',
  /** Today, as the sheet knows it. */
  today: 'Today',
  /** The group's next move, by its place in the range under `days`. */
  next: 'Next at',
  /** A formula over the range of the days moved in, `=ROWS(…)`, which follows when tabs are renamed or rows put in. */
  days: 'Moved in',
  /** Why it cannot be said which move is meant; '' where it can. */
  refusal: 'Not written',
} as const;

/** Begins what the trigger says beside a box. */
export const NOT_WRITTEN = 'Not written: ';
