import { useState } from 'preact/hooks';
import type { BlockContent } from '../../../../shared/block/read-block';
import {
  civilFromDay,
  type Day,
  dayFromCivil,
  dayFromIso,
  isoFromDay,
} from '../../../../shared/core/calendar/day';
import { bindLists } from '../../../../shared/lists/bind-lists';
import type { GroupList, ListSource, PaddockList } from '../../../../shared/lists/model';
import { readAmount } from '../../../../shared/locale/read-amount';
import { blockFingerprint } from '../../../../shared/table/block-fingerprint';
import { readRotation } from '../../../../shared/table/read-rotation';
import type { BudgetStay } from '../../../../shared/tasks/budget/budget-model';
import { originOfLists, originOfRotation } from '../../../../shared/tasks/budget/origin-words';
import { plainStays } from '../../../../shared/tasks/budget/plain-stays';
import type { BudgetRead } from '../../../../shared/tasks/budget/read-budget';
import { rotationLinks } from '../../../../shared/tasks/budget/rotation-links';
import { rotationStays } from '../../../../shared/tasks/budget/rotation-stays';
import type { StaySource } from '../../../../shared/tasks/budget/stay-columns';
import { standingBlock } from '../../../../shared/tasks/standing-block';
import type { UnitSystem } from '../../../../shared/units/units';
import { seasonNotesOf } from '../../lists/list-notes';
import { type Lists, useLists } from '../../lists/use-lists';
import type { Book } from '../../parts/use-book';

export type StaysFrom = 'rotation' | 'lists';

export interface SeasonForm {
  readonly start: string;
  readonly end: string;
  readonly daysOn: string;
}

export interface StaysState {
  /** The rotation table of the file, if there is one. */
  readonly rotationTab: string | undefined;
  readonly from: StaysFrom;
  readonly setFrom: (from: StaysFrom) => void;
  readonly lists: Lists;
  readonly season: SeasonForm;
  readonly setSeason: (season: SeasonForm) => void;
  readonly stays: readonly BudgetStay[];
  readonly source: StaySource;
  readonly problems: readonly string[];
  readonly words: string;
  /** What in the group list does not fit the season. */
  readonly notes: readonly string[];
  /** The source as it stands in the file now. Throws where it says something else than what the stays were read from. */
  readonly bind: (now: Book) => StaySource;
}

const ROTATION_NAME = 'SOUNDER_ROTATION';
/** Far more than a season of any farm; keeps the table in bounds. */
const MOST_STAYS = 2000;

/** The rotation table as it stands, with its unit system. */
export function rotationOf(book: Book) {
  const block = standingBlock(book, ROTATION_NAME);
  const tab = book.tabs.find(({ name }) => name === block?.info.tab);
  return block && tab ? { block, old: readRotation(tab, block.info) } : undefined;
}

