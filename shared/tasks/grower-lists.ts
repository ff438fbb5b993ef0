import { type Book, tabNamed } from '../block/book';
import { oncePer } from '../block/once-per';
import { ROTATION_NAME } from '../block/own-words';
import type { TabContent } from '../contract';
import { dayFromIso } from '../core/calendar/day';
import { isBreedingName } from '../lists/breeding-name';
import { columnDoubts } from '../lists/column-doubts';
import { foundLists } from '../lists/found-lists';
import { type Gathered, gatheredList } from '../lists/gathered-cells';
import { gatheredGroups, isOfRecord, recordsAmong } from '../lists/group-record';
import { listAgain } from '../lists/list-again';
import { lostHeadings } from '../lists/lost-headings';
import { lyingLists } from '../lists/lying-lists';
import { type MissingFigures, missingFigures } from '../lists/missing-figures';
import type {
  FoundList,
  GroupList,
  GrowerList,
  ListKind,
  ListProblem,
  ListSources,
  PaddockList,
  ReadGroup,
  ReadPaddock,
} from '../lists/model';
import { copiedMovesNotes } from '../lists/own-headings';
import { paddockNamed } from '../lists/paddock-named';
import { type GroupsRead, readGroups } from '../lists/read-groups';
import { nameKey } from '../lists/read-list-cell';
import { type PaddocksRead, readPaddocks } from '../lists/read-paddocks';
import { headingTexts } from '../lists/recalled-list';
import { standingProblems } from '../lists/standing-place';
import { type UndatedWeights, undatedWeights } from '../lists/undated-weights';
import { unreadMoves } from '../lists/unread-moves';
import { lastWeighings, type Weighing } from '../lists/weighings';
import * as listWords from '../lists/words';
import { yearIn } from '../lists/year-in';
import { dateOrder } from '../locale/date-order';
import { decimalComma } from '../locale/decimal-comma';
import { fixedFiguresNotes } from '../table/fixed-figures';
import type { RotationSettings } from '../table/model';
import type { UnitSystem } from '../units/units';
import { groupsWithHerd } from './herd/herd-log';
import { rememberedLists } from './remembered-lists';
import * as words from './words';

export type ChosenLists = Readonly<Partial<Record<ListKind, FoundList>>>;

/** The grower's two lists and what stands in them. */
export interface GrowerLists {
  /** The tab that a list stands on. */
  readonly tabOf: (list: FoundList | undefined) => TabContent | undefined;
  readonly found: Readonly<Record<ListKind, readonly FoundList[]>>;
  readonly chosen: Readonly<Record<ListKind, FoundList | undefined>>;
  /** The chosen ones with their tabs. */
  readonly sources: ListSources;
  readonly paddocks: readonly ReadPaddock[];
  readonly groups: readonly ReadGroup[];
  /** Everything wrong in both lists and in the herd log, each with its cell. */
  readonly problems: readonly ListProblem[];
  /** The same by list, save where groups stand. */
  readonly wrong: Readonly<Record<ListKind, readonly ListProblem[]>>;
  /** Areas and weights that the lists lack. */
  readonly lacking: readonly MissingFigures[];
  /** Paddocks that may be out of use. */
  readonly unused: PaddocksRead['unused'];
  /** Groups that are left out until the grower says whether and where they are in the rotation. */
  readonly unplaced: GroupsRead['unplaced'];
  /** Without a group list: the groups that records tell of. */
  readonly gathered: Gathered | undefined;
  /** Weights of which the list gives no day. */
  readonly undated: UndatedWeights | undefined;
  /** Remarks with a day that may be meant as “open from”. */
  readonly remarks: PaddocksRead['remarks'];
  /** What the grower should know about the reading of each list although nothing is wrong. */
  readonly notes: Readonly<Record<ListKind, readonly string[]>>;
}

/** `own`: as the grower corrected them on the page. `remembered`: as the tables in the file were built. */
export function growerLists(
  book: Book,
  units: UnitSystem,
  own: ChosenLists = {},
  remembered?: RotationSettings['lists'],
): GrowerLists {
  const isAsFound = remembered === undefined && Object.values(own).every((list) => list === undefined);
  return isAsFound ? asFound(book, units) : listsRead(book, units, own, remembered ?? rememberedLists(book));
}

const asFound = oncePer((book: Book, units: UnitSystem) => listsRead(book, units, {}, rememberedLists(book)));

