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
    table: /^Rotation, three/,
    what: /^(whole number|formula) over past move, Days: gone/,
    why: 'Days of a move that has happened give way to what they were: the page says so with the move, not with the cell.',
  },
];
