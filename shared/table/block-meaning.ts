import { markAt } from '../block/align-columns';
import { hashText } from '../block/hash-text';
import { LOADING } from '../block/loading';
import { marksStanding } from '../block/marks-standing';
import { ANSWER_MARK } from '../block/memory';
import type { BlockContent } from '../block/read-block';

/**
 * A short text that changes when anything that was typed in a block changes, and not when rows or columns are put in
 * elsewhere, when formulas point to where a list stands by then, or when a function answers anew.
 */
export function blockMeaning(block: BlockContent): string {
  const { values, formulas, memory } = block;
  const marks = marksStanding(block).map((row, r) =>
    row.map((mark, c) => {
      const isAnswer = markAt(block, r, c) === ANSWER_MARK;
      const isShown = (formulas[r]?.[c] ?? '') === '';
      return isShown && (isAnswer || values[r]![c] === LOADING) ? '' : mark;
    }),
  );
  return hashText(JSON.stringify([memory?.stamp, marks])).toString(36);
}
