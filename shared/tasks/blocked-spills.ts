import { formulaShape } from '../block/formula-shape';
import { isFilled } from '../block/is-filled';
import type { BlockContent } from '../block/read-block';
import type { BlockCell } from '../contract';
import type { Place } from './typed-over-cells';

type Cells = readonly (readonly BlockCell[])[];

/** What a formula shows that has no room for its answer: in Google Sheets the first, in the preview the second. */
const NO_ROOM: readonly unknown[] = ['#REF!', '#SPILL!'];

/**
 * Typed values and formulas that stand where the answer of a formula belongs, so that it shows an error: the formula is found in the
 * new block by its column and shape, and what is blank there below and right of it is the room of its answer.
 */
export function blockedSpills(old: BlockContent, next: Cells): readonly Place[] {
  return old.formulas.flatMap((row, r) =>
    row.flatMap((formula, c) => {
      if (formula === '' || formula.includes('#REF!') || !NO_ROOM.includes(old.values[r]?.[c])) return [];
      const shape = formulaShape(formula);
      const at = next.findIndex(({ [c]: cell }) => cell?.k === 'f' && formulaShape(cell.v) === shape);
      return at < 0
        ? []
        : roomBelow(next, at, c).flatMap(([down, right]) => typedAt(old, r + down, c + right));
    }),
  );
}

/** Offsets of the blank cells from a formula to the right and down; the formula's own place is none of them. */
function roomBelow(next: Cells, row: number, column: number): Place[] {
  const isBlank = (r: number, c: number): boolean => next[r]?.[c]?.k === 'blank';
  let width = 1;
  while (isBlank(row, column + width)) width++;
  let height = 1;
  while (isBlank(row + height, column)) height++;
  const places = Array.from({ length: height * width }, (_, i): Place => [Math.floor(i / width), i % width]);
  return places.filter(([r, c]) => isBlank(row + r, column + c));
}

function typedAt(old: BlockContent, r: number, c: number): Place[] {
  return isFilled(old, r, c) ? [[r, c]] : [];
}
