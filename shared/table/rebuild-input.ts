import type { Day } from '../core/calendar/day';
import { dayWords } from '../core/calendar/day-words';
import { nameKey } from '../lists/read-list-cell';
import type { PlanGroup, PlanPaddock, PlanProblem, PlanRules, Stay, Wish } from '../plan/model';
import { type Filled, filledNotes, filledRow } from './filled-row';
import { goneSince, untilGone } from './gone-since';
import type { OldRotation, OldRow, PastRow } from './model';
import { unlistedPaddocks, unlistedWishes } from './unlisted-paddocks';
import * as words from './words';

/** The farm as the lists say now, and the rules to plan by. */
export interface ListedFarm {
  readonly paddocks: readonly PlanPaddock[];
  readonly groups: readonly PlanGroup[];
  readonly rules: PlanRules;
  readonly today: Day;
  /**
   * Count moves that were planned up to today as done as planned, although no day is typed. Off: only moves with
   * a typed day are real.
   */
  readonly countPlannedAsDone?: boolean;
}

export interface RebuildInput {
  /** What is left to plan: groups stand where they really are, paddocks rest since they were really left. */
  readonly problem: PlanProblem;
  /** Rows kept as they stand. */
  readonly past: readonly PastRow[];
  /** Rows that the new plan replaces; what was typed there is carried over. */
  readonly future: readonly OldRow[];
  /** Moves that were left out: kept as they stand, and nothing follows from them but that their paddock stays free. */
  readonly skipped: readonly OldRow[];
  readonly headRows: number | undefined;
  /** What was taken for granted, in sentences. */
  readonly notes: readonly string[];
}

/**
 * Splits the old table into what has happened and what is still open, and makes the problem of planning the rest.
 *
 * For each group everything up to its last real move (a typed day moved in) is past and kept, moves without a typed
 * day in between too. The group stands in the paddock of that last move. The rest of the plan begins today, or on
 * the latest typed day if that is later; with no real move at all the whole season is planned anew.
 */
export function rebuildInput(old: OldRotation, now: ListedFarm): RebuildInput {
  const groups = bySameGroup(old.rows);
  const split = [...groups.values()].map((rows) => splitGroup(rows, now));
  const past = split.flatMap((part) => part.past).sort((a, b) => a.inDay - b.inDay);
  const future = split.flatMap((part) => part.future);
  const keep = { past, future, skipped: old.skipped, headRows: old.headRows };
  if (past.length === 0) {
    const { groups: all, rules } = now;
    const paddocks = now.paddocks.map(withoutSkipped(old.skipped, all));
    const problem = { paddocks, groups: all, rules, ...plannedBefore(future, now, rules.seasonStart) };
    return { ...keep, problem, notes: unlistedWishes(future, now.paddocks) };
  }
  const notes: string[] = [
    ...unlistedPaddocks(past, now.paddocks),
    ...unlistedWishes(future, now.paddocks),
    ...split.flatMap((part) => overdueNote(part, now.today)),
    ...filledNotes(split.flatMap(({ filled }) => filled)),
  ];
  const last = new Map(
    split.flatMap(({ past: rows }) => rows.slice(-1).map((row) => [nameKey(row.group), row])),
  );
  const planStart = Math.max(now.rules.seasonStart, now.today, ...[...last.values()].map((row) => row.inDay));
  const gone = goneSince(now.groups, past, now.rules, planStart);
  const standing = now.groups.map((group) => {
    const key = nameKey(group.name);
    return gone.has(key) ? undefined : standingOf(last.get(key), now.paddocks);
  });
  const unplaced = now.groups.flatMap(({ name }, g) => {
    const row = last.get(nameKey(name));
    return row && !standing[g] && !gone.has(nameKey(name)) ? [row] : [];
  });
  notes.push(...unplaced.map((row) => unplacedNote(row, planStart)));
  // Whoever comes in anew has left the paddock by then: no day counts twice.
  const left = new Map([...gone, ...unplaced.map(({ group }) => [nameKey(group), planStart] as const)]);
  noteShared(now, standing, notes);
  noteWaiting(now, standing, planStart, notes);
  const stillStanding = new Set(standing.flatMap((one) => (one ? [one.row] : [])));
  const happened = past.map((row) => untilGone(row, left));
  const placed = now.groups.map((group, g) =>
    withStanding(group, standing[g], last.has(nameKey(group.name))),
  );
  return {
    ...keep,
    past: happened,
    problem: {
      groups: placed,
      paddocks: now.paddocks
        .map((paddock) => withLastUsed(paddock, happened, stillStanding))
        .map(withoutSkipped(old.skipped, placed)),
      rules: { ...now.rules, seasonStart: planStart },
      ...plannedBefore(future, now, planStart, standing),
    },
    notes,
  };
}

