/** References to cells in A1 notation, as a grower types them or as the selection gives them. */

export interface Reference {
  /** Absent: the tab on which the formula stands. */
  readonly tab?: string;
  /** Positions from 0; an absent end is open, as in A2:A. */
  readonly top: number;
  readonly left: number;
  readonly bottom?: number;
  readonly right?: number;
}

const REFERENCE =
  /^(?:(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!)?\$?([A-Z]{1,3})(?:\$?([1-9]\d{0,6}))?(?::\$?([A-Z]{1,3})(?:\$?([1-9]\d{0,6}))?)?$/iu;

/** The reference a text means, or undefined where it is none. A bare "A" is text, "A:A" is a column. */
export function parseReference(text: string): Reference | undefined {
  const match = REFERENCE.exec(text.trim());
  if (!match) return undefined;
  const [, quoted, plain, left = '', top, right, bottom] = match;
  if (top === undefined && right === undefined) return undefined;
  const tab = quoted?.replace(/''/g, "'") ?? plain;
  const first = { top: top === undefined ? 0 : Number(top) - 1, left: columnOf(left) };
  const named = tab === undefined ? {} : { tab };
  if (right === undefined) return { ...named, ...first, bottom: first.top, right: first.left };
  const end = bottom === undefined ? {} : { bottom: Number(bottom) - 1 };
  return { ...named, ...first, ...end, right: columnOf(right) };
}

function columnOf(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/** The part of a tab's cells that a reference covers; an open end stops where the tab does. */
export function cutOut<Cell>(cells: readonly (readonly Cell[])[], at: Reference): Cell[][] {
  return cells
    .slice(at.top, (at.bottom ?? cells.length) + 1)
    .map((row) => row.slice(at.left, (at.right ?? row.length) + 1));
}
