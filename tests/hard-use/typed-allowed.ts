/** What may give way when it is typed into a table. */

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
