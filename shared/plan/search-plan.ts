import { beamSearch, type SearchEffort, type Work } from './beam-search';
import { improveWindow } from './improve';
import { NEVER } from './never';
import { paddockPrices, priceOfAll } from './paddock-prices';
import type { PlanTables } from './plan-tables';
import { replay } from './replay';
import { type Move, movesOf } from './search-state';
import { type SearchTask, wholeTask } from './search-task';
import { simpleRound } from './simple-round';
import type { Steps } from './steps';

/*
 * Why this search. A stay's cost depends on when its paddock was last left, so the future depends on all paddocks
 * at once: dynamic programming over days would need a state for every pattern of rests, and the days × groups ×
 * paddocks of a real farm are beyond exact solvers in a page. What does split up is each group's own moving (move
 * days, lengths, ground limit, open dates, strides): without rest and the other groups it is a small dynamic
 * program, solved backwards first. Its value is the bound with which a beam search forward over time compares
 * states and cuts off what cannot beat the best plan so far; a guess of the rest still to be missed ranks them.
 * Paddocks that the rules cannot tell apart are tried once, and states with the same future are kept once.
 * A beam forgets; so the plan is then improved piece by piece: all groups in a window of days, or one group over
 * the whole season, are searched again with the rest kept (large neighbourhood search), by the same beam; and where
 * rest falls short, all from a day on. Several weights of the guess and more or fewer paddocks to choose from give
 * several starts, and the best end wins.
 *
 * Alone, each group would take the best paddocks over and over; so days of paddocks get prices (paddockPrices), found
 * once a first plan is there. They make the bound of the whole season higher and its beam far more to the point: on four
 * uneven farms one of width 8 did better than one of width 1000 without.
 *
 * Effort is counted in states, each weighed by its groups and paddocks, never by the clock: the same problem gets the
 * same plan on every machine. The width shrinks to a floor as farms grow; where the plan falls short and effort is
 * left, it is improved again with ever wider beams. Two starts are of another kind: a beam that may not fall short at
 * all, and the simple round, which needs no paddock to spare. Every part is a generator that yields between two small
 * pieces of work (see Steps).
 */

/** Farm size (days × groups × paddocks) up to which the widest search is affordable; judgement. */
const SMALL_FARM = 2000;
const WIDEST = 40;
const NARROWEST = 8;
/**
 * States × (groups + paddocks) for a plan: enough where nothing falls short, and the most where something does. The
 * most is one to two seconds' work; judgement.
 */
const ENOUGH = 3_500_000;
const MOST = 11_000_000;
const MOST_ROUNDS = 4;
/**
 * Share of the effort for starts, which cost far less than the improving of one; and so many of them are improved. Judgement:
 * with one start improved at once, farms that fall short nowhere had plans up to half as bad again where even use counts.
 */
const START_SHARE = 0.7;
const MOST_IMPROVED = 3;
/** How much wider the last look is at most. */
const MOST_WIDENING = 10;
/** Points closer together than this are the same. */
const SAME = 1e-9;

/** What the search of one problem has in hand. */
interface Search {
  readonly tables: PlanTables;
  whole: SearchTask;
  /** No plan costs less. */
  bound: number;
  readonly work: Work;
}

/** The best plan found, or undefined. */
export function* searchPlan(
  tables: PlanTables,
  flawless: readonly Move[] | undefined,
): Steps<readonly Move[] | undefined> {
  const search = yield* searchOf(tables);
  const width = widthFor(tables);
  const best = bestOf(tables);
  const ends: (readonly Move[])[] = [];
  const consider = (moves: readonly Move[] | undefined): void => {
    best.take(moves);
    if (moves) ends.push(moves);
  };
  consider(flawless ?? (yield* startFrom(search, { width, ...FIRST })));
  consider(yield* simpleRound(tables));
  if (best.moves && !isEnough(search, best.moves)) yield* setPrices(search, points(tables, ends[0]!));
  for (const start of starts(width, flawless !== undefined)) {
    if (isEnough(search, best.moves, START_SHARE)) break;
    consider(yield* startFrom(search, start));
  }
  if (!best.moves) consider(yield* searchWider(search, width));
  for (const moves of inOrder(tables, ends).slice(0, MOST_IMPROVED)) {
    if (isEnough(search, best.moves)) return best.moves;
    const again = fallsShort(tables, moves) ? yield* searchOnward(search, moves, width) : moves;
    best.take(again);
    best.take(yield* improve(search, again, width));
  }
  if (best.moves && !isEnough(search, best.moves)) best.take(yield* lookWide(search, best.moves, width));
  return yield* improveOn(search, best, width);
}

