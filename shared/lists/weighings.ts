/**
 * The weights of a group list that has none: the last day of weighing of each group in a log elsewhere in the file, and
 * the mean of what stands there for that day: pigs weighed one by one stand in a row each.
 */

import { cellOnTab } from '../block/cell-on-tab';
import type { TabContent } from '../contract';
import type { Day } from '../core/calendar/day';
import type { UnitSystem } from '../units/units';
import { meantName } from './meant-name';
import type { FoundList, GroupList } from './model';
import { type DateHabits, hasCell, nameKey, nameOf, readAmount, readDay } from './read-list-cell';
import { untoldReaders } from './untold-readers';

export interface Weighing {
  readonly weightKg: number;
  readonly day: Day;
  /** Where it stands, the last of several: Weights!C12. */
  readonly cell: string;
  /** How many weights it is the mean of. */
  readonly count: number;
  /** What the group is called there. */
  readonly name: string;
}

/** Whether a list is a log of weighings: groups with days and weights, but no head. */
export function isWeighingLog({ kind, missing, columns }: FoundList): boolean {
  return kind === 'groups' && missing.join() === 'head' && 'weight' in columns && 'weighedOn' in columns;
}

interface OnTab {
  readonly tab: TabContent;
  readonly list: FoundList;
}

/** Whether a list of groups with head and weight stands beside one of mostly the same groups that lacks the weights alone. */
export function isLogOf(bare: OnTab, log: OnTab): boolean {
  return log.list.kind === 'groups' && log.list.missing.length === 0 && isAbout(bare, log);
}

/** Whether most names of a log are groups of the list: feed bought "for sows" is no weighing. */
export function isAbout(list: OnTab, log: OnTab): boolean {
  const [known, names] = [namesIn(list), [...new Set(namesIn(log))]];
  return 2 * names.filter((name) => meantName(name, known) !== undefined).length > names.length;
}

function namesIn({ tab, list }: OnTab): string[] {
  const rows = tab.values.slice(list.firstRow - 1, list.lastRow);
  return rows.map((row) => nameKey(String(row[(list.columns.name ?? 1) - 1] ?? ''))).filter(Boolean);
}

/** The same list read as a log: its heads are how many were weighed. */
export function asWeighingLog(list: FoundList): FoundList {
  const { head: _, ...columns } = list.columns as Readonly<Record<string, number>>;
  return { ...list, columns, missing: ['head'] } as FoundList;
}

/** The last weighing of each group of a list by `nameKey`; rows that cannot be read tell nothing. */
export function lastWeighings(
  tabs: readonly TabContent[],
  all: readonly FoundList[],
  groups: OnTab,
  system: UnitSystem,
  comma: boolean,
  dates: DateHabits,
): ReadonlyMap<string, Weighing> {
  const last = new Map<string, Weighing>();
  const known = namesIn(groups);
  for (const log of all.filter(isWeighingLog)) {
    const tab = tabs.find(({ name }) => name === log.tab);
    const list = log as unknown as GroupList;
    if (!tab || !isAbout(groups, { tab, list: log })) continue;
    for (const reader of untoldReaders({ tab, list }, system, { comma, dates })) {
      if (!['name', 'weight', 'weighedOn'].every((field) => hasCell(reader, field as 'name'))) continue;
      const weightKg = readAmount(reader, 'weight', { above: 0 });
      const day = readDay(reader, 'weighedOn');
      if (weightKg === undefined || day === undefined) continue;
      const name = nameOf(reader);
      const key = meantName(nameKey(name), known);
      if (key === undefined) continue;
      const cell = cellOnTab(tab.name, reader.row, list.columns.weight ?? 1);
      const before = last.get(key);
      if (before && day < before.day) continue;
      const { count, weightKg: mean } = before?.day === day ? before : NONE;
      const weight = (mean * count + weightKg) / (count + 1);
      last.set(key, { weightKg: weight, day, cell, name, count: count + 1 });
    }
  }
  return last;
}

const NONE = { count: 0, weightKg: 0 } as const;
