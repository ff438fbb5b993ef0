import type { Day } from '../core/calendar/day';
import { nameKey } from '../lists/read-list-cell';
import type { OldRow, PastRow, RotationBlockInput } from './model';
import { moveId } from './move-rows';

type StayInput = Pick<RotationBlockInput, 'problem' | 'plan' | 'past' | 'future'>;

/** One row of the new table: a stay of the plan, or a row kept from the past. */
export interface TableRow {
  readonly group: string;
  readonly paddock: string;
  readonly inDay: Day;
  readonly outDay: Day;
  /** Position in the problem's lists; undefined for what is past and no longer there. */
  readonly groupIndex: number | undefined;
  readonly paddockIndex: number | undefined;
  /** Of its row in the block's memory: what was typed in a row goes where its id goes. */
  readonly id: string;
  /** Set for rows that are past: kept as they stand. */
  readonly past?: PastRow;
  /** The plan begins with the group in this stay, and keeps the days that stand for it. */
  readonly isStanding?: boolean;
  /** The row of the old table that had that id. */
  readonly old?: OldRow;
  /** Positions of the same group's rows before and after this one. */
  readonly previous?: number;
  readonly next?: number;
}

/**
 * The rows of the new table in the order of the day in, then of groups: what is past, then the plan. Where a
 * group stands in a paddock by a typed move, that row and the plan's first stay are one. A stay of the plan takes over
 * the row of the move of the old table that it is, see `sameMoves`.
 */
export function tableRows(input: StayInput): TableRow[] {
  const past = input.past ?? [];
  const planned = plannedRows(input);
  const standing = new Map<PastRow, Row>();
  const fresh = planned.filter((row) => {
    const same = past.find((old) => isSameStay(old, row));
    if (same) standing.set(same, row);
    return !same;
  });
  const kept = past.map((old) => pastRow(input, old, standing.get(old)));
  const future = input.future ?? [];
  const again = sameMoves(fresh, future, input.problem.rules.seasonStart);
  const taken = new Set([...past, ...future].map(({ id }) => id));
  const rows = [...kept, ...fresh]
    .sort((a, b) => a.inDay - b.inDay || orderOf(a) - orderOf(b) || a.outDay - b.outDay)
    .map((row): TableRow => {
      const old = row.past ?? again.get(row);
      return old ? { ...row, id: old.id, old } : { ...row, id: moveId(row, taken) };
    });
  return linked(rows);
}

type Row = Omit<TableRow, 'id' | 'old'>;

/** Days of a move to come: those that were typed, else the plan's. */
export function daysIn(row: TableRow): number {
  return wishesIn(row).includes('days') ? row.old!.days! : row.outDay - row.inDay;
}

/**
 * Cells that hold a wish of the grower's: days that were typed, a paddock that the plan has there; of the stay that a
 * group is in, days that the plan keeps.
 */
export function wishesIn({ past, old, paddock, isStanding }: TableRow): readonly ('paddock' | 'days')[] {
  if (past) return isStanding && past.typed.includes('days') ? ['days'] : [];
  if (!old) return [];
  const hasPaddock = old.typed.includes('paddock') && nameKey(old.paddock) === nameKey(paddock);
  const hasDays = old.typed.includes('days') && old.days !== undefined;
  return [...(hasPaddock ? (['paddock'] as const) : []), ...(hasDays ? (['days'] as const) : [])];
}

function orderOf({ groupIndex }: Row): number {
  return groupIndex ?? Number.MAX_SAFE_INTEGER;
}

function plannedRows({ problem, plan }: StayInput): Row[] {
  return plan.stays.map((stay) => ({
    group: problem.groups[stay.group]!.name,
    paddock: problem.paddocks[stay.paddock]!.name,
    inDay: stay.inDay,
    outDay: stay.outDay,
    groupIndex: stay.group,
    paddockIndex: stay.paddock,
  }));
}

function isSameStay(old: PastRow, row: Row): boolean {
  return (
    old.inDay === row.inDay &&
    nameKey(old.group) === nameKey(row.group) &&
    nameKey(old.paddock) === nameKey(row.paddock)
  );
}

function pastRow({ problem }: StayInput, old: PastRow, stay: Row | undefined): Row {
  const indexOf = (list: readonly { name: string }[], name: string): number | undefined => {
    const at = list.findIndex((one) => nameKey(one.name) === nameKey(name));
    return at < 0 ? undefined : at;
  };
  return {
    group: old.group,
    paddock: old.paddock,
    inDay: old.inDay,
    outDay: stay?.outDay ?? old.outDay,
    groupIndex: indexOf(problem.groups, old.group),
    paddockIndex: indexOf(problem.paddocks, old.paddock),
    ...(stay
      ? {
          past: { ...old, days: stay.outDay - stay.inDay },
          isStanding: old.days === stay.outDay - stay.inDay,
        }
      : { past: old }),
  };
}

/**
 * For each planned stay the move of the old table that it is. The moves of a group are laid side by side in their order,
 * so that most paddocks agree, and days where they can; one with a wish is the move of that day, or whatever stands in its place.
 * What is left: the same day and paddock where the group was typed over, else a visit of the group to that paddock.
 */
