import type { Book } from '../../block/book';
import { cellOnTab } from '../../block/cell-on-tab';
import { civilFromDay, type Day, dayFromCivil, dayFromIso, isoFromDay } from '../../core/calendar/day';
import type { ListSources } from '../../lists/model';
import { nameKey } from '../../lists/read-list-cell';
import { readAmount } from '../../locale/read-amount';
import type { UnitSystem } from '../../units/units';
import { type Asking, asking, type ChoiceForm } from '../ask';
import { type GrowerLists, growerLists } from '../grower-lists';
import { type StandingRotation, standingRotation } from '../rotation/rotation-standing';
import { insideSettings } from '../settings';
import type { Sources, Task } from '../task';
import { ENDS_AFTER } from '../words';
import { BUDGET_BLOCK, type BudgetPlan, budgetBlock, type LoadNotes } from './budget-block';
import type { BudgetStay } from './budget-model';
import { BUDGET_SETTINGS } from './budget-settings';
import { earlierBudget } from './earlier-budget';
import { plainStays } from './plain-stays';
import { type BudgetRead, readBudget } from './read-budget';
import { rotationLinks } from './rotation-links';
import { rotationStays } from './rotation-stays';
import type { StaySource } from './stay-columns';
import * as words from './words';
import { workableStays } from './workable-stays';

export const SEASON_LABELS = {
  start: 'First day',
  end: 'Last day (pigs leave)',
  daysOn: 'Days in a paddock',
} as const;

/** Where the stays come from. */
export interface StaysForm {
  /** Absent where there is no rotation table. */
  readonly from: ChoiceForm<'rotation' | 'lists'> | undefined;
  readonly stays: readonly BudgetStay[];
  readonly problems: readonly string[];
  /** Where they come from the lists. */
  readonly walk?: {
    readonly lists: GrowerLists;
    readonly typed: Readonly<Record<keyof typeof SEASON_LABELS, string>>;
    /** Absent while it cannot be read. */
    readonly season: { readonly start: Day; readonly end: Day } | undefined;
  };
}

/** Feed, water, shelter and what falls on the ground, over a season. */
export const BUDGET_TASK = {
  name: BUDGET_BLOCK,
  what: 'the budget',
  tabName: 'Feed and water',
  next: words.FENCE_NEXT,
  read: (book, answers) => {
    const ask = asking(book, answers, BUDGET_BLOCK);
    const read = ask.block && readBudget(ask.block);
    const table = standingRotation(book);
    const units = ask.units(table?.rotation.settings?.unitSystem);
    const { form: stays, source, origin, sources } = askStays(ask, book, table, units, read);
    ask.wrong(stays.problems);
    const settings = ask.settings(BUDGET_SETTINGS, read?.settings, units);
    const limits = insideSettings(BUDGET_SETTINGS, settings.values, units);
    const workable = workableStays(settings.ok ? stays.stays : [], limits, units, (group) =>
      gainCell(stays.walk?.lists ?? growerLists(book, units), group),
    );
    if (workable.stays.length === 0) ask.wrong([words.NO_STAY, ...workable.leftOut]);
    const record = ask.block && earlierBudget(ask.block, workable.stays);
    return ask.form(
      () => ({
        stays: workable.stays,
        units,
        settings: settings.values,
        source,
        origin,
        leftOut: workable.leftOut,
        notes: (record === undefined && read?.notes) || new Map(),
      }),
      { units, stays, settings, limits, workable },
      { sources, record },
    );
  },
  compose: ({ notes, ...plan }, corner) => budgetBlock(plan, notes, corner),
} satisfies Task<BudgetPlan & { readonly notes: LoadNotes }>;

function gainCell({ groups, chosen }: GrowerLists, name: string): string | undefined {
  const place = groups.find((group) => nameKey(group.name) === nameKey(name))?.cells.dailyGain;
  return place && chosen.groups && cellOnTab(chosen.groups.tab, place.row, place.column);
}

interface Asked {
  readonly form: StaysForm;
  readonly source: StaySource;
  /** One sentence on where the stays come from. */
  readonly origin: string;
  readonly sources: Sources;
}

