import { type BlockContent, cutBlock } from '../../../shared/block/read-block';
import { asWritten } from '../../../shared/tasks/merge-block';
import { OUR_WORDS } from '../../../shared/tasks/our-words';
import type { Book } from './use-book';

/**
 * The block of that name as it stood when the file was read, for those who read what was typed in it: our own words
 * stand where the grower typed over them. Undefined where there is none.
 */
export function standingBlock(book: Book, name: string): BlockContent | undefined {
  const info = book.overview.blocks.find((block) => block.name === name);
  const tab = book.tabs.find((one) => one.name === info?.tab);
  return info && tab ? asWritten(cutBlock(tab, info), OUR_WORDS) : undefined;
}
