import { type Day, isoFromDay, weekday } from '../core/calendar/day';
import { feedNeeded } from '../core/herd/feed-needed';
import { waterNeeded } from '../core/herd/water-needed';
import { groupSpan } from '../plan/group-span';
import { groupWeightOn } from '../plan/group-weights';
import { herdOn, meanHead } from '../plan/herd-on';
import type { PlanGroup } from '../plan/model';
import { Refusal } from '../refusals';
import { fromInside, type Quantity, symbolOf } from '../units/units';
import type { RotationBlockInput, RotationSettings } from './model';
import { WEEKDAYS } from './settings-rows';
import { type TableRow, tableRows } from './table-rows';
import * as words from './words';

export interface BarnDoorInput extends Pick<RotationBlockInput, 'problem' | 'plan' | 'settings' | 'past'> {
  /** Moves from this day on. */
  readonly from: Day;
  /** Fence round each paddock by its position, in metres, where known. */
  readonly fenceMeters?: readonly (number | undefined)[];
}

export interface BarnDoorMove {
  readonly date: string;
  readonly weekday: string;
  readonly group: string;
  /** Paddock left, or where a group comes from that was not in the rotation. */
  readonly from: string;
  /** Undefined on the day on which the group leaves the pasture. */
  readonly to: string | undefined;
  /** Nights in the new paddock. */
  readonly days: number;
  readonly carry: readonly string[];
}

export interface BarnDoorList {
  readonly title: string;
  readonly moves: readonly BarnDoorMove[];
  readonly reminders: readonly string[];
}

export const COMES_IN = 'training pen or barn';

/** The moves as plain lines for one printed page: when, who, from where to where, what to carry. */
export function barnDoorList(input: BarnDoorInput): BarnDoorList {
  const { problem, settings } = input;
  const rows = tableRows(input);
  const moves = rows.flatMap((row): BarnDoorMove[] => {
    if (row.past || row.inDay < input.from) return [];
    const group = problem.groups[row.groupIndex!]!;
    const left = row.previous === undefined ? undefined : rows[row.previous];
    return [
      {
        date: isoFromDay(row.inDay),
        weekday: WEEKDAYS[weekday(row.inDay)]!,
        group: row.group,
        from: left?.paddock ?? COMES_IN,
        to: row.paddock,
        days: row.outDay - row.inDay,
        carry: carryFor(group, row, settings, input.fenceMeters?.[row.paddockIndex!]),
      },
    ];
  });
  const all = [...moves, ...leavings(input, rows)].sort((a, b) =>
    a.date < b.date ? -1 : a.date > b.date ? 1 : 0,
  );
  return { title: `Moves from ${isoFromDay(input.from)}`, moves: all, reminders: words.REMINDERS };
}

/** The day on which each group leaves for good, where its last stay reaches to the end of its time. */
function leavings({ problem, from }: BarnDoorInput, rows: readonly TableRow[]): BarnDoorMove[] {
  return rows.flatMap((row): BarnDoorMove[] => {
    const group = row.next === undefined ? problem.groups[row.groupIndex ?? -1] : undefined;
    if (!group || row.outDay < from || row.outDay !== groupSpan(group, problem.rules).end) return [];
    const day = { date: isoFromDay(row.outDay), weekday: WEEKDAYS[weekday(row.outDay)]! };
    return [{ ...day, group: row.group, from: row.paddock, to: undefined, days: 0, carry: [] }];
  });
}

function carryFor(
  group: PlanGroup,
  stay: { inDay: Day; outDay: Day },
  settings: RotationSettings,
  fenceMeters: number | undefined,
): string[] {
  const { unitSystem, outdoorFactor, temperatureC } = settings;
  const say = (value: number, quantity: Quantity): string =>
    `${Math.ceil(fromInside(value, quantity, unitSystem))} ${symbolOf(quantity, unitSystem)}`;
  const weightKg = groupWeightOn(group, stay.inDay);
  const days = stay.outDay - stay.inDay;
  const fence =
    fenceMeters === undefined ? 'fence and posts' : `fence ${say(fenceMeters, 'length')} and posts`;
  const { head } = herdOn(group, stay.inDay);
  const mean = meanHead(group, stay.inDay, stay.outDay);
  const feed = orNothing(() => feedNeeded(mean, weightKg, days, group.dailyGainKg, outdoorFactor));
  const water = orNothing(() => waterNeeded(head, weightKg, temperatureC));
  return [
    fence,
    ...(feed === undefined ? [] : [`feed ${say(feed, 'mass')} for the stay`]),
    water === undefined ? NO_WATER_FIGURE : `water ${say(water, 'volumePerDay')}`,
    'shelter, trough and drinker',
  ];
}

/** Water is carried all the same; how much such pigs need stands with WATER_NEEDED. */
const NO_WATER_FIGURE =
  'water, as much as they drink: no figure for this weight, sows and boars need far more than growing pigs';

/** Feed and water are worked out for growing pigs only; how much heavier ones need is left to the grower. */
function orNothing(work: () => number): number | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}
