import { isoFromDay } from '../core/calendar/day';
import { nameKey } from '../lists/read-list-cell';
import type { PlanGroup, PlanPaddock } from '../plan/model';
import type { PastRow } from './model';

interface Lists {
  readonly groups: readonly PlanGroup[];
  readonly paddocks: readonly PlanPaddock[];
}

export interface Filled {
  readonly row: PastRow;
  /** What was filled in or is still missing; undefined where the row was whole. */
  readonly note?: string;
}

/**
 * A past move with head, weight and area: those that it was counted with, else, in a row that the grower added by
 * hand, what the lists say now.
 */
export function filledRow(row: PastRow, { groups, paddocks }: Lists): Filled {
  const isWhole =
    row.head !== undefined && row.startWeightKg !== undefined && row.areaSquareMeters !== undefined;
  if (isWhole) return { row };
  const group = groups.find(({ name }) => nameKey(name) === nameKey(row.group));
  const paddock = paddocks.find(({ name }) => nameKey(name) === nameKey(row.paddock));
  const move = `${row.group}, ${row.paddock} ${isoFromDay(row.inDay)}`;
  const whole = { ...(group && figuresOf(group, row)), ...(paddock && groundOf(paddock)), ...row };
  const absent = [...(group ? [] : [row.group]), ...(paddock ? [] : [row.paddock])];
  const taken = `${move}: head, weight or area of this move was missing and is taken from the lists as they are now`;
  if (absent.length === 0) return { row: whole, note: `${taken}.` };
  const are = absent.length === 1 ? 'is' : 'are';
  return { row: whole, note: `${taken}; but ${absent.join(' and ')} ${are} not in them.` };
}

function figuresOf(group: PlanGroup, { inDay }: PastRow) {
  const { head, weightKg, weighedOn, dailyGainKg } = group;
  return {
    head,
    startWeightKg: weightKg,
    growthDays: Math.max(0, inDay - weighedOn),
    ...(dailyGainKg !== undefined && { dailyGainKg }),
  };
}

function groundOf({ areaSquareMeters, openFrom, openUntil }: PlanPaddock) {
  return {
    areaSquareMeters,
    ...(openFrom !== undefined && { openFrom }),
    ...(openUntil !== undefined && { openUntil }),
  };
}
