import { cellA1 } from '../block/a1';
import type { BlockContent } from '../block/read-block';
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
        formula === '' && (words === '' || (c === 0 ? isOurLabel(r, words) : isWeekCell(r, value)));
      return isOurs ? [] : [`${cellA1(info.row + r, info.column + c)} (“${words}”)`];
    }),
  );
}

/** Paddocks go by any name. */
function isOurLabel(row: number, words: string): boolean {
  if (row === 0) return words.startsWith(TITLE_BEGINS);
  return row !== 1 || words.endsWith(LEGEND_ENDS);
}

function isWeekCell(row: number, value: BlockContent['values'][number][number]): boolean {
  if (row === HEADING_ROW) return typeof value === 'object';
  return row >= FIRST_BODY_ROW && typeof value === 'string' && MARKS.test(value);
}
