import type { Day } from '../core/calendar/day';
import { dayWords } from '../core/calendar/day-words';
import { nameKey } from '../lists/read-list-cell';
import type { Plan } from '../plan/model';
import { countedAsDone, daysSet, daysTyped, goesAlong } from './describe-typed';
import type { OldRow } from './model';
import type { RebuildInput } from './rebuild-input';
import { tableRows } from './table-rows';
import * as words from './words';

interface Move {
  readonly paddock: string;
  readonly inDay: Day;
}

/** What a rebuild changes in the rest of the table, in sentences, to be read before anything is written. */
export function describeChanges(rebuild: RebuildInput, plan: Plan): string[] {
  const { past } = rebuild;
  const rows = tableRows({ ...rebuild, plan });
  const typed = [...goesAlong(rows), ...daysTyped(rows), ...daysSet(past), ...countedAsDone(past)];
  const sentences = [...changesOf(rebuild, rows, (name) => keptFromNow(name, rebuild)), ...typed];
  return sentences.length > 0 ? sentences : [words.REST_STAYS];
}

/**
 * What it changes in where the groups go and when, and which moves count as done by it. `before`: the moves to come that it
 * changes; else those of the table that stands.
 */
export function describeMoves(
  rebuild: RebuildInput,
  plan: Plan,
  before: readonly MoveToCome[] = rebuild.future,
): string[] {
  const moves = changesOf({ ...rebuild, future: before }, tableRows({ ...rebuild, plan }), () => []);
  const sentences = [...countedAsDone(rebuild.past), ...moves];
  return sentences.length > 0 ? sentences : [words.REST_STAYS];
}

export type MoveToCome = Pick<OldRow, 'group' | 'paddock' | 'inDay'>;

export function movesToCome(rebuild: RebuildInput, plan: Plan): readonly MoveToCome[] {
  return tableRows({ ...rebuild, plan }).filter(({ past }) => !past);
}

/** Group by group; `also`: what else is said of it. */
function changesOf(
  { problem, past, future }: Pick<RebuildInput, 'problem' | 'past'> & { future: readonly MoveToCome[] },
  rows: ReturnType<typeof tableRows>,
  also: (name: string) => string[],
): string[] {
  const names = [
    ...new Set([...problem.groups.map((group) => group.name), ...future.map((row) => row.group)]),
  ];
  const seen = new Set<string>();
  return names.flatMap((name) => {
    const key = nameKey(name);
    if (seen.has(key)) return [];
    seen.add(key);
    const before = future.filter((row) => nameKey(row.group) === key).flatMap(moveOf);
    const after = rows.filter((row) => !row.past && nameKey(row.group) === key);
    const isListed = problem.groups.some((group) => nameKey(group.name) === key);
    return [
      ...(isListed ? [] : [words.groupGone(name)]),
      ...standingChange(name, rows, past),
      ...movesChange(name, before, after),
      ...also(name),
    ];
  });
}

/** What has happened since the last build is kept from now on; said where it is not the head of the moves before. */
function keptFromNow(name: string, { past, problem }: RebuildInput): string[] {
  const isOwn = (one: string): boolean => nameKey(one) === nameKey(name);
  // Where the herd log says how many there are, the past follows it.
  if (problem.groups.some((group) => isOwn(group.name) && group.herd)) return [];
  const own = past.filter(({ group }) => isOwn(group));
  const rows = own.filter(({ lookups }) => lookups.includes('head'));
  const before = own.filter((row) => !rows.includes(row)).pop()?.head;
  const heads = [...new Set(rows.map(({ head }) => head))];
  if (before === undefined || heads.every((head) => head === before)) return [];
  return [words.headKept(name, rows.length, heads.join(' and '))];
}

function moveOf({ paddock, inDay }: MoveToCome): Move[] {
  return inDay === undefined ? [] : [{ paddock, inDay }];
}

/** The stay that a group is in now may end on another day. */
function standingChange(
  name: string,
  rows: ReturnType<typeof tableRows>,
  past: RebuildInput['past'],
): string[] {
  const stay = rows.filter((row) => row.past && nameKey(row.group) === nameKey(name)).pop();
  const old = past.filter((row) => nameKey(row.group) === nameKey(name)).pop();
  if (!stay || !old || stay.outDay === old.outDay) return [];
  return [words.leaves(name, stay.paddock, dayWords(stay.outDay), dayWords(old.outDay))];
}

function movesChange(name: string, before: readonly Move[], after: readonly Move[]): string[] {
  const inOrder = [...before].sort((a, b) => a.inDay - b.inDay);
  const at = Math.max(inOrder.length, after.length);
  const first = Array.from({ length: at }, (_, i) => i).find((i) => !isSame(inOrder[i], after[i]));
  if (first === undefined) return [];
  const was = inOrder[first];
  const is = after[first];
  if (!was && is) return [words.moreFrom(name, after.length - inOrder.length, said(is))];
  if (was && !is) return [words.fewerFrom(name, inOrder.length - after.length, said(was))];
  if (!was || !is) return [];
  return [words.instead(name, said(is), said(was), after.length - inOrder.length)];
}

function isSame(a: Move | undefined, b: Move | undefined): boolean {
  return (
    a !== undefined && b !== undefined && a.inDay === b.inDay && nameKey(a.paddock) === nameKey(b.paddock)
  );
}

function said({ paddock, inDay }: Move): string {
  return `${paddock} on ${dayWords(inDay)}`;
}
