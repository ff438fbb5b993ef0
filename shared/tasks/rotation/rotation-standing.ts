import type { Book } from '../../block/book';
import { oncePer } from '../../block/once-per';
import { ROTATION_NAME } from '../../block/own-words';
import type { OldRotation } from '../../table/model';
import { readRotation } from '../../table/read-rotation';
import { rememberedRotation } from '../../table/remembered-rotation';
import { type Standing, standingOf } from '../standing';

/** The rotation table that stands in the file, with its moves; columns begun right beside it are part of it. */
export interface StandingRotation extends Standing {
  readonly rotation: OldRotation;
}

export const standingRotation = oncePer((book: Book): StandingRotation | undefined => {
  const standing = standingOf(book, ROTATION_NAME, 'across');
  if (!standing) return undefined;
  const block = rememberedRotation(standing.block);
  return { ...standing, block, rotation: readRotation(block) };
});