/**
 * The best plan where each move that is not one of the plan before costs: from that plan, as far as it can still be
 * kept; and from `fresh`, one made without it, where that falls less short. (Chance differences in how well two searches
 * end are no reason to move pigs otherwise; nor is a little more even use, so what is kept is not improved for that.)
 */
export function* searchFrom(
  tables: PlanTables,
  fresh: readonly Move[] | undefined,
): Steps<readonly Move[] | undefined> {
  if (fresh && !isChanged(tables, fresh)) return fresh;
  const search = yield* searchOf(tables);
  const width = widthFor(tables);
  const best = bestOf(tables);
  const faithful = faithfulTables(tables);
  const keeping = { ...search, tables: faithful, whole: yield* wholeTask(faithful) };
  best.take(yield* startFrom(keeping, { width: 2 * width, looks: 12, restWeight: 0.5 }));
  const isGood = best.moves && fresh && flaws(tables, best.moves) <= flaws(tables, fresh);
  if (fresh && !isGood) best.take(yield* improve(search, fresh, width));
  return yield* improveOn(search, best, width);
}

/** A change counts so many times over while the plan before is followed for a start. */
const FAITH = 100;

function faithfulTables(tables: PlanTables): PlanTables {
  const groups = tables.groups.map((group) =>
    group.entryPoints ? { ...group, entryPoints: group.entryPoints.map((points) => FAITH * points) } : group,
  );
  return { ...tables, groups };
}

function isChanged(tables: PlanTables, moves: readonly Move[]): boolean {
  return points(tables, moves) > points(withoutChanges(tables), moves) + SAME;
}

function withoutChanges(tables: PlanTables): PlanTables {
  return { ...tables, groups: tables.groups.map(({ entryPoints: _, ...group }) => group) };
}

function* searchOf(tables: PlanTables): Steps<Search> {
  const whole = yield* wholeTask(tables);
  const work = { states: 0, most: statesFor(tables, MOST) };
  return { tables, whole, bound: whole.start.bound, work };
}

/** Farm size beside the largest that is searched most widely. */
function shareOf(tables: PlanTables): number {
  return SMALL_FARM / Math.max(1, tables.days * tables.groupCount * tables.paddockCount);
}

function widthFor(tables: PlanTables): number {
  return Math.round(Math.min(WIDEST, Math.max(NARROWEST, WIDEST * shareOf(tables))));
}

interface Best {
  moves: readonly Move[] | undefined;
  readonly take: (moves: readonly Move[] | undefined) => void;
}

function bestOf(tables: PlanTables): Best {
  const best: Best = {
    moves: undefined,
    take: (moves) => {
      if (moves && (!best.moves || points(tables, moves) < points(tables, best.moves) - SAME))
        best.moves = moves;
    },
  };
  return best;
}

function* startFrom(search: Search, { isPlain, ...effort }: Start): Steps<readonly Move[] | undefined> {
  const isOther = isPlain && search.tables.problem.rules.evenness;
  const tables = isOther ? withoutEvenness(search.tables) : search.tables;
  const whole = isOther ? yield* wholeTask(tables) : search.whole;
  const found = yield* beamSearch(tables, whole, effort, Infinity, search.work);
  return found && movesOf(found.state);
}

/** From here on the whole season is searched with prices, which raise the bound; see paddockPrices. */
function* setPrices(search: Search, worth: number): Steps<void> {
  const { tables, work } = search;
  const prices = yield* paddockPrices(tables, worth, work);
  search.whole = yield* wholeTask(tables, prices);
  search.bound = Math.max(search.bound, search.whole.start.bound - priceOfAll(tables, prices));
}

/** The best first, each number of points once. */
function inOrder(tables: PlanTables, plans: readonly (readonly Move[] | undefined)[]): (readonly Move[])[] {
  const byPoints = new Map<string, readonly Move[]>();
  for (const moves of plans) if (moves) byPoints.set(points(tables, moves).toFixed(6), moves);
  return [...byPoints.values()].sort((a, b) => points(tables, a) - points(tables, b));
}

