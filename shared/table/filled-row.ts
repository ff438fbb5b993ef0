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
  const absent = [...(group ? [] : [row.group]), ...(paddock ? [] : [row.paddock])];
  if (absent.length > 0) {
    const are = absent.length === 1 ? 'is' : 'are';
    return {
      row,
      note: `${move}: head, weight or area is missing in this move, and ${absent.join(' and ')} ${are} not in the lists: it is counted without feed and water.`,
    };
  }
  return {
    row: { ...(group && figuresOf(group, row)), ...(paddock && groundOf(paddock)), ...row },
    note: `${move}: head, weight and area of this move were missing and are taken from the lists as they are now.`,
  };
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