/** Stays to budget for: those of the rotation table, or a plain walk through the lists. */
export function useStays(
  book: Book,
  units: UnitSystem,
  comma: boolean,
  standing: BudgetRead | undefined,
): StaysState {
  const rotation = rotationOf(book);
  const [from, setFrom] = useState<StaysFrom>(rotation ? 'rotation' : 'lists');
  const lists = useLists(book, units, standing?.lists);
  const [typed, setSeason] = useState<SeasonForm>();
  const season = typed ?? startSeason(lists, book.overview.today);
  const base = { rotationTab: rotation?.block.info.tab, from, setFrom, lists, season, setSeason };
  if (from === 'rotation' && rotation) {
    const { rows, problems, settings } = rotation.old;
    const read = rotationStays(rows, rotation.block.info.tab);
    const links = settings?.unitSystem === units ? rotationLinks(rotation.block) : undefined;
    return {
      ...base,
      stays: read.stays,
      source: links ? { rotation: links } : {},
      problems: [...problems.map(({ sentence }) => sentence), ...read.problems],
      words: originOfRotation(rotation.block.info.tab),
      notes: [],
      bind: (now) => {
        const table = sameTable(rotation.block, standingBlock(now, ROTATION_NAME));
        const bound = links && rotationLinks(table);
        return bound ? { rotation: bound } : {};
      },
    };
  }
  const read = readSeason(season, comma);
  const today = dayFromIso(book.overview.today) ?? 0;
  const problems = [
    ...lists.problems.map(({ sentence }) => sentence),
    ...('problem' in read ? [read.problem] : []),
  ];
  const stays =
    problems.length === 0 && !('problem' in read) ? plainStays(lists.paddocks, lists.groups, read) : [];
  const source = sourceOf(book, lists);
  return {
    ...base,
    bind: (now) => bindLists(source, now),
    stays: stays.length > MOST_STAYS ? [] : stays,
    source,
    problems:
      stays.length > MOST_STAYS
        ? [...problems, `More than ${MOST_STAYS} stays: choose longer ones.`]
        : problems,
    words: originOfLists(season.daysOn),
    // A plain walk does not look at open dates.
    notes: seasonNotesOf(
      { ...lists, paddocks: [] },
      'problem' in read ? undefined : { ...read, today, system: units },
    ),
  };
}

function sameTable(asRead: BlockContent, now: BlockContent | undefined): BlockContent {
  const mark = (block: BlockContent): string => blockFingerprint(block.values, block.formulas);
  if (now && mark(now) === mark(asRead)) return now;
  throw new Error(
    `The rotation table on “${asRead.info.tab}” was changed after the page had read it. Press “Read the spreadsheet again” so that it counts, look at the numbers and write once more. Nothing was written.`,
  );
}

function sourceOf(book: Book, { chosen, groups }: Lists): StaySource {
  const tabOf = (name: string | undefined) => book.tabs.find((tab) => tab.name === name);
  const [paddockTab, groupTab] = [tabOf(chosen.paddocks?.tab), tabOf(chosen.groups?.tab)];
  return {
    ...(paddockTab && {
      paddocks: { tab: paddockTab, list: chosen.paddocks } as unknown as ListSource<PaddockList>,
    }),
    // Where a herd log says more than the list, the figures stand as numbers.
    ...(groupTab &&
      groups.every(({ herd }) => herd === undefined) && {
        groups: { tab: groupTab, list: chosen.groups } as unknown as ListSource<GroupList>,
      }),
  };
}

/** From the first group that comes in to the last that leaves; the rest of the year where the list does not say. */
function startSeason({ groups }: Lists, todayIso: string): SeasonForm {
  const today = dayFromIso(todayIso) ?? 0;
  const starts = groups.map(({ from, weighedOn }) => from ?? weighedOn);
  const start = starts.length > 0 ? Math.min(...starts) : today;
  const ends = groups.flatMap(({ until }) => (until === undefined ? [] : [until]));
  const { year } = civilFromDay(start);
  const end: Day = ends.length > 0 ? Math.max(...ends) : dayFromCivil(year, 11, 1);
  return { start: isoFromDay(start), end: isoFromDay(end), daysOn: '7' };
}

function readSeason(
  form: SeasonForm,
  comma: boolean,
): { start: Day; end: Day; daysOn: number } | { problem: string } {
  const [start, end] = [dayFromIso(form.start), dayFromIso(form.end)];
  if (start === undefined || end === undefined)
    return { problem: 'The season needs a first and a last day.' };
  if (end <= start) return { problem: 'The season must end after it starts.' };
  const daysOn = readAmount(form.daysOn, comma);
  if (
    'problem' in daysOn ||
    daysOn.value === undefined ||
    !Number.isInteger(daysOn.value) ||
    daysOn.value < 1
  ) {
    return {
      problem: `Days in a paddock must be a whole number from 1 up, got ${form.daysOn || 'a blank'}.`,
    };
  }
  return { start, end, daysOn: daysOn.value };
}
