/** The mark of the original and the season picture, rebuilt as their panels do from what has not changed. */
import type { BlockContent } from '../../shared/block/read-block';
import type { BlockCell } from '../../shared/contract';
import type { ComposedBlock } from '../../shared/tasks/composed-block';
import { herdBlock, herdRow } from '../../shared/tasks/herd/herd-block';
import { readHerd } from '../../shared/tasks/herd/read-herd';
import { NEW_TABLE } from '../../shared/tasks/room-to-type';
import { composeMarkBlock } from '../../shared/tasks/share/mark-block';
import { MARK_BLOCK } from '../../shared/tasks/share/original-mark';
import { TODAY_BLOCK } from '../../shared/tasks/today/tick-words';
import { todayBlock } from '../../shared/tasks/today/today-block';
import type { Book } from '../../src/sidebar/parts/use-book';
import { rotationNow } from './every-block';
import type { TypedTask } from './typed-cells';
import { contentOf, over, reading } from './typed-over';

export const MARK = '4f2a';

export function markTask(book: Book): TypedTask {
  return {
    name: 'Sharing mark',
    content: contentOf(book, MARK_BLOCK),
    rebuild: (changed) => over(changed, [], () => composeMarkBlock(MARK)),
  };
}

/** Under a name of its own: the rotation table of these tests goes by the list. */
export const HERD_LOG = 'SOUNDER_HERD_TYPED';

export function herdLog(): ComposedBlock {
  const entries = [
    { group: 'Reds', day: 20_544, head: 10, weightKg: 27 },
    { group: 'Blacks', day: 20_544, head: 8, weightKg: 41 },
    { group: 'Reds', day: 20_551, head: 9 },
  ];
  const rows = entries.map((entry, i) => herdRow(entry, `=note ${i}`, 'US'));
  return herdBlock(rows, 'US', { row: 1, column: 1 });
}

export function herdTask(book: Book): TypedTask {
  return {
    name: 'Herd log',
    content: contentOf(book, HERD_LOG),
    rebuild: (changed) =>
      over(changed, [], () => {
        const read = readHerd(reading(changed));
        return herdBlock(read.rows, 'US', changed.info, { ...NEW_TABLE, lines: read.lines });
      }),
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
