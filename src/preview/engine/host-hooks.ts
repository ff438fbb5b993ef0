import type { Modes } from '../service/modes';

/** What the engine asks of the host while it calculates. One per workbook, passed through the model's config. */
export interface HostHooks {
  timeZone(): string;
  scriptTimeZone(): string;
  now(): Date;
  hasCellFunction(name: string): boolean;
  readonly modes: Modes;
  /** Whether the workbook has calculated a function that changes every time, see changing-cells.ts. */
  hasChangingCells: boolean;
  /** Runs a function of the script with what Google Sheets would pass: values, Dates, rows of rows. */
  callCellFunction(name: string, values: unknown[]): unknown;
}

/** Name under which the hooks stand in the engine's evaluation context. */
export const HOOKS_KEY = 'sounderHost';

/** The hooks of the workbook in whose context the engine calculates. */
export function hooksIn(context: unknown): HostHooks | undefined {
  return (context as Readonly<Record<string, unknown>>)[HOOKS_KEY] as HostHooks | undefined;
}
