import { dayWords } from '../../core/calendar/day-words';
import type { ListProblem, ReadGroup } from '../../lists/model';
import { nameKey } from '../../lists/read-list-cell';
import type { HerdStep } from '../../plan/model';
import type { HerdRead } from './read-herd';
import * as words from './words';

export interface GroupsWithHerd {
  readonly groups: readonly ReadGroup[];
  /** What in the log does not fit the list, each with its cell. */
  readonly notes: readonly string[];
  /** Rows of the log that cannot be counted: nothing is planned past them. */
  readonly problems: readonly ListProblem[];
}

/**
 * The groups of the list with what the herd log says of them. Two figures of one kind on one day: the larger counts, in
 * the sheet's formulas as here. Head 0 ends a group's time, unless more come later.
 */
export function withHerd(groups: readonly ReadGroup[], { entries, problems }: HerdRead): GroupsWithHerd {
  const notes: string[] = [];
  const known = new Set(groups.map(({ name }) => nameKey(name)));
  for (const { group, cell } of entries) {
    if (!known.has(nameKey(group))) notes.push(words.notListed(cell, group));
  }
  const all = groups.map((group) => {
    const own = entries.filter((entry) => nameKey(entry.group) === nameKey(group.name));
    if (own.length === 0) return group;
    const came = group.from;
    for (const { day, cell, head } of own) {
      // The first row of a group is its weighing before it came.
      if (came !== undefined && day < came && day > group.weighedOn && head !== undefined) {
        notes.push(words.beforeItCame(cell, dayWords(day), group.name, dayWords(came)));
      }
    }
    const herd = stepsOf(own);
    const gone = goneFrom(herd);
    if (gone === undefined) return { ...group, herd };
    notes.push(words.noHead(group.name, dayWords(gone)));
    return { ...group, herd, until: Math.min(gone, group.until ?? gone) };
  });
  return { groups: all, notes, problems };
}

/** One step a day. */
function stepsOf(entries: readonly HerdStep[]): readonly HerdStep[] {
  const steps = new Map<number, HerdStep>();
  for (const { day, head, weightKg } of entries) {
    const before = steps.get(day);
    const larger = (a: number | undefined, b: number | undefined): number | undefined =>
      a === undefined ? b : Math.max(a, b ?? a);
    const [most, heaviest] = [larger(head, before?.head), larger(weightKg, before?.weightKg)];
    steps.set(day, {
      day,
      ...(most !== undefined && { head: most }),
      ...(heaviest !== undefined && { weightKg: heaviest }),
    });
  }
  return [...steps.values()];
}

/** The day from which nobody is left, where nobody comes after it. */
function goneFrom(herd: readonly HerdStep[]): number | undefined {
  const heads = herd.filter(({ head }) => head !== undefined);
  const last = heads[heads.length - 1];
  return last?.head === 0 ? last.day : undefined;
}
