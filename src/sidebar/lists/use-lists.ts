import { useMemo, useState } from 'preact/hooks';
import { findLists } from '../../../shared/lists/find-lists';
import type {
  FoundList,
  GroupField,
  GroupList,
  GrowerList,
  ListKind,
  ListProblem,
  PaddockField,
  PaddockList,
  ReadGroup,
  ReadPaddock,
} from '../../../shared/lists/model';
import { readGroups } from '../../../shared/lists/read-groups';
import { type PaddocksRead, readPaddocks } from '../../../shared/lists/read-paddocks';
import type { RotationSettings } from '../../../shared/table/model';
import type { UnitSystem } from '../../../shared/units/units';
import { decimalComma } from '../numbers/decimal-comma';
import type { Book } from '../parts/use-book';
import { withColumn } from './list-columns';

export interface Lists {
  readonly found: Readonly<Record<ListKind, readonly FoundList[]>>;
  readonly chosen: Readonly<Record<ListKind, FoundList | undefined>>;
  readonly choose: (list: FoundList) => void;
  readonly paddocks: readonly ReadPaddock[];
  readonly groups: readonly ReadGroup[];
  /** Everything wrong in both lists, each with its cell. */
  readonly problems: readonly ListProblem[];
  /** What the grower should know about the reading of each list although nothing is wrong. */
  readonly notes: Readonly<Record<ListKind, readonly string[]>>;
}

/** The lists that the table in the file was built from. */
type Remembered = RotationSettings['lists'];

/** The grower's two lists: found, or as the grower corrected them, and what stands in them. */
export function useLists(book: Book, units: UnitSystem, remembered: Remembered = {}): Lists {
  const [own, setOwn] = useState<Partial<Record<ListKind, FoundList>>>({});
  const found = useMemo(() => {
    const all = findLists(book.tabs, book.overview.blocks);
    return { paddocks: ofKind(all, 'paddocks'), groups: ofKind(all, 'groups') };
  }, [book]);
  const chosen = {
    paddocks: own.paddocks ?? recalled(found.paddocks, remembered.paddocks) ?? found.paddocks[0],
    groups: own.groups ?? recalled(found.groups, remembered.groups) ?? found.groups[0],
  };
  const tabOf = (list: FoundList | undefined) => book.tabs.find(({ name }) => name === list?.tab);
  const comma = decimalComma(book.overview.locale);
  const paddockTab = tabOf(chosen.paddocks);
  const groupTab = tabOf(chosen.groups);
  const paddocks = paddockTab
    ? readPaddocks(paddockTab, chosen.paddocks as unknown as PaddockList, units, comma)
    : { paddocks: [], ...NOTHING };
  const groups = groupTab
    ? readGroups(groupTab, chosen.groups as unknown as GroupList, units, comma)
    : { groups: [], ...NOTHING };
  return {
    found,
    chosen,
    choose: (list) => setOwn((before) => ({ ...before, [list.kind]: list })),
    paddocks: paddocks.paddocks,
    groups: groups.groups,
    problems: [...paddocks.problems, ...groups.problems],
    notes: { paddocks: notesOf(paddocks), groups: notesOf(groups) },
  };
}

const NOTHING = { problems: [], notes: [], leftOut: [] };

function notesOf({ notes, leftOut }: Pick<PaddocksRead, 'notes' | 'leftOut'>): string[] {
  if (leftOut.length === 0) return [...notes];
  const rows = leftOut.map(({ cell, text }) => `${cell} (“${text}”)`);
  return [`Left out as totals: ${rows.join(', ')}.`, ...notes];
}

function ofKind(lists: readonly FoundList[], kind: ListKind): FoundList[] {
  return lists.filter((list) => list.kind === kind);
}

/** The list that was used before, with its columns, where it still stands there. */
function recalled(found: readonly FoundList[], before: GrowerList | undefined): FoundList | undefined {
  const list = found.find(({ tab, headingRow }) => tab === before?.tab && headingRow === before.headingRow);
  if (!list || !before) return undefined;
  // Units come from the headings as they stand now, for they may have been put right since.
  const bare = { ...list, columns: {}, units: {} } as unknown as FoundList;
  const columns = Object.entries(before.columns) as [PaddockField | GroupField, number][];
  return columns.reduce((built, [field, column]) => withColumn(built, field, column), bare);
}
