import type { ComposedBlock } from '../block/composed-block';
import { firstFew } from '../block/first-few';
import type { BlockContent } from '../block/read-block';
import { changedMeanwhile } from './changed-meanwhile';
import { asWritten, type MergedBlock, mergeBlock } from './merge-block';
import { OUR_WORDS } from './our-words';
import { refuseOtherUnits } from './refuse-other-units';

interface How {
  /** The block as the page read it before. */
  readonly asRead?: BlockContent | undefined;
  /** What was typed over something of ours gives way. */
  readonly putBack?: boolean | undefined;
  /** The block as its readers want it, where that is known. */
  readonly reading?: BlockContent | undefined;
}

/**
 * A block to be written over the one that stands. `compose` reads what was typed there and lays the new one out.
 * Throws where the units were typed over, and where a cell was changed meanwhile and would be set back.
 */
export function rebuildBlock(
  name: string,
  old: BlockContent,
  compose: (corner: BlockContent['info'], old: BlockContent) => ComposedBlock,
  { asRead, putBack, reading = asWritten(old, OUR_WORDS) }: How = {},
): MergedBlock {
  refuseOtherUnits(old);
  const want = compose(old.info, reading);
  if (asRead) refuseChanged(changedMeanwhile(asWritten(asRead, OUR_WORDS), reading, want.cells));
  return mergeBlock(name, want, old, putBack);
}

function refuseChanged(cells: readonly string[]): void {
  if (cells.length === 0) return;
  throw new Error(
    `These cells were changed in the sheet after the page had read it: ${firstFew(cells)}. Press “Read the spreadsheet again” so that they count, look at the numbers and write once more. Nothing was written.`,
  );
}
