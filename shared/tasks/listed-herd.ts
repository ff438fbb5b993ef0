import type { Book } from '../block/book';
import { type Day, dayFromIso } from '../core/calendar/day';
import type { ReadGroup } from '../lists/model';
import { groupWeightOn } from '../plan/group-weights';
import { herdOn } from '../plan/herd-on';
import { fromInside, type UnitSystem } from '../units/units';
import { growerLists } from './grower-lists';

/** What the group list says of the pigs today, for tasks to begin with; absent without a group. Whole cell units. */
export interface ListedHerd {
  readonly groups: number;
  /** Of the lightest group. */
  readonly lightest: number;
  /** The group to be trained: the next one to come into the rotation, else the lightest. */
  readonly toTrain: { readonly head: number; readonly weight: number };
}

export function listedHerd(book: Book, units: UnitSystem): ListedHerd | undefined {
  const today = dayFromIso(book.overview.today) ?? 0;
  const groups = growerLists(book, units)
    .groups.filter(({ head, weightKg, until }) => head > 0 && weightKg > 0 && (until ?? today) >= today)
    .sort((a, b) => groupWeightOn(a, today) - groupWeightOn(b, today));
  const [lightest] = groups;
  if (!lightest) return undefined;
  const weight = (group: ReadGroup): number =>
    Math.max(1, Math.floor(fromInside(groupWeightOn(group, today), 'mass', units)));
  const trained =
    groups.filter(({ from }) => from !== undefined && from > today).sort(byEntry)[0] ?? lightest;
  return {
    groups: groups.length,
    lightest: weight(lightest),
    toTrain: { head: herdOn(trained, today).head, weight: weight(trained) },
  };
}

function byEntry(a: { readonly from?: Day }, b: { readonly from?: Day }): number {
  return (a.from ?? 0) - (b.from ?? 0);
}
