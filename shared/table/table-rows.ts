import type { Day } from '../core/calendar/day';
import { nameKey } from '../lists/read-list-cell';
import type { OldRow, PastRow, RotationBlockInput } from './model';

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
  /** Set for rows that are past: kept as they stand. */
  readonly past?: PastRow;
  /** The row of the old table whose typed cells this one takes over. */
  readonly kept?: OldRow;
  /** Positions of the same group's rows before and after this one. */
  readonly previous?: number;
  readonly next?: number;
}

/**
 * The rows of the new table in the order of the day in, then of groups: what is past, then the plan. Where a
 * group stands in a paddock by a typed move, that row and the plan's first stay are one. What was typed into
 * future rows of the old table goes to the same stay: same group, same paddock, same count of visits. `lost`
 * are the old rows that have no such stay any more.
 */
export function tableRows(input: StayInput): { rows: TableRow[]; lost: OldRow[] } {
  const past = input.past ?? [];
  const planned = plannedRows(input);
  const standing = new Map<PastRow, TableRow>();
  const fresh = planned.filter((row) => {
    const same = past.find((old) => isSameStay(old, row));
    if (same) standing.set(same, row);
    return !same;
  });
  const kept = past.map((old) => pastRow(input, old, standing.get(old)));
  const rows = [...kept, ...fresh].sort(
    (a, b) => a.inDay - b.inDay || orderOf(a) - orderOf(b) || a.outDay - b.outDay,
  );
  return withTyped(rows, input.future ?? [], past, input.problem.rules.seasonStart);
}

function orderOf({ groupIndex }: TableRow): number {
  return groupIndex ?? Number.MAX_SAFE_INTEGER;
}

function plannedRows({ problem, plan }: StayInput): TableRow[] {
  return plan.stays.map((stay) => ({
    group: problem.groups[stay.group]!.name,
    paddock: problem.paddocks[stay.paddock]!.name,
    inDay: stay.inDay,
    outDay: stay.outDay,
    groupIndex: stay.group,
    paddockIndex: stay.paddock,
  }));
}

function isSameStay(old: PastRow, row: TableRow): boolean {
  return (
    old.inDay === row.inDay &&
    nameKey(old.group) === nameKey(row.group) &&
    nameKey(old.paddock) === nameKey(row.paddock)
  );
}

function pastRow({ problem }: StayInput, old: PastRow, stay: TableRow | undefined): TableRow {
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
    past: stay ? { ...old, days: stay.outDay - stay.inDay } : old,
    kept: old,
  };
}

function withTyped(rows: TableRow[], future: readonly OldRow[], past: readonly PastRow[], planStart: Day) {
  const waiting = new Map<string, OldRow>();
  const inOrder = [...past, ...future].sort((a, b) => (a.inDay ?? 0) - (b.inDay ?? 0));
  const isFuture = new Set<OldRow>(future);
  for (const [key, old] of counted(inOrder)) if (isFuture.has(old)) waiting.set(key, old);
  const [nextOld, nextNew] = [firstOfGroups(future), firstOfGroups(rows.filter(({ past: is }) => !is))];
  // What was typed into a move that should have been by now was seen then: it is no reading of a stay to come,
  // unless the group goes on to that very stay.
  const isSeenBefore = (old: OldRow, row: TableRow): boolean =>
    old.inDay !== undefined && old.inDay < planStart && !(nextOld.has(old) && nextNew.has(row));
  const used = new Set<OldRow>();
  const out = counted(rows).map(([key, row]): TableRow => {
    const kept = row.kept ?? waiting.get(key);
    if (!kept || (!row.kept && isSeenBefore(kept, row))) return row;
    used.add(kept);
    return { ...row, kept };
  });
  return { rows: linked(out), lost: future.filter((old) => !used.has(old)) };
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

/** Each row with its group, paddock and which visit it is. */
function counted<Row extends { group: string; paddock: string }>(rows: readonly Row[]): [string, Row][] {
  const counts = new Map<string, number>();
  return rows.map((row) => {
    const pair = JSON.stringify([nameKey(row.group), nameKey(row.paddock)]);
    const count = (counts.get(pair) ?? 0) + 1;
    counts.set(pair, count);
    return [`${pair}${count}`, row];
  });
}
