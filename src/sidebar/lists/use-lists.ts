import { useMemo, useState } from 'preact/hooks';
import type { TabContent } from '../../../shared/contract';
import { dayFromIso } from '../../../shared/core/calendar/day';
import type {
  FoundList,
  GroupList,
  GrowerList,
  ListKind,
  ListProblem,
  PaddockList,
  ReadGroup,
  ReadPaddock,
} from '../../../shared/lists/model';
import { copiedMovesNotes } from '../../../shared/lists/own-headings';
import { readGroups } from '../../../shared/lists/read-groups';
import { type PaddocksRead, readPaddocks } from '../../../shared/lists/read-paddocks';
import { standingProblems } from '../../../shared/lists/standing-place';
import { isWeighingLog, lastWeighings } from '../../../shared/lists/weighings';
import { fixedFiguresNotes } from '../../../shared/table/fixed-figures';
import type { RotationSettings } from '../../../shared/table/model';
import type { UnitSystem } from '../../../shared/units/units';
import { dateOrder } from '../numbers/date-order';
import { decimalComma } from '../numbers/decimal-comma';
import { ROTATION_NAME } from '../panels/rotation/old-table';
import { foundLists } from '../parts/found-lists';
import type { Book } from '../parts/use-book';
import { groupsWithHerd } from './herd-log';
import { listAgain } from './list-again';
import { lostHeadings } from './lost-headings';
import { recalledList } from './recalled-list';

export interface Lists {
  /** The tab that a list stands on. */
  readonly tabOf: (list: FoundList | undefined) => TabContent | undefined;
  readonly found: Readonly<Record<ListKind, readonly FoundList[]>>;
  readonly chosen: Readonly<Record<ListKind, FoundList | undefined>>;
  readonly choose: (list: FoundList) => void;
  readonly paddocks: readonly ReadPaddock[];
  readonly groups: readonly ReadGroup[];
  /** Everything wrong in both lists, each with its cell. */
  readonly problems: readonly ListProblem[];
  /** Remarks with a day that may be meant as “open from”. */
  readonly remarks: PaddocksRead['remarks'];
  /** What the grower should know about the reading of each list although nothing is wrong. */
  readonly notes: Readonly<Record<ListKind, readonly string[]>>;
}

/** The lists that the table in the file was built from. */
type Remembered = RotationSettings['lists'];

/** The grower's two lists: found, or as the grower corrected them, and what stands in them. */
export function useLists(book: Book, units: UnitSystem, remembered: Remembered = {}): Lists {
  const [own, setOwn] = useState<Partial<Record<ListKind, FoundList>>>({});
  const found = useMemo(() => {
    const all = foundLists(book);
    return { paddocks: ofKind(all, 'paddocks'), groups: ofKind(all, 'groups') };
  }, [book]);
  const copies = useMemo(() => {
    const { blocks } = book.overview;
    const isTableThere = blocks.some(({ name }) => name === ROTATION_NAME);
    return copiedMovesNotes(book.tabs, blocks, isTableThere);
  }, [book]);
  const chosen = {
    paddocks: chosenOf(book, found.paddocks, own.paddocks, remembered.paddocks),
    groups: chosenOf(book, found.groups, own.groups, remembered.groups),
  };
  // A heading that the grower left out on this page is not missed.
  const lost = (kind: ListKind): string[] => (own[kind] ? [] : lostHeadings(remembered[kind], chosen[kind]));
  const tabOf = (list: FoundList | undefined) => book.tabs.find(({ name }) => name === list?.tab);
  const { locale, today } = book.overview;
  const comma = decimalComma(locale);
  const dates = { order: dateOrder(locale), today: dayFromIso(today) };
  const weighings = useMemo(
    () => lastWeighings(book.tabs, foundLists(book).filter(isWeighingLog), units, comma, dates),
    [book, units],
  );
  const paddockTab = tabOf(chosen.paddocks);
  const groupTab = tabOf(chosen.groups);
  const paddocks = paddockTab
    ? readPaddocks(paddockTab, chosen.paddocks as unknown as PaddockList, units, comma, dates)
    : { paddocks: [], remarks: [], ...NOTHING };
  const groups = groupTab
    ? readGroups(groupTab, chosen.groups as unknown as GroupList, units, comma, { ...dates, weighings })
    : { groups: [], ...NOTHING };
  const fixedIn = (tab: TabContent | undefined, list: FoundList | undefined): readonly string[] =>
    tab && list ? fixedFiguresNotes({ tab, list }, units) : [];
  const fixed = {
    paddocks: fixedIn(paddockTab, chosen.paddocks),
    groups: fixedIn(groupTab, chosen.groups),
  };
  const herd = groupsWithHerd(book, groups.groups);
  const listed = [...paddocks.problems, ...groups.problems];
  const standing = standingProblems(herd.groups, paddocks.paddocks, chosen.groups?.tab ?? '');
  return {
    tabOf,
    found,
    chosen,
    choose: (list) => setOwn((before) => ({ ...before, [list.kind]: list })),
    paddocks: paddocks.paddocks,
    groups: herd.groups,
    problems: [...listed, ...(listed.length > 0 ? [] : standing)],
    remarks: paddocks.remarks,
    notes: {
      paddocks: [...lost('paddocks'), ...notesOf(paddocks), ...fixed.paddocks, ...copies],
      groups: [...lost('groups'), ...notesOf(groups), ...fixed.groups, ...herd.notes],
    },
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

/** The list as chosen here, else as the table remembers it, else the likeliest; its rows always as they stand now. */
function chosenOf(
  book: Book,
  found: readonly FoundList[],
  own: FoundList | undefined,
  remembered: GrowerList | undefined,
): FoundList | undefined {
  return listAgain(book, own) ?? recalledList(found, remembered) ?? found[0];
}
