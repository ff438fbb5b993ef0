/** Reads the values of one settings row. */
import type { WireCell } from '../contract';
import type { Day } from '../core/calendar/day';
import { describeWire } from '../lists/read-list-cell';
import type { UnitSystem } from '../units/units';
import { ownDay, ownNumber } from './own-cell';
import { EVENNESS, type EvennessWord, WEEKDAYS } from './settings-rows';

/** Values of a setting, blanks left out, with the cell each stood in. */
export interface SettingLine {
  readonly values: readonly WireCell[];
  readonly cells: readonly string[];
  /** Whether any of them was typed over. */
  readonly isTyped: boolean;
  /** Mark of what was written as the first of them. */
  readonly was: string;
}

/** Thrown inside only: gathered as a problem with its cell. */
export class Unreadable extends Error {}

export function got(line: SettingLine | undefined): string {
  return `got ${line && line.values.length > 0 ? line.values.map(describeWire).join(', ') : 'a blank'}`;
}

export function numberOf(line: SettingLine | undefined, least: number): number {
  const value = ownNumber(line?.values[0] ?? '');
  if (value === undefined || value < least)
    throw new Unreadable(`be a number from ${least} up, ${got(line)}`);
  return value;
}

export function twelve(line: SettingLine | undefined): number[] {
  const numbers = (line?.values ?? [])
    .flatMap((value) => ownNumber(value) ?? [])
    .filter((value) => value >= 0);
  if (numbers.length !== 12 || line?.values.length !== 12) {
    throw new Unreadable(`be twelve numbers of 0 or more, January first, ${got(line)}`);
  }
  return numbers;
}

export function dateOf(line: SettingLine | undefined): Day {
  const day = ownDay(line?.values[0] ?? '');
  if (day === undefined) throw new Unreadable(`be a date, ${got(line)}`);
  return day;
}

export function datesOf(line: SettingLine | undefined): Day[] {
  return (line?.values ?? []).map((value) => {
    const day = ownDay(value);
    if (day === undefined) throw new Unreadable(`be dates, got ${describeWire(value)}`);
    return day;
  });
}

export function unitsOf(line: SettingLine | undefined): UnitSystem {
  const text = String(line?.values[0] ?? '').toLowerCase();
  if (text === 'us') return 'US';
  if (text === 'metric') return 'metric';
  throw new Unreadable(`be "US" or "metric", ${got(line)}`);
}

export function evennessOf(line: SettingLine | undefined): number {
  const word = String(line?.values[0] ?? '')
    .trim()
    .toLowerCase();
  if (word in EVENNESS) return EVENNESS[word as EvennessWord];
  throw new Unreadable(`be "fewest", "some" or "most", ${got(line)}`);
}

export function weekdaysOf(line: SettingLine | undefined): boolean[] {
  const words = String(line?.values[0] ?? '')
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word !== '');
  const known = words.map((word) => WEEKDAYS.findIndex((day) => word.startsWith(day.toLowerCase())));
  if (known.length === 0 || known.includes(-1)) {
    throw new Unreadable(`be days of the week such as "Tue, Sat", ${got(line)}`);
  }
  return WEEKDAYS.map((_, i) => known.includes(i));
}