function isEnough(search: Search, moves: readonly Move[] | undefined, share = 1): boolean {
  return moves !== undefined && (isProven(search, moves) || isSpent(search, moves, share));
}

/** Where the plan falls short, with ever wider beams until the effort is spent. */
function* improveOn(search: Search, best: Best, width: number): Steps<readonly Move[] | undefined> {
  const { tables } = search;
  for (let wider = 2 * width; ; wider *= 2) {
    const { moves } = best;
    if (!moves || isEnough(search, moves) || !fallsShort(tables, moves)) return moves;
    best.take(yield* improve(search, moves, wider));
    if (best.moves === moves && wider > WIDEST) return moves;
  }
}

type FlawlessWay = Pick<Start, 'looks' | 'turns' | 'isPlain'>;

/** The second finds most; the first makes the better plan. Measured on 70 tight farms: found 44 with the first, 69 with the second. */
const FLAWLESS_WAYS: readonly FlawlessWay[] = [
  { looks: 3 },
  { looks: 12, turns: 1, isPlain: true },
  { looks: 12, isPlain: true },
];

/**
 * A plan that falls short nowhere, or undefined where none was found; `tables` leave out the stays that do. With
 * `willAnyDo` that there is one is found sooner, in the same ways.
 */
export function* searchFlawless(tables: PlanTables, willAnyDo = false): Steps<readonly Move[] | undefined> {
  const work = { states: 0, most: statesFor(tables, ENOUGH) };
  const [first, ...others] = FLAWLESS_WAYS;
  const plain = tables.problem.rules.evenness ? withoutEvenness(tables) : tables;
  const wholes = new Map<PlanTables, SearchTask>();
  for (const { isPlain, ...way } of willAnyDo ? [...others, first!] : FLAWLESS_WAYS) {
    const used = isPlain ? plain : tables;
    const whole = wholes.get(used) ?? (yield* wholeTask(used));
    wholes.set(used, whole);
    if (whole.start.bound === Infinity) return undefined;
    const effort = { width: NARROWEST, restWeight: 0.5, flawless: true, ...way };
    const found = yield* beamSearch(used, whole, effort, Infinity, work);
    if (found) return movesOf(found.state);
  }
  return undefined;
}

function withoutEvenness(tables: PlanTables): PlanTables {
  return { ...tables, unevenPoints: new Float64Array(tables.paddockCount) };
}

/** Any lawful plan, the first one found. */
export function* searchAny(tables: PlanTables): Steps<readonly Move[] | undefined> {
  const work = { states: 0, most: statesFor(tables, ENOUGH) };
  const effort = { width: NARROWEST, looks: 3, restWeight: 0.5 };
  const found = yield* beamSearch(tables, yield* wholeTask(tables), effort, Infinity, work);
  return found ? movesOf(found.state) : yield* simpleRound(tables);
}

/** States that make up an effort. */
function statesFor({ groupCount, paddockCount, problem }: PlanTables, effort: number): number {
  return ((problem.effort ?? 1) * effort) / (groupCount + paddockCount);
}

function isSpent({ tables, work }: Search, best: readonly Move[], share = 1): boolean {
  return work.states > share * (fallsShort(tables, best) ? work.most : statesFor(tables, ENOUGH));
}

/** Whether some of the points are for days short or over: those alone count tens. */
function fallsShort(tables: PlanTables, moves: readonly Move[]): boolean {
  return flaws(tables, moves) > 0;
}

function flaws(tables: PlanTables, moves: readonly Move[]): number {
  return replay(tables, moves).flaws;
}

/** One wide look for something better than the best: cheap, since all that cannot beat it is cut off. */
function* lookWide(
  search: Search,
  best: readonly Move[],
  narrow: number,
): Steps<readonly Move[] | undefined> {
  const { tables, whole, work } = search;
  const width = Math.round(narrow * Math.min(MOST_WIDENING, 2.5 * shareOf(tables)));
  if (width < NARROWEST) return undefined;
  const effort = { width, looks: 12, restWeight: 0.5, longStays: true };
  const found = yield* beamSearch(tables, whole, effort, points(tables, best), work);
  return found && movesOf(found.state);
}

