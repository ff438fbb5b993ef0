/** Where the groups stand when the plan begins, as the group list says. */
import { cellOnTab } from '../block/cell-on-tab';
import type { ListProblem, ReadGroup, ReadPaddock } from './model';
import { nameKey } from './read-list-cell';
import * as words from './words';

/** Position in the paddock list of the paddock in which a group stands; -1: not listed; undefined: nothing is said. */
export function standingPlace(
  standsIn: ReadGroup['standsIn'],
  paddocks: readonly Pick<ReadPaddock, 'name'>[],
): number | undefined {
  if (!standsIn) return undefined;
  return paddocks.findIndex(({ name }) => nameKey(name) === nameKey(standsIn.paddock));
}

/** A sentence, with its cell, for each place that is taken by another group. */
export function standingProblems(
  groups: readonly ReadGroup[],
  paddocks: readonly ReadPaddock[],
  tab: string,
): ListProblem[] {
  const places = groups.map(({ standsIn }) => standingPlace(standsIn, paddocks));
  return groups.flatMap(({ standsIn, cells }, g): ListProblem[] => {
    const place = places[g];
    if (!standsIn || place === undefined || place < 0 || !cells.paddock) return [];
    const cell = cellOnTab(tab, cells.paddock.row, cells.paddock.column);
    const got = JSON.stringify(standsIn.paddock);
    const other = groups[places.findIndex((one, h) => h < g && one === place)];
    return other ? [{ cell, sentence: words.placeTaken(cell, got, other.name) }] : [];
  });
}
