import type { Book } from '../block/book';
import { ROTATION_NAME } from '../block/own-words';
import type { BlockContent } from '../block/read-block';
import { rememberedRotation } from '../table/remembered-rotation';
import { standingOf } from './standing';

/** The rotation table as it stands, for the tasks that rest on it. */
export function rotationNow(book: Book): BlockContent | undefined {
  const standing = standingOf(book, ROTATION_NAME, 'across');
  return standing && rememberedRotation(standing.block);
}
