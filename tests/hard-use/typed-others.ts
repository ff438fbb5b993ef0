/** The mark of the original and the season picture, rebuilt as their panels do from what has not changed. */
import type { BlockContent } from '../../shared/block/read-block';
import type { BlockCell } from '../../shared/contract';
import { composeMarkBlock } from '../../shared/tasks/share/mark-block';
import { MARK_BLOCK } from '../../shared/tasks/share/original-mark';
import { TODAY_BLOCK } from '../../shared/tasks/today/tick-words';
import { todayBlock } from '../../shared/tasks/today/today-block';
import type { Book } from '../../src/sidebar/parts/use-book';
import { rotationNow } from './every-block';
import type { TypedTask } from './typed-cells';
import { contentOf, over } from './typed-over';

export const MARK = '4f2a';

export function markTask(book: Book): TypedTask {
  return {
    name: 'Sharing mark',
    content: contentOf(book, MARK_BLOCK),
    rebuild: (changed) => over(changed, [], () => composeMarkBlock(MARK)),
  };
}

export function todayTask(book: Book): TypedTask {
  const table = rotationNow(book);
  return {
    name: 'Today',
    content: contentOf(book, TODAY_BLOCK),
    rebuild: (changed) => over(changed, [], () => todayBlock(table, changed.info)),
  };
}

export function pictureTask(book: Book): TypedTask {
  const content = contentOf(book, 'SOUNDER_PICTURE');
  const cells = content.values.map((row) => row.map(asWritten));
  const block = { cells, styles: cells.map((row) => row.map(() => 'plain' as const)), rules: [], widths: [] };
  return { name: 'Season picture', content, rebuild: (changed) => over(changed, [], () => block) };
}

/** A picture holds values only. */
function asWritten(value: BlockContent['values'][number][number]): BlockCell {
  if (typeof value === 'object') return { k: 'd', v: value.d };
  return value === '' ? { k: 'blank' } : { k: 't', v: String(value) };
}
