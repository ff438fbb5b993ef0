import type { ComposedBlock } from '../block/composed-block';
import type { BlockContent } from '../block/read-block';
import { asWritten, type MergedBlock, mergeBlock } from './merge-block';
import { OUR_WORDS } from './our-words';
import { refuseOtherUnits } from './refuse-other-units';

interface How {
  /** What was typed over something of ours gives way. */
  readonly putBack?: boolean | undefined;
  /** The block as its readers want it, where that is known. */
  readonly reading?: BlockContent;
}

/**
 * A block to be written over the one that stands. `compose` reads what was typed there and lays the new one out.
 * Throws where the units were typed over.
 */
export function rebuildBlock(
  name: string,
  old: BlockContent,
  compose: (corner: BlockContent['info'], old: BlockContent) => ComposedBlock,
  { putBack, reading = asWritten(old, OUR_WORDS) }: How = {},
): MergedBlock {
  refuseOtherUnits(old);
  return mergeBlock(name, compose(old.info, reading), old, putBack);
}
