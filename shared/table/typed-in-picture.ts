import { cellA1 } from '../block/a1';
import { BLANK } from '../block/cells';
import { firstFew } from '../block/first-few';
import type { BlockContent } from '../block/read-block';
import type { BlockCell, WireCell } from '../contract';
import { replacedCells } from '../tasks/replaced-cells';
import { cellWords } from './kept-lines';
import { LEGEND_ENDS, TITLE_BEGINS } from './picture-block';

/** Title, legend and headings stand in these rows, each in its own column or row. */
const FIRST_BODY_ROW = 3;
const HEADING_ROW = 2;
/** What a week's cell holds: letters or numbers of groups, resting, closed. */
const MARKS = /^(?:(?:[A-Z]|\d+|\?)(?: (?:[A-Z]|\d+|\?))*|[·×])$/u;

/** Cells of a season picture that the builder cannot have written, each as `F8 ("rain")`. */
export function typedInPicture({ info, values, formulas }: BlockContent): string[] {
  return values.flatMap((row, r) =>
    row.flatMap((value, c) => {
      const formula = formulas[r]?.[c] ?? '';
      const words = formula === '' ? cellWords(value) : formula;
      const isOurs =
        formula === '' && (words === '' || (c === 0 ? isOurLabel(r, value) : isWeekCell(r, value)));
      return isOurs ? [] : [`${cellA1(info.row + r, info.column + c)} (“${words}”)`];
    }),
  );
}

/** Paddocks go by any name, written as text. */
function isOurLabel(row: number, value: WireCell): boolean {
  if (typeof value !== 'string') return false;
  if (row === 0) return value.startsWith(TITLE_BEGINS);
  return row !== 1 || value.endsWith(LEGEND_ENDS);
}

function isWeekCell(row: number, value: WireCell): boolean {
  if (row === HEADING_ROW) return typeof value === 'object';
  return row >= FIRST_BODY_ROW && typeof value === 'string' && MARKS.test(value);
}

/** Refuses to draw over what was typed into a picture. */
export function refuseTypedInPicture(old: BlockContent): void {
  const typed = typedInPicture(old);
  if (typed.length === 0) return;
  throw new Error(
    `Something was typed into the picture: ${firstFew(typed)}. It is drawn anew as a whole: move that outside the picture first. Nothing was written.`,
  );
}

/** Names of paddocks in a picture that the one drawn over it does not have, each as `A7 ("Oak")`. */
export function namesGone(old: BlockContent, next: readonly (readonly BlockCell[])[]): readonly string[] {
  // Weeks are not compared: they differ whenever the plan does.
  return replacedCells(
    old,
    next.map(([name = BLANK]) => [name]),
  );
}
