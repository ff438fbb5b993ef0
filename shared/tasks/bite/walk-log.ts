/** The fence walk log: what was measured where, and what it says. */
import type { Day } from '../../core/calendar/day';
import * as words from './words';

export interface Reading {
  readonly day: Day;
  readonly place: string;
  readonly volts: number;
  readonly found: string;
}

export interface Walk {
  readonly day: Day;
  readonly lowest: number;
  readonly readings: number;
}

/** The lowest reading of each day on which somebody walked the fence, in the order of days. */
export function walksOf(readings: readonly Reading[]): readonly Walk[] {
  const days = new Map<Day, Walk>();
  for (const { day, volts } of readings) {
    const walk = days.get(day);
    days.set(day, {
      day,
      lowest: Math.min(volts, walk?.lowest ?? volts),
      readings: (walk?.readings ?? 0) + 1,
    });
  }
  return [...days.values()].sort((a, b) => a.day - b.day);
}

/** The walks in one sentence, for those who do not see the drawing. */
export function walkSentence(walks: readonly Walk[], level: number, dayWords: (day: Day) => string): string {
  const last = walks[walks.length - 1];
  if (!last) return words.NO_READING;
  const lowest = walks.reduce((low, walk) => (walk.lowest < low.lowest ? walk : low), last);
  const before = walks[walks.length - 2];
  return words.walksSoFar({
    count: walks.length,
    last: dayWords(last.day),
    lowestOfLast: last.lowest,
    before: before && { day: dayWords(before.day), change: last.lowest - before.lowest },
    lowest: lowest.lowest,
    dayOfLowest: dayWords(lowest.day),
    below: walks.filter((walk) => walk.lowest < level).length,
    level,
  });
}
