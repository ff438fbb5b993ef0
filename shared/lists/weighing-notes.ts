import { cellBefore } from '../block/cell-on-tab';
import { type Day, isoFromDay } from '../core/calendar/day';
import { groupWeightOn } from '../plan/group-weights';
import { GROWING_LIGHTEST_KG } from '../tables/growing-weights';
import type { UnitSystem } from '../units/units';
import { amountWords } from './amount-words';
import type { ReadGroup } from './model';
import * as words from './words';

export interface NotedSeason {
  readonly start: Day;
  /** The day the plan ends: the last night is the one before. */
  readonly end: Day;
  readonly today: Day;
  readonly system: UnitSystem;
  /** Moves have happened: groups are weighed again in the season. */
  readonly isUnderWay?: boolean;
}

/** Further back or ahead, a weighing tells little about the weight in the rotation. Judgement. */
const FAR_DAYS = 120;
/** Heavier than nearly all boars and sows. Judgement. */
export const HEAVIEST_KG = 350;
/** Half as much again as the best of the growth table (0.9 kg a day, NRC 2012). Judgement. */
const MOST_GAIN_KG = 1.4;

/** Sentences about a group whose weights in the season can hardly be right, each with its cell. */
export function weighingNotes(group: ReadGroup, tab: string, season: NotedSeason): string[] {
  const { name, weighedOn, weightKg, dailyGainKg, cells } = group;
  const { start, end, today, system, isUnderWay } = season;
  const said = (kg: number, quantity: 'mass' | 'massPerDay'): string => amountWords(kg, quantity, system);
  if (weightKg > HEAVIEST_KG || weightKg < GROWING_LIGHTEST_KG) {
    return [words.oddWeight(cellBefore(tab, cells.weight), name, said(weightKg, 'mass'))];
  }
  const notes: string[] = [];
  if (dailyGainKg !== undefined && dailyGainKg > MOST_GAIN_KG) {
    notes.push(words.fastGain(cellBefore(tab, cells.dailyGain), name, said(dailyGainKg, 'massPerDay')));
  }
  const from = Math.max(group.from ?? group.standsIn?.since ?? start, start);
  const weighed = words.wasWeighed(cellBefore(tab, cells.weighedOn), name, isoFromDay(weighedOn));
  const isFar = weighedOn > today || weighedOn >= end || weighedOn - from > FAR_DAYS;
  const isAhead = weighedOn > from && (isFar || !isUnderWay);
  if (isAhead) {
    notes.push(words.weighedAfter(weighed, isoFromDay(from)));
  } else if (from - weighedOn > FAR_DAYS) {
    const then = said(groupWeightOn(group, from), 'mass');
    notes.push(words.weighedLongBefore(weighed, isoFromDay(from), then));
  }
  return notes;
}
