import { markAt } from '../block/align-columns';
import { hashText } from '../block/hash-text';
import { ANSWER_MARK, markOfStanding } from '../block/memory';
import type { BlockContent } from '../block/read-block';

const LOADING = 'Loading...';

/**
 * A short text that changes when anything that was typed in a block changes, and not when rows or columns are put in
 * elsewhere, when formulas point to where a list stands by then, or when a function answers anew.
 */
export function blockMeaning(block: BlockContent): string {
  const { values, formulas, memory } = block;
  const marks = values.map((row, r) =>
    row.map((value, c) => {
      const formula = formulas[r]?.[c] ?? '';
      const isAnswer = markAt(block, r, c) === ANSWER_MARK;
      return formula === '' && (isAnswer || value === LOADING) ? '' : markOfStanding(value, formula);
    }),
  );
  return hashText(JSON.stringify([memory?.stamp, marks])).toString(36);
}
