/** A group list made of what records of the groups say last, as cells beside one of the records. */
import { areaA1 } from '../block/a1';
import { BLANK, date, number, text } from '../block/cells';
import type { BlockCell, CellChange } from '../contract';
import { isoFromDay } from '../core/calendar/day';
import { plainNumber } from '../refusals';
import { fromInside, symbolOf, type UnitSystem } from '../units/units';
import type { GatheredGroup } from './group-record';
import { COLUMNS_APART } from './list-area';
import { MADE_HEADINGS } from './made-headings';
import type { GroupList, ListSource } from './model';
import * as words from './words';

/** Groups that stand in no list of the file, and the rectangle beside a record that a list of them is to be written into. */
export interface Gathered {
  readonly groups: readonly GatheredGroup[];
  readonly tab: string;
  readonly area: string;
  readonly cells: readonly CellChange[];
  /** A sentence, and what is said last of each group. */
  readonly sentence: string;
  readonly said: readonly string[];
}

/** Undefined: no group is named in them. */
export function gatheredList(
  records: readonly ListSource<GroupList>[],
  groups: readonly GatheredGroup[],
  system: UnitSystem,
): Gathered | undefined {
  const [first] = records;
  if (!first || groups.length === 0) return undefined;
  const unit = symbolOf('mass', system);
  const { tab, list } = first;
  const rows: readonly (readonly BlockCell[])[] = [
    ['Group', 'Head', `Weight (${unit})`, MADE_HEADINGS.weighedOn, 'Paddock', 'Since'].map(text),
    ...groups.map(({ name, head, weightKg, weighedOn, paddock = '', since }) => [
      text(name),
      head === undefined ? BLANK : number(head),
      weightKg === undefined ? BLANK : number(Number(plainNumber(fromInside(weightKg, 'mass', system), 4))),
      weighedOn === undefined ? BLANK : date(weighedOn),
      text(paddock),
      since === undefined || paddock === '' ? BLANK : date(since),
    ]),
  ];
  const width = Math.max(...tab.values.map((cells) => cells.length));
  const [row, column] = [list.headingRow, width + COLUMNS_APART + 1];
  const cells = rows.flatMap((line, r) =>
    line.map((after, c) => ({ tab: tab.name, row: row + r, column: column + c, before: BLANK, after })),
  );
  const area = areaA1({ row, column, rows: rows.length, columns: rows[0]!.length });
  const sentence = words.isRecord([...new Set(records.map((one) => one.tab.name))]);
  return { groups, tab: tab.name, area, cells, sentence, said: groups.map((group) => saidOf(group, system)) };
}

function saidOf(
  { name, head, weightKg, weighedOn, paddock, since }: GatheredGroup,
  system: UnitSystem,
): string {
  const weight =
    weightKg && `${plainNumber(fromInside(weightKg, 'mass', system), 4)} ${symbolOf('mass', system)}`;
  const [on, from] = [weighedOn, since].map((day) => (day === undefined ? '' : isoFromDay(day)));
  return words.saidLast(name, head, weight && `${weight} on ${on}`, paddock && `${paddock} since ${from}`);
}
