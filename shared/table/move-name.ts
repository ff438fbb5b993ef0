import type { Day } from '../core/calendar/day';
import { dayWords } from '../core/calendar/day-words';

interface Move {
  readonly group: string;
  readonly paddock: string;
  readonly inDay?: Day;
}

/** A move as sentences name it: "Reds, Oak on Mon 13 Apr". */
export function moveName({ group, paddock, inDay }: Move): string {
  return `${group}, ${paddock}${inDay === undefined ? '' : ` on ${dayWords(inDay)}`}`;
}