/** A paddock that was left out stays free for the days of that stay: the plan does not send anybody in after all. */
function withoutSkipped(
  skipped: readonly OldRow[],
  groups: readonly PlanGroup[],
): (paddock: PlanPaddock, p: number) => PlanPaddock {
  return (paddock, p) => {
    const ends = skipped
      .filter((row) => nameKey(row.paddock) === nameKey(paddock.name))
      .flatMap(({ plannedIn, days = 1 }) => (plannedIn === undefined ? [] : [plannedIn + days]));
    if (ends.length === 0 || groups.some(({ standing }) => standing?.paddock === p)) return paddock;
    return { ...paddock, openFrom: Math.max(...ends, paddock.openFrom ?? -Infinity) };
  };
}

/**
 * The plan before, so that nothing changes without a reason, and what the grower typed over Paddock and Days of moves to
 * come, and over the days of the stay that a group is in. A paddock that is in no list can be neither.
 */
function plannedBefore(
  future: readonly OldRow[],
  { groups, paddocks }: ListedFarm,
  planStart: Day,
  standing: readonly (Standing | undefined)[] = [],
): Pick<PlanProblem, 'before' | 'wishes'> {
  const indexOf = (list: readonly { name: string }[], name: string): number =>
    list.findIndex((one) => nameKey(one.name) === nameKey(name));
  const moves = future.flatMap(({ group, inDay = -Infinity, paddock, days, typed }) => {
    const move = {
      group: indexOf(groups, group),
      paddock: indexOf(paddocks, paddock),
      day: inDay,
      days,
      typed,
    };
    return move.group >= 0 && inDay >= planStart ? [move] : [];
  });
  const before = moves.flatMap(({ group, paddock, day, days, typed }): Stay[] =>
    paddock < 0 || days === undefined || typed.includes('paddock')
      ? []
      : [{ group, paddock, inDay: day, outDay: day + days }],
  );
  const lengthened = standing.flatMap((one, group): Wish[] => {
    const { typed = [], days } = one?.row ?? {};
    const isWish = one && typed.includes('days') && days !== undefined;
    return isWish && one.since + days >= planStart ? [{ group, day: one.since, days }] : [];
  });
  const typedAhead = moves.flatMap(({ group, paddock, day, days, typed }): Wish[] => {
    const wish = {
      ...(typed.includes('paddock') && paddock >= 0 && { paddock }),
      ...(typed.includes('days') && days !== undefined && { days }),
    };
    return Object.keys(wish).length > 0 ? [{ group, day, ...wish }] : [];
  });
  const wishes = [...lengthened, ...typedAhead];
  return { ...(before.length > 0 && { before }), ...(wishes.length > 0 && { wishes }) };
}