/** At the bound that no plan can beat. */
function isProven({ tables, bound }: Search, moves: readonly Move[]): boolean {
  return points(tables, moves) <= bound + SAME;
}

interface Start extends SearchEffort {
  /** Even use left aside: days short count more than that, and a narrow beam can see to one thing only. */
  readonly isPlain?: boolean;
}

/** Where no plan is known that falls short nowhere. */
const FIRST = { looks: 12, restWeight: 0.5, turns: 1, isPlain: true };

/**
 * Where rest is short the paddocks that are ready first matter most: with only one to three of them to choose from a
 * narrow beam sees farther. Judgement: measured on 39 tight farms of 4 to 32 paddocks.
 */
function starts(width: number, isFlawless: boolean): Start[] {
  const inTurn = [
    { width, looks: 12, restWeight: 0.5, turns: 2 },
    { width: 2 * width, looks: 12, restWeight: 0.5, turns: 2 },
    { width: 2 * width, looks: 12, restWeight: 0.5, turns: 3 },
  ];
  const free = [
    { width, looks: 3, restWeight: 0.5, isPlain: !isFlawless },
    { width, looks: 12, restWeight: 0.5 },
    { width: 2 * width, looks: 12, restWeight: 1 },
    { width: 2 * width, looks: 3, restWeight: 0.5, longStays: true },
  ];
  return isFlawless ? [...free, ...inTurn] : [...inTurn, ...free];
}

/** From some days on all is searched again: rests reach far ahead, so that a window of days alone finds little. */
function* searchOnward(search: Search, first: readonly Move[], width: number): Steps<readonly Move[]> {
  const { tables, work } = search;
  const everyone = tables.groups.map((_, g) => g);
  let moves = first;
  for (const turns of [2, tables.paddockCount]) {
    for (const part of [1 / 6, 1 / 3, 1 / 2]) {
      if (isSpent(search, moves)) return moves;
      const effort = { width: 2 * width, looks: 12, restWeight: 0.5, turns };
      const from = Math.round(part * tables.days);
      moves = yield* improveWindow(tables, moves, from, NEVER, everyone, effort, work);
    }
  }
  return moves;
}

/** Where the beam met only dead ends: a few times more, ever wider. */
function* searchWider({ tables, whole, work }: Search, width: number): Steps<readonly Move[] | undefined> {
  for (const wider of [4, 16]) {
    const effort = { width: width * wider, looks: 3, restWeight: 0 };
    const found = yield* beamSearch(tables, whole, effort, Infinity, work);
    if (found) return movesOf(found.state);
  }
  return undefined;
}

function* improve(search: Search, first: readonly Move[], width: number): Steps<readonly Move[]> {
  let moves = first;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    if (isProven(search, moves) || isSpent(search, moves)) break;
    const before = moves;
    const effort = { width, looks: round === 0 ? 3 : 12, restWeight: 0.5, longStays: round % 2 === 0 };
    if (search.tables.groupCount > 1) moves = yield* improveGroups(search, moves, effort);
    moves = yield* improveWindows(search, moves, effort);
    if (moves === before && round > 0) break;
  }
  return moves;
}

function* improveGroups(
  { tables, work }: Search,
  first: readonly Move[],
  effort: SearchEffort,
): Steps<readonly Move[]> {
  let moves = first;
  for (const g of tables.groups.keys())
    moves = yield* improveWindow(tables, moves, -NEVER, NEVER, [g], effort, work);
  return moves;
}

/** Windows of about four stays, each beginning about one stay after the last. */
function* improveWindows(
  { tables, work }: Search,
  first: readonly Move[],
  effort: SearchEffort,
): Steps<readonly Move[]> {
  const everyone = tables.groups.map((_, g) => g);
  const step = Math.max(2, Math.round(tables.problem.rules.longestStayDays));
  let moves = first;
  for (let day = 0; day < tables.days; day += step) {
    moves = yield* improveWindow(
      tables,
      moves,
      day === 0 ? -NEVER : day,
      day + 4 * step,
      everyone,
      effort,
      work,
    );
  }
  return moves;
}

function points(tables: PlanTables, moves: readonly Move[]): number {
  return replay(tables, moves).cost;
}
