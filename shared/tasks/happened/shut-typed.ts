/** The days in which a paddock is shut, in the grower's own paddock list. */
import { dayFromIso, isoFromDay } from '../../core/calendar/day';
import { dayWords } from '../../core/calendar/day-words';
import type { ReadPaddock } from '../../lists/model';
import { nameKey } from '../../lists/read-list-cell';
import { type ShutDays, shutCells } from '../shut-cells';
import type { FarmNow } from './farm-now';
import { type Happened, NotRecorded, type Typing } from './happened';
import { dayTyped, listedPaddock } from './moves-typed';
import * as words from './words';

/** The list has room for one such time of each paddock. */
export function shutTyped(farm: FarmNow, happened: Happened): Typing[] {
  const paddock = listedPaddock(farm, happened.paddock);
  return shutCells(farm.lists.sources.paddocks!, paddock, shutDays(farm, happened, paddock));
}

function shutDays({ today, cards }: FarmNow, happened: Happened, { name, ...listed }: ReadPaddock): ShutDays {
  const shutFrom = dayTyped(happened);
  const { until: typed = '' } = happened;
  const shutUntil = dayFromIso(typed);
  if (typed !== '' && (shutUntil === undefined || shutUntil < shutFrom))
    throw new NotRecorded(words.lastDayMust(isoFromDay(shutFrom), typed), 'until');
  const there = cards.find(({ at, hasLeft }) => !hasLeft && at && nameKey(at.paddock) === nameKey(name));
  if (there && shutFrom <= today) {
    throw new NotRecorded(words.standsThere(there.group, name, dayWords(there.at!.inDay!)), 'paddock');
  }
  const { shutFrom: from = listed.shutUntil, shutUntil: until = Infinity } = listed;
  const isAhead = from !== undefined && until >= today;
  if (isAhead && ((shutUntil ?? Infinity) < from || until < shutFrom)) {
    throw new NotRecorded(
      words.shutAlready(name, dayWords(from), until < Infinity ? dayWords(until) : undefined),
      'day',
    );
  }
  return { shutFrom, shutUntil };
}
