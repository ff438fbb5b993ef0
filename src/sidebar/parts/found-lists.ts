import type { BlockInfo } from '../../../shared/contract';
import { findLists } from '../../../shared/lists/find-lists';
import { listArea } from '../../../shared/lists/list-area';
import type { FoundList } from '../../../shared/lists/model';
import type { Book } from './use-book';

/** The lists of a file as it was read; looked for once for each reading, however many parts of the page ask. */
export function foundLists(book: Book): readonly FoundList[] {
  const known = lists.get(book) ?? findLists(book.tabs, book.overview.blocks);
  lists.set(book, known);
  return known;
}

const lists = new WeakMap<Book, readonly FoundList[]>();

/** What a block of that name must not take over: our other blocks and the grower's lists. */
export function areasBeside(book: Book, name: string): readonly BlockInfo[] {
  const blocks = book.overview.blocks.filter((block) => block.name !== name);
  return [...blocks, ...foundLists(book).map(listArea)];
}
