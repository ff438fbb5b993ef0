import { NRC_GAIN_BANDS } from '../tables/nrc-growth';
import { herdOn } from './herd-on';
import type { PlanGroup } from './model';

const MIDDAY = 0.5;

type Growing = Pick<PlanGroup, 'head' | 'weightKg' | 'weighedOn' | 'herd' | 'dailyGainKg'>;

/**
 * Mean weight of one animal of a group on a day (a fraction is a time of that day), in kg.
 *
 *   W = weightKg + dailyGainKg · (day − weighedOn)
 *
 * from the last weighing of the herd log by that day, where there is one.
 *
 * Without a daily gain the mean gains of NRC 2012 Table 16-1 by weight band are walked band by band, forwards or
 * backwards in time. Outside 5–135 kg the nearest band's gain is held on (judgement: a plan for heavy hogs
 * is better than none). Never below 0.
 */
export function groupWeightOn(group: Growing, day: number): number {
  const { weightKg, weighedOn } = herdOn(group, day);
  const days = day - weighedOn;
  if (group.dailyGainKg !== undefined) return Math.max(0, weightKg + group.dailyGainKg * days);
  return days >= 0 ? growForward(weightKg, days) : growBackward(weightKg, -days);
}

/** Weight that the ground bears during a day: the group's weight at mid-day, all head, in kg. */
export function groupLoadOn(group: Growing, day: number): number {
  return herdOn(group, day).head * groupWeightOn(group, day + MIDDAY);
}

function growForward(startKg: number, days: number): number {
  let weight = startKg;
  let left = days;
  const last = NRC_GAIN_BANDS.length - 1;
  for (const [i, band] of NRC_GAIN_BANDS.entries()) {
    if (weight >= band.toKg && i < last) continue;
    const needed = i === last ? left : Math.min(left, (band.toKg - weight) / band.gainKgPerDay);
    weight += needed * band.gainKgPerDay;
    left -= needed;
    if (left <= 0) break;
  }
  return weight;
}

function growBackward(startKg: number, days: number): number {
  let weight = startKg;
  let left = days;
  for (let i = NRC_GAIN_BANDS.length - 1; i >= 0 && left > 0; i--) {
    const band = NRC_GAIN_BANDS[i]!;
    if (weight <= band.fromKg && i > 0) continue;
    const needed = i === 0 ? left : Math.min(left, (weight - band.fromKg) / band.gainKgPerDay);
    weight -= needed * band.gainKgPerDay;
    left -= needed;
  }
  return Math.max(0, weight);
}
