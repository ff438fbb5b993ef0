import type { Book } from '../block/book';
import { type BlockContent, cutBlock } from '../block/read-block';
import { asWritten } from './merge-block';
import { OUR_WORDS } from './our-words';

/**
 * The block of that name as it stood when the file was read, for those who read what was typed in it: our own words
 * stand where the grower typed over them. Undefined where there is none.
 */
export function standingBlock(book: Book, name: string): BlockContent | undefined {
  const info = book.overview.blocks.find((block) => block.name === name);
  const tab = book.tabs.find((one) => one.name === info?.tab);
  return info && tab ? asWritten(cutBlock(tab, info), OUR_WORDS) : undefined;
}
