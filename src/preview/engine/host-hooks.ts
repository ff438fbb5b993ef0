/** What the engine asks of the host while it calculates. One per workbook, passed through the model's config. */
export interface HostHooks {
  timeZone(): string;
  now(): Date;
  hasCellFunction(name: string): boolean;
  /** See the modes of the same names. */
  sumproductPassesErrors(): boolean;
  blankStaysBlank(): boolean;
  /** Runs a function of the script with what Google Sheets would pass: values, Dates, rows of rows. */
  callCellFunction(name: string, values: unknown[]): unknown;
}

/** Name under which the hooks stand in the engine's evaluation context. */
export const HOOKS_KEY = 'sounderHost';
