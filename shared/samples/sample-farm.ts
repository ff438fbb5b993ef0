/**
 * Sample farms: invented from end to end. Their days lie round the day on which they are added, about six weeks into a
 * season, so that there is something to see on any day of the year.
 */
import { type Day, dayFromCivil } from '../core/calendar/day';

/** Text, number, a day, or a plain spreadsheet formula with `;` between arguments. */
export type SampleCell = string | number | { readonly day: Day } | { readonly f: string };

export interface SampleTab {
  readonly name: string;
  readonly rows: readonly (readonly SampleCell[])[];
}

export interface SampleFarm {
  /** File name in sample-sheets/, without ending, and the name in the sidebar's call. */
  readonly id: string;
  readonly title: string;
  tabs(today: Day): readonly SampleTab[];
  readonly weighings: readonly SampleWeighing[];
}

/** Pigs that were weighed on the way, as somebody types it. */
export interface SampleWeighing {
  readonly group: string;
  readonly daysAgo: number;
  readonly weight: string;
}

/** The day round which the files in sample-sheets/ lie: a file cannot know on which day it is opened. */
export const DAY_OF_FILES = dayFromCivil(2026, 6, 15);

export const INVENTED_SEASON = 'Its days lie round the day on which this farm was added, in winter too.';
