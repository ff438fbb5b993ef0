/** A list made of what does not stand in the file as one, as cells beside it: records of groups, or lines in words. */
import { areaA1 } from '../block/a1';
import { BLANK, date, number, text } from '../block/cells';
import type { BlockCell, CellChange, TabContent } from '../contract';
import { isoFromDay } from '../core/calendar/day';
import { plainNumber } from '../refusals';
import { fromInside, symbolOf, type UnitSystem } from '../units/units';
import { amountWords } from './amount-words';
import type { GatheredGroup } from './group-record';
import { COLUMNS_APART } from './list-area';
import { MADE_HEADINGS } from './made-headings';
import type { GroupList, ListKind, ListSource } from './model';
import * as words from './words';

/** What was gathered, and the rectangle that a list of it is to be written into. */
export interface Gathered {
  readonly kind: ListKind;
  readonly tab: string;
  readonly area: string;
  readonly cells: readonly CellChange[];
  /** A sentence, and what is known of each paddock or group. */
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
  const sentence = words.isRecord([...new Set(records.map((one) => one.tab.name))]);
  const said = groups.map((group) => saidOf(group, system));
  return { kind: 'groups', ...listBeside(tab, list.headingRow, rows), sentence, said };
}

/** Right of everything on the tab, far enough to be a list of its own. */
export function listBeside(
  tab: TabContent,
  row: number,
  rows: readonly (readonly BlockCell[])[],
): Pick<Gathered, 'tab' | 'area' | 'cells'> {
  const column = Math.max(...tab.values.map((cells) => cells.length)) + COLUMNS_APART + 1;
  const cells = rows.flatMap((line, r) =>
    line.map((after, c) => ({ tab: tab.name, row: row + r, column: column + c, before: BLANK, after })),
  );
  const area = areaA1({ row, column, rows: rows.length, columns: rows[0]!.length });
  return { tab: tab.name, area, cells };
}

function saidOf(
  { name, head, weightKg, weighedOn, paddock, since }: GatheredGroup,
  system: UnitSystem,
): string {
  const weight = weightKg && amountWords(weightKg, 'mass', system, 4);
  const [on, from] = [weighedOn, since].map((day) => (day === undefined ? '' : isoFromDay(day)));
  return words.saidLast(name, head, weight && `${weight} on ${on}`, paddock && `${paddock} since ${from}`);
}
