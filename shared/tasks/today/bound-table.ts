/** Where the rotation table stands, for formulas on another tab that look things up there. */
import { fixedA1, quotedTab } from '../../block/a1';
import type { BlockContent } from '../../block/read-block';
import { nameKey } from '../../lists/read-list-cell';
import { type ColumnKey, columnOfHeading } from '../../table/columns';
import { SETTING_LABELS } from '../../table/settings-rows';
import type { UnitSystem } from '../../units/units';
import * as words from './words';

const NEEDED = [
  'group',
  'paddock',
  'movedIn',
  'out',
  'head',
  'meanHead',
  'weightIn',
  'weightOut',
  'feed',
  'water',
  'inDay',
  'stayDays',
  'groupKey',
  'dailyGain',
] as const satisfies readonly ColumnKey[];
export type BoundColumn = (typeof NEEDED)[number];

/** Rows below the table that are looked at too: it grows when it is built anew. They are there in every tab of ours. */
const SPARE_ROWS = 20;

export interface BoundTable {
  readonly units: UnitSystem;
  /** Names of its groups, in the order of the moves. */
  readonly groups: readonly string[];
  /** "Rotation!$D$6:$D$90": the column from the blank row under the headings on. */
  readonly range: (column: BoundColumn) => string;
  /** Its first cell, and its last. */
  readonly first: (column: BoundColumn) => string;
  readonly last: (column: BoundColumn) => string;
  /** Labels of the settings below the moves, and their values. */
  readonly labels: string;
  readonly values: string;
}

/** The table where it stands; or a sentence that says why it cannot be looked up there. */
export function boundTable({ info, values }: BlockContent): BoundTable | { readonly problem: string } {
  const at = values.findIndex((row) => NEEDED.every((key) => row.some((cell) => means(cell, key))));
  if (at < 0) {
    return {
      problem: words.lacksHeadings(info.tab),
    };
  }
  if (info.tab.includes("'")) {
    return { problem: words.noApostrophe(info.tab) };
  }
  const columnOf = (key: BoundColumn): number => values[at]!.findIndex((cell) => means(cell, key));
  const [top, bottom] = [info.row + at + 1, info.row + info.rows - 1 + SPARE_ROWS];
  const cell = (column: number, row: number): string => fixedA1(row, info.column + column);
  const on = (reference: string): string => `${quotedTab(info.tab)}!${reference}`;
  const down = (column: number): string => on(`${cell(column, top)}:${cell(column, bottom)}`);
  const keys = columnOf('groupKey');
  const names = values.slice(at + 1).filter((row) => row[keys] !== '' && row[keys] !== undefined);
  const groups = new Map(
    names.map((row) => String(row[columnOf('group')])).map((name) => [nameKey(name), name]),
  );
  return {
    units: values.some((row) => row[0] === SETTING_LABELS.units && row[1] === 'metric') ? 'metric' : 'US',
    groups: [...groups.values()],
    range: (key) => down(columnOf(key)),
    first: (key) => on(cell(columnOf(key), top)),
    last: (key) => on(cell(columnOf(key), bottom)),
    labels: down(0),
    values: down(1),
  };
}

function means(cell: unknown, key: BoundColumn): boolean {
  return typeof cell === 'string' && columnOfHeading(cell) === key;
}
