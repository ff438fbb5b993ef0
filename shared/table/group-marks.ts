import { nameKey } from '../lists/read-list-cell';

/** How a group is shown wherever it is drawn: in the sheet and on the page alike. */
export interface GroupMark {
  readonly letter: string;
  /** Paper-light, so that black letters are read on it. The letter says the same. */
  readonly colour: string;
}

/** They repeat after the eighth group. */
const COLOURS = ['#cfe2f3', '#fce5cd', '#d9ead3', '#ead1dc', '#fff2cc', '#d0e0e3', '#e6b8af', '#d9d2e9'];

/** By name as it is compared: the first letter of its name that is still free, else the next free one, else a number. */
export function groupMarks(names: readonly string[]): ReadonlyMap<string, GroupMark> {
  const marks = new Map<string, GroupMark>();
  const taken = new Set<string>();
  for (const name of names) {
    if (marks.has(nameKey(name))) continue;
    const own = [...name.toUpperCase()].filter((letter) => /^[A-Z]$/.test(letter));
    const alphabet = Array.from({ length: 26 }, (_, i) => String.fromCharCode(65 + i));
    const letter = [...own, ...alphabet].find((one) => !taken.has(one)) ?? String(marks.size + 1);
    taken.add(letter);
    marks.set(nameKey(name), { letter, colour: COLOURS[marks.size % COLOURS.length]! });
  }
  return marks;
}