function bySameGroup(rows: readonly OldRow[]): Map<string, OldRow[]> {
  const groups = new Map<string, OldRow[]>();
  for (const row of rows) {
    const key = nameKey(row.group);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return groups;
}

interface Split {
  /** Past rows as filled in. */
  readonly filled: readonly Filled[];
  readonly past: readonly PastRow[];
  readonly future: readonly OldRow[];
}

/** Rows in the order of the day in, whatever order they stand in; rows without a day come last. */
function splitGroup(rows: readonly OldRow[], now: ListedFarm): Split {
  const { today, countPlannedAsDone } = now;
  const inOrder = [...rows].sort(
    (a, b) => (a.inDay ?? Infinity) - (b.inDay ?? Infinity) || a.sheetRow - b.sheetRow,
  );
  const isReal = (row: OldRow): boolean =>
    row.movedIn !== undefined ||
    (countPlannedAsDone === true && row.inDay !== undefined && row.inDay <= today);
  const count = inOrder.reduce((last, row, i) => (isReal(row) ? i + 1 : last), 0);
  const past = inOrder
    .slice(0, count)
    .map(asDone(now))
    .map((row, i) => {
      const inDay = row.inDay ?? today;
      const nextIn = i + 1 < count ? inOrder[i + 1]!.inDay : undefined;
      const outDay = nextIn ?? inDay + (row.days ?? 1);
      // What was planned to be the stay gives way to what it was; a day typed wrongly is told elsewhere.
      const days = outDay > inDay ? outDay - inDay : row.days;
      const isSet = row.days !== undefined && days !== row.days;
      const stay = { ...row, inDay, outDay, ...(days !== undefined && { days }) };
      return filledRow(isSet ? { ...stay, daysBefore: row.days } : stay, now);
    });
  return {
    past: past.map(({ row }) => row),
    future: inOrder.slice(count),
    filled: past,
  };
}

/** Moves that are counted as done as planned get their planned day as the day moved in, so that it is known again. */
function asDone({ today, countPlannedAsDone }: ListedFarm): (row: OldRow) => OldRow {
  return (row) => {
    const isCounted =
      countPlannedAsDone && row.movedIn === undefined && row.inDay !== undefined && row.inDay <= today;
    return isCounted ? { ...row, movedIn: row.inDay! } : row;
  };
}

interface Standing {
  readonly paddock: number;
  readonly since: Day;
  readonly row: PastRow;
}

function standingOf(row: PastRow | undefined, paddocks: readonly PlanPaddock[]): Standing | undefined {
  if (!row) return undefined;
  const paddock = paddocks.findIndex(({ name }) => nameKey(name) === nameKey(row.paddock));
  return paddock >= 0 ? { paddock, since: row.inDay, row } : undefined;
}

function unplacedNote({ group, paddock, inDay }: PastRow, planStart: Day): string {
  return words.paddockGone(group, paddock, dayWords(inDay), dayWords(planStart));
}

/** Where the table has a real move of the group, it counts, and not the place in the list. */
function withStanding(group: PlanGroup, standing: Standing | undefined, isInTable: boolean): PlanGroup {
  const { standing: _, ...elsewhere } = group;
  if (!standing) return isInTable ? elsewhere : group;
  return { ...group, standing: { paddock: standing.paddock, since: standing.since } };
}

/** Last used: what the list says or what the table shows, whichever is later. */
function withLastUsed(
  paddock: PlanPaddock,
  past: readonly PastRow[],
  stillStanding: ReadonlySet<PastRow>,
): PlanPaddock {
  const outs = past
    .filter((row) => nameKey(row.paddock) === nameKey(paddock.name) && !stillStanding.has(row))
    .map((row) => row.outDay);
  if (outs.length === 0) return paddock;
  return { ...paddock, lastUsed: Math.max(...outs, paddock.lastUsed ?? -Infinity) };
}

function overdueNote({ past, future }: Split, today: Day): string[] {
  const last = past[past.length - 1];
  const overdue = future.filter((row) => row.inDay !== undefined && row.inDay < today).length;
  if (overdue === 0) return [];
  const taken = last ? words.stillStands(last.paddock, dayWords(last.inDay)) : words.NOT_IN_YET;
  return [words.overdue(future[0]!.group, overdue, taken)];
}

/** A day typed ahead moves the beginning of the plan there for every group. */
function noteWaiting(
  { groups, rules, today }: ListedFarm,
  standing: readonly (Standing | undefined)[],
  planStart: Day,
  notes: string[],
): void {
  for (const [g, group] of groups.entries()) {
    const entry = Math.max(group.from, rules.seasonStart, today);
    if (standing[g] || entry >= planStart || (group.until ?? planStart) <= entry) continue;
    notes.push(words.typedAhead(group.name, dayWords(entry), dayWords(planStart)));
  }
}

function noteShared(now: ListedFarm, standing: readonly (Standing | undefined)[], notes: string[]): void {
  for (const [g, one] of standing.entries()) {
    const other = standing.findIndex((two, h) => h < g && two && one && two.paddock === one.paddock);
    if (!one || other < 0) continue;
    const names = `${now.groups[other]!.name} and ${now.groups[g]!.name}`;
    notes.push(words.bothStand(names, now.paddocks[one.paddock]!.name));
  }
}
