import type { Book } from '../block/book';
import type { BlockInfo } from '../contract';
import { dayFromIso } from '../core/calendar/day';
import { findLists } from './find-lists';
import { listArea } from './list-area';
import type { FoundList } from './model';

/** The lists of a file as it was read; looked for once for each reading, however many parts of the page ask. */
export function foundLists(book: Book): readonly FoundList[] {
  const known =
    lists.get(book) ?? findLists(book.tabs, book.overview.blocks, dayFromIso(book.overview.today));
  lists.set(book, known);
  return known;
}

const lists = new WeakMap<Book, readonly FoundList[]>();

/** What a block of that name must not take over: our other blocks and the grower's lists. */
export function areasBeside(book: Book, name: string): readonly BlockInfo[] {
  const blocks = book.overview.blocks.filter((block) => block.name !== name);
  return [...blocks, ...foundLists(book).map(listArea)];
}