function sameMoves(fresh: readonly Row[], future: readonly OldRow[], planStart: Day): Map<Row, OldRow> {
  const found = new Map<Row, OldRow>();
  const [nextOld, nextNew] = [firstOfGroups(future), firstOfGroups(fresh)];
  // What was typed into a move that should have been by now was seen then: it is no reading of a stay to come,
  // unless the group goes on to that very stay.
  const isSeenBefore = (old: OldRow, row: Row): boolean =>
    old.inDay !== undefined && old.inDay < planStart && !(nextOld.has(old) && nextNew.has(row));
  const groups = new Set(fresh.map(({ group }) => nameKey(group)));
  for (const key of groups) {
    const ofGroup = <Any extends Row | OldRow>(rows: readonly Any[]): Any[] =>
      rows.filter(({ group }) => nameKey(group) === key).sort(byDayIn);
    for (const [old, row] of sideBySide(ofGroup(future), ofGroup(fresh), isSeenBefore)) found.set(row, old);
  }
  const left = (): OldRow[] => {
    const used = new Set(found.values());
    return future.filter((old) => !used.has(old)).sort(byDayIn);
  };
  const isSame = (a: OldRow | Row, b: OldRow | Row, part: 'group' | 'paddock'): boolean =>
    nameKey(a[part]) === nameKey(b[part]);
  const pairUp = (isIt: (old: OldRow, row: Row) => boolean): void => {
    for (const old of left()) {
      const row = fresh.find((one) => !found.has(one) && isIt(old, one));
      if (row) found.set(row, old);
    }
  };
  pairUp((old, row) => old.typed.includes('group') && old.inDay === row.inDay && isSame(old, row, 'paddock'));
  pairUp(
    (old, row) =>
      !old.typed.includes('paddock') &&
      !isSeenBefore(old, row) &&
      isSame(old, row, 'group') &&
      isSame(old, row, 'paddock'),
  );
  return found;
}

function byDayIn(a: { readonly inDay?: Day }, b: { readonly inDay?: Day }): number {
  return (a.inDay ?? Infinity) - (b.inDay ?? Infinity);
}

/** Pairs of two rows in the order of both, of the highest sum of `likeness`. */
function sideBySide(
  olds: readonly OldRow[],
  rows: readonly Row[],
  isSeenBefore: (old: OldRow, row: Row) => boolean,
): readonly (readonly [OldRow, Row])[] {
  const likeness = (old: OldRow, row: Row): number => {
    const isSameDay = old.inDay === row.inDay;
    // A wish is for a group and a day.
    if (isSameDay && (old.typed.includes('days') || old.typed.includes('paddock'))) return 6;
    if (nameKey(old.paddock) === nameKey(row.paddock) && !isSeenBefore(old, row)) return isSameDay ? 5 : 4;
    if (!old.typed.includes('paddock') || isSeenBefore(old, row)) return 0;
    return 1;
  };
  // best[i][j]: of the moves from i and the rows from j on.
  const best = Array.from({ length: olds.length + 1 }, () => Array<number>(rows.length + 1).fill(0));
  const paired = (i: number, j: number): number => {
    const alike = likeness(olds[i]!, rows[j]!);
    return alike === 0 ? 0 : alike + best[i + 1]![j + 1]!;
  };
  for (let i = olds.length - 1; i >= 0; i--) {
    for (let j = rows.length - 1; j >= 0; j--) {
      best[i]![j] = Math.max(best[i + 1]![j]!, best[i]![j + 1]!, paired(i, j));
    }
  }
  const pairs: (readonly [OldRow, Row])[] = [];
  for (let [i, j] = [0, 0]; i < olds.length && j < rows.length; ) {
    if (best[i]![j] === paired(i, j) && paired(i, j) > 0) pairs.push([olds[i++]!, rows[j++]!]);
    else if (best[i]![j] === best[i + 1]![j]) i++;
    else j++;
  }
  return pairs;
}

/** The first row of each group, by the day in. */
function firstOfGroups<Row extends { group: string; inDay?: Day }>(rows: readonly Row[]): ReadonlySet<Row> {
  const first = new Map<string, Row>();
  for (const row of rows) {
    const key = nameKey(row.group);
    const known = first.get(key);
    if (!known || (row.inDay ?? Infinity) < (known.inDay ?? Infinity)) first.set(key, row);
  }
  return new Set(first.values());
}

function linked(rows: readonly TableRow[]): TableRow[] {
  const next = new Map<number, number>();
  const previous = new Map<number, number>();
  const last = new Map<string, number>();
  for (const [i, row] of rows.entries()) {
    const key = nameKey(row.group);
    const before = last.get(key);
    if (before !== undefined) {
      previous.set(i, before);
      next.set(before, i);
    }
    last.set(key, i);
  }
  return rows.map((row, i) => ({
    ...row,
    ...(previous.has(i) && { previous: previous.get(i)! }),
    ...(next.has(i) && { next: next.get(i)! }),
  }));
}