/** Stays to budget for: those of the rotation table, or a plain walk through the lists. */
function askStays(
  ask: Asking,
  book: Book,
  table: StandingRotation | undefined,
  units: UnitSystem,
  read: BudgetRead | undefined,
): Asked {
  // A budget that was made from the lists stays one.
  const wasOfLists = read?.isOfLists ?? false;
  const from =
    table &&
    ask.choice(
      'Which stays?',
      {
        rotation: `The moves planned on “${table.block.info.tab}”`,
        lists: 'My lists, paddock after paddock',
      },
      wasOfLists ? 'lists' : 'rotation',
    );
  if (table && from?.value === 'rotation') {
    const { rows, problems, settings } = table.rotation;
    const { tab } = table.block.info;
    const stays = rotationStays(rows, tab);
    // A weight in the list that is none leaves moves without one.
    const listed = stays.problems.length > 0 ? growerLists(book, units).problems : [];
    const links = settings?.unitSystem === units ? rotationLinks(table.block) : undefined;
    return {
      form: {
        from,
        stays: stays.stays,
        problems: [...[...listed, ...problems].map(({ sentence }) => sentence), ...stays.problems],
      },
      source: links ? { rotation: links } : {},
      origin: words.originOfRotation(tab),
      sources: { rotation: table.block },
    };
  }
  const lists = ask.lists(['paddocks', 'groups'], units);
  const typed = ask.texts(SEASON_LABELS, startSeason(lists, book.overview.today));
  const season = readSeason(typed, ask.comma);
  const problems = [
    ...lists.problems.map(({ sentence }) => sentence),
    ...('problem' in season ? [season.problem] : []),
  ];
  const isReady = problems.length === 0 && !('problem' in season);
  const stays = isReady ? plainStays(lists.paddocks, lists.groups, season) : [];
  const isTooMany = stays.length > MOST_STAYS;
  return {
    form: {
      from,
      stays: isTooMany ? [] : stays,
      problems: isTooMany ? [words.tooManyStays(MOST_STAYS)] : problems,
      walk: { lists, typed, season: 'problem' in season ? undefined : season },
    },
    // Where a herd log says more than the list, the figures stand as numbers.
    source: lists.groups.some(({ herd }) => herd) ? withoutGroups(lists.sources) : lists.sources,
    origin: words.originOfLists(typed.daysOn),
    sources: lists.sources,
  };
}

function withoutGroups({ paddocks }: ListSources): ListSources {
  return paddocks ? { paddocks } : {};
}

/** Far more than a season of any farm; keeps the table in bounds. */
const MOST_STAYS = 2000;

/** From the first group that comes in to the last that leaves; the rest of the year where the list does not say. */
function startSeason({ groups }: GrowerLists, todayIso: string) {
  const today = dayFromIso(todayIso) ?? 0;
  const starts = groups.map(({ from, weighedOn }) => from ?? weighedOn);
  const start = starts.length > 0 ? Math.min(...starts) : today;
  const ends = groups.flatMap(({ until }) => (until === undefined ? [] : [until]));
  const end: Day = ends.length > 0 ? Math.max(...ends) : dayFromCivil(civilFromDay(start).year, 11, 1);
  return { start: isoFromDay(start), end: isoFromDay(end), daysOn: '7' };
}

function readSeason(
  typed: NonNullable<StaysForm['walk']>['typed'],
  comma: boolean,
): { start: Day; end: Day; daysOn: number } | { problem: string } {
  const [start, end] = [dayFromIso(typed.start), dayFromIso(typed.end)];
  if (start === undefined || end === undefined) return { problem: words.NO_SEASON };
  if (end <= start) return { problem: ENDS_AFTER };
  const daysOn = readAmount(typed.daysOn, comma);
  const days = 'problem' in daysOn ? undefined : daysOn.value;
  if (days === undefined || !Number.isInteger(days) || days < 1) {
    return {
      problem: words.badDaysOn(typed.daysOn || 'a blank'),
    };
  }
  return { start, end, daysOn: days };
}
