import type { Book } from '../block/book';
import { oncePer } from '../block/once-per';
import type { BlockInfo } from '../contract';
import { dayFromIso } from '../core/calendar/day';
import { findLists } from './find-lists';
import { listArea } from './list-area';
import type { FoundList } from './model';

/** The lists of a file as it was read. */
export const foundLists = oncePer(({ tabs, overview }: Book): readonly FoundList[] =>
  findLists(tabs, overview.blocks, dayFromIso(overview.today)),
);

/** What a block of that name must not take over: our other blocks and the grower's lists. */
export function areasBeside(book: Book, name: string): readonly BlockInfo[] {
  const blocks = book.overview.blocks.filter((block) => block.name !== name);
  return [...blocks, ...foundLists(book).map(listArea)];
}
