import type { Day } from '../core/calendar/day';
import { nameKey } from '../lists/read-list-cell';
import { herdOn } from '../plan/herd-on';
import type { PlanGroup, PlanPaddock } from '../plan/model';
import { OPEN_DAYS } from '../plan/open-days';
import type { LookedUp, PastRow } from './model';

export interface Lists {
  readonly groups: readonly PlanGroup[];
  readonly paddocks: readonly PlanPaddock[];
}

/** Where each figure that the table looks up stands in a row as read. */
export const FIELDS: Readonly<Record<LookedUp, keyof PastRow>> = {
  head: 'head',
  startWeight: 'startWeightKg',
  growthDays: 'growthDays',
  dailyGain: 'dailyGainKg',
  area: 'areaSquareMeters',
};

/** What units and rounding in a cell may make of a figure. */
const ROUNDING = 1e-6;

type Named = Pick<PastRow, 'group' | 'paddock'> & { readonly inDay: Day };

/** The group and the paddock of a move as the lists have them, and what they say of its figures. */
export function listedFigures(row: Named, { groups, paddocks }: Lists) {
  const group = groups.find(({ name }) => nameKey(name) === nameKey(row.group));
  const paddock = paddocks.find(({ name }) => nameKey(name) === nameKey(row.paddock));
  const listed: Partial<PastRow> = { ...(group && figuresOf(group, row)), ...(paddock && groundOf(paddock)) };
  return { group, paddock, listed };
}

/** Whether two figures differ, rounding aside; what is no number differs from nothing. */
export function isOther(shown: PastRow[keyof PastRow], listed: PastRow[keyof PastRow]): boolean {
  if (typeof listed !== 'number' || typeof shown !== 'number') return false;
  return Math.abs(shown - listed) > ROUNDING * Math.max(1, Math.abs(listed));
}

function figuresOf(group: PlanGroup, { inDay }: Named) {
  const { head, weightKg, weighedOn } = herdOn(group, inDay);
  const { dailyGainKg } = group;
  return {
    head,
    startWeightKg: weightKg,
    growthDays: Math.max(0, inDay - weighedOn),
    ...(dailyGainKg !== undefined && { dailyGainKg }),
  };
}

function groundOf(paddock: PlanPaddock): Partial<PastRow> {
  const days = OPEN_DAYS.filter((field) => paddock[field] !== undefined);
  return {
    areaSquareMeters: paddock.areaSquareMeters,
    ...Object.fromEntries(days.map((field) => [field, paddock[field]])),
  };
}
