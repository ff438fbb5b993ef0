/**
 * Sample farms: invented from end to end, the same data for the menu's "start with a sample farm" and for the
 * .xlsx files in sample-sheets/.
 */

/** Text, number, a date, or a plain spreadsheet formula with `;` between arguments. */
export type SampleCell = string | number | { readonly d: string } | { readonly f: string };

export interface SampleTab {
  readonly name: string;
  readonly rows: readonly (readonly SampleCell[])[];
}

export interface SampleFarm {
  /** File name in sample-sheets/, without ending, and the name in the sidebar's call. */
  readonly id: string;
  readonly title: string;
  readonly tabs: readonly SampleTab[];
}
