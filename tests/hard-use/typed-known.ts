/** What may be lost when it is typed into a table, and what is lost and should not be. */

export interface Known {
  /** Name of the table, and of "text over Oak: gone without a word". */
  readonly table: RegExp;
  readonly what: RegExp;
  readonly why: string;
}

/** The page says so before the button is pressed. */
export const ALLOWED: readonly Known[] = [
  {
    table: /^Rotation/,
    what: /^(whole number|formula) over move, Days:/,
    why: 'Days of moves still to come are planned anew: the page says so above the button.',
  },
  {
    table: /^Rotation/,
    what: /over value of setting (Paddock|Group) list: gone/,
    why: 'The tab of a list: the page says from which tab the list is read instead.',
  },
  {
    table: /^Rotation, three/,
    what: /^(whole number|formula) over past move, Days: gone/,
    why: 'Days of a move that has happened give way to what they were: the page says so with the move, not with the cell.',
  },
];

/** Must shrink: nothing is written and nothing is lost, but the page does not say which cell it is. */
export const KNOWN_UNNAMED: readonly Known[] = [
  {
    table: /^Rotation/,
    what: /over label of setting .*: not named/,
    why: 'Says which setting is a blank, and names the first cell of the table.',
  },
  {
    table: /^Rotation/,
    what: /over value of setting Shortest stay in days: not named/,
    why: 'Stands beside the field of the longest stay on the page.',
  },
];

/** Must shrink: as soon as one of these is no longer lost, a test fails until it is taken out. */
export const KNOWN_LOST: readonly Known[] = [
  {
    table: /^Rotation, three/,
    what: /^formula over past move, Group: gone/,
    why: 'A number by a formula over the group of a move that has happened.',
  },
];
