/** Makes the host of a headless workbook from what a test asks for. */
import { NEW_TAB_SIZE } from '../engine/book';
import { loadEngine } from '../engine/load-engine';
import { dateOfSerial } from '../engine/zone-time';
import { Host, type HostOptions } from '../host';
import type { UiPort } from '../service/host-state';
import type { Modes } from '../service/modes';
import { type StartCell, serialOfIsoDay } from './start-cells';

export type WorkbookOptions = {
  tabs?: Readonly<Record<string, readonly (readonly StartCell[])[]>>;
  /** Text of the built script. */
  codeJs?: string;
  sidebarHtml?: string;
  title?: string;
  /** Spreadsheet locale such as "de_DE"; "en_US" unless given. */
  locale?: string;
  /** Spreadsheet time zone; "Etc/UTC" unless given. */
  timeZone?: string;
  scriptTimeZone?: string;
  /** The day (at noon in the spreadsheet's time zone) or the instant that the script's clock shows. */
  today?: string | Date;
  /** Merged cells by tab, in A1 notation. */
  merges?: Readonly<Record<string, readonly string[]>>;
  /** Named ranges, for example { SEASON: "Plan!B2:B3" }. */
  names?: Readonly<Record<string, string>>;
  /** Nasty habits of the real service, see service/modes.ts. */
  modes?: Partial<Modes>;
};

const NOON = 0.5;

/** A host with empty tabs, or with those of the engine snapshot. */
export async function makeHost(options: WorkbookOptions, ui: UiPort, snapshot: unknown): Promise<Host> {
  const { codeJs, sidebarHtml, title, locale, timeZone, scriptTimeZone, today, modes } = options;
  const tabs = Object.entries(options.tabs ?? { Sheet1: [] }).map(([name, rows]) => ({
    name,
    rows: Math.max(NEW_TAB_SIZE.rows, rows.length),
    columns: Math.max(NEW_TAB_SIZE.columns, ...rows.map((row) => row.length)),
  }));
  const htmlFiles = sidebarHtml === undefined ? undefined : { sidebar: sidebarHtml };
  const now = clockOf(today, timeZone ?? 'Etc/UTC');
  const given = { codeJs, htmlFiles, snapshot, title, locale, timeZone, scriptTimeZone, now, modes };
  return new Host({ engine: await loadEngine(), ui, tabs, ...withoutUndefined(given) });
}

type Given<Values> = { [Key in keyof Values]?: Exclude<Values[Key], undefined> };

function withoutUndefined<Values extends object>(values: Values): Given<Values> {
  return Object.fromEntries(
    Object.entries(values).filter(([, value]) => value !== undefined),
  ) as Given<Values>;
}

function clockOf(today: string | Date | undefined, timeZone: string): HostOptions['now'] {
  if (today === undefined) return undefined;
  const instant = today instanceof Date ? today : dateOfSerial(serialOfIsoDay(today) + NOON, timeZone);
  return () => instant;
}