function listsRead(
  book: Book,
  units: UnitSystem,
  own: ChosenLists,
  remembered: RotationSettings['lists'],
): GrowerLists {
  const all = foundLists(book);
  const land = ofKind(all, 'paddocks');
  const paddockChosen = chosenOf(book, land, own.paddocks, remembered.paddocks);
  const tabOf = (list: FoundList | undefined) => tabNamed(book, list?.tab);
  const { locale, today } = book.overview;
  const comma = decimalComma(locale);
  const dates = { order: dateOrder(locale), today: dayFromIso(today) };
  const paddockTab = tabOf(paddockChosen);
  const paddockList = paddockChosen as unknown as PaddockList;
  const paddocks = paddockTab
    ? readPaddocks(paddockTab, paddockList, units, comma, dates)
    : { paddocks: [], remarks: [], unused: [], ...NOTHING };
  const named = paddockNamed(paddockTab, paddockTab && paddockList, paddocks.paddocks);
  const isPaddock = (text: string): boolean => paddocks.paddocks.length > 0 && named(text) !== undefined;
  const herds = ofKind(all, 'groups');
  const records = recordsAmong([...(own.groups ? [own.groups] : []), ...herds], tabOf, isPaddock);
  const isRecord = (list: FoundList | undefined): boolean =>
    list !== undefined && records.some((record) => isOfRecord(list, record.list));
  const found = { paddocks: land, groups: herds.filter((list) => !isRecord(list)) };
  const ownGroups = isRecord(own.groups) ? undefined : own.groups;
  const chosen = {
    paddocks: paddockChosen,
    groups: chosenOf(book, found.groups, ownGroups, remembered.groups),
  };
  const gathered = chosen.groups
    ? undefined
    : gatheredList(records, gatheredGroups(records, units, { comma, dates }), units);
  // A heading that the grower left out on this page is not missed.
  const lost = (kind: ListKind): string[] => (own[kind] ? [] : lostHeadings(remembered[kind], chosen[kind]));
  const lying = (kind: ListKind): readonly string[] => (chosen[kind] ? [] : lyingLists(kind, book.tabs));
  const groupTab = tabOf(chosen.groups);
  const groupList = chosen.groups as unknown as GroupList;
  const weighings = groupTab
    ? lastWeighings(book.tabs, all, { tab: groupTab, list: chosen.groups! }, units, comma, dates)
    : NO_WEIGHINGS;
  const isKnown = (name: string): boolean => weighings.has(nameKey(name)) || isBreedingName(name);
  const names = new Set(paddocks.paddocks.map(({ name }) => nameKey(name)));
  const groups = groupTab
    ? readGroups(groupTab, groupList, units, comma, { ...dates, weighings, paddockNamed: named })
    : { groups: [], unplaced: [], ...NOTHING };
  const moves =
    groupTab && chosen.groups ? unreadMoves({ tab: groupTab, list: chosen.groups }, all, tabOf) : [];
  const fixedIn = (tab: TabContent | undefined, list: FoundList | undefined): readonly string[] =>
    tab && list ? fixedFiguresNotes({ tab, list }, units) : [];
  const herd = groupsWithHerd(book, groups.groups);
  const wrong = {
    paddocks: [...columnDoubts(paddockTab, chosen.paddocks), ...paddocks.problems],
    groups: [...columnDoubts(groupTab, chosen.groups), ...groups.problems, ...herd.problems],
  };
  const isClear = paddocks.problems.length + groups.problems.length + herd.problems.length === 0;
  const wrongCells = new Set([...paddocks.problems, ...groups.problems].map(({ cell }) => cell));
  const isWrong = (cell: string): boolean => wrongCells.has(cell);
  // Its area comes from its sides.
  const isRead = (name: string): boolean => names.has(nameKey(name));
  const standing = standingProblems(herd.groups, paddocks.paddocks, chosen.groups?.tab ?? '');
  /** A tab of an earlier year may hold another farm than today's. */
  const early = (list: FoundList | undefined): string[] => {
    const year = yearIn(list?.tab ?? '');
    return list && year > 0 && year < yearIn(today) ? [listWords.earlierYear(list.tab, list.kind)] : [];
  };
  return {
    tabOf,
    found,
    chosen,
    sources: {
      ...(paddockTab && {
        paddocks: { tab: paddockTab, list: withTexts(paddockList), unread: cellsOf(paddocks.unread) },
      }),
      ...(groupTab && {
        groups: { tab: groupTab, list: withTexts(groupList), unread: cellsOf(groups.unread) },
      }),
    },
    paddocks: paddocks.paddocks,
    groups: herd.groups,
    problems: [...wrong.paddocks, ...wrong.groups, ...(isClear ? standing : [])],
    wrong,
    lacking: [
      paddockTab &&
        missingFigures({ tab: paddockTab, list: paddockList }, units, { isKnown: isRead, isWrong }),
      groupTab && missingFigures({ tab: groupTab, list: groupList }, units, { isKnown, isWrong }),
    ].filter((one) => one !== undefined),
    undated: groupTab && undatedWeights({ tab: groupTab, list: groupList }, herd.groups),
    remarks: paddocks.remarks,
    unused: paddocks.unused,
    unplaced: groups.unplaced,
    gathered,
    notes: {
      paddocks: [
        ...lost('paddocks'),
        ...early(chosen.paddocks),
        ...lying('paddocks'),
        ...notesOf(paddocks),
        ...fixedIn(paddockTab, chosen.paddocks),
        ...copiesOf(book),
      ],
      groups: [
        ...lost('groups'),
        ...early(chosen.groups),
        ...lying('groups'),
        ...moves,
        ...notesOf(groups),
        ...fixedIn(groupTab, chosen.groups),
        ...herd.notes,
      ],
    },
  };
}

/** With the words of its headings, by which it is found again. */
function withTexts<List extends GrowerList>(list: List): List {
  return { ...list, texts: headingTexts(list as unknown as FoundList) };
}

const NO_WEIGHINGS: ReadonlyMap<string, Weighing> = new Map();
const NOTHING = { problems: [], notes: [], leftOut: [], unread: [] };

function cellsOf(problems: readonly ListProblem[]): readonly string[] {
  return problems.map(({ cell }) => cell);
}

function copiesOf({ tabs, overview: { blocks } }: Book): readonly string[] {
  return copiedMovesNotes(
    tabs,
    blocks,
    blocks.some(({ name }) => name === ROTATION_NAME),
  );
}

function notesOf({ notes, leftOut }: Pick<PaddocksRead, 'notes' | 'leftOut'>): string[] {
  if (leftOut.length === 0) return [...notes];
  const rows = leftOut.map(({ cell, text }) => `${cell} (“${text}”)`);
  return [words.leftOutTotals(rows.join(', ')), ...notes];
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
  return listAgain(book, own) ?? listAgain(book, remembered) ?? found[0];
}
