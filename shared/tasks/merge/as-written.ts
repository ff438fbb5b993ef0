import { alignColumns, markAt } from '../../block/align-columns';
import { BLANK_MARK, bareMark, columnsWritten, isLeftOver, isYours } from '../../block/memory';
import { oncePer } from '../../block/once-per';
import type { BlockContent } from '../../block/read-block';
import { OUR_WORDS } from './our-words';
import { KEPT_ID } from './rows-below';

/**
 * The block as its readers want it: with our own words where the grower typed over them, without what was typed where
 * we left a blank, and without the rows that were kept below it or left over by a write that did not end. Columns stand
 * as they were written, without those of the grower's.
 */
export function asWritten(block: BlockContent, wordOf: ReadonlyMap<string, string>): BlockContent {
  const { memory } = block;
  if (!memory) return block;
  const isOwn = (r: number): boolean => {
    const row = memory.rows[r];
    return !row || (!row.id.startsWith(KEPT_ID) && !isLeftOver(memory, row));
  };
  const rows = block.values.map((_, r) => r).filter(isOwn);
  const own = { ...memory, rows: rows.map((r) => memory.rows[r]) };
  const columns = alignColumns(block);
  const order = Array.from({ length: columnsWritten(own) }, (_, w) => columns.indexOf(w));
  const wordAt = (r: number, c: number): string | undefined => {
    const mark = markAt(block, r, c);
    if (mark === BLANK_MARK) return '';
    return mark === undefined || isYours(mark) ? undefined : wordOf.get(bareMark(mark));
  };
  return {
    info: { ...block.info, rows: rows.length },
    values: rows.map((r) => order.map((c) => wordAt(r, c) ?? block.values[r]![c] ?? '')),
    formulas: rows.map((r) =>
      order.map((c) => (wordAt(r, c) === undefined ? (block.formulas[r]![c] ?? '') : '')),
    ),
    memory: own,
  };
}

/** The same with all words of ours. */
export const readingOf = oncePer((block: BlockContent) => asWritten(block, OUR_WORDS));
