import type { Day } from '../core/calendar/day';

/** What the door cannot know by itself: which day a date cell means depends on the spreadsheet's time zone. */
export interface Edge {
  readonly dayOfDate: (date: unknown) => Day;
}
