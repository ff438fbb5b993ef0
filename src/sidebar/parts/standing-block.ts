import { type BlockContent, cutBlock } from '../../../shared/block/read-block';
import type { Book } from './use-book';

/** The block of that name as it stood when the file was read; undefined where there is none. */
export function standingBlock(book: Book, name: string): BlockContent | undefined {
  const info = book.overview.blocks.find((block) => block.name === name);
  const tab = book.tabs.find((one) => one.name === info?.tab);
  return info && tab ? cutBlock(tab, info) : undefined;
}
