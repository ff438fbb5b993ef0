import { type Day, isoFromDay } from '../core/calendar/day';

interface Move {
  readonly group: string;
  readonly paddock: string;
  readonly inDay?: Day;
}

/** A move as sentences name it: "Reds, Oak 2026-04-13". */
export function moveName({ group, paddock, inDay }: Move): string {
  return `${group}, ${paddock}${inDay === undefined ? '' : ` ${isoFromDay(inDay)}`}`;
}
