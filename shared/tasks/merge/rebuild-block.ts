import { cellA1 } from '../../block/a1';
import { alignColumns } from '../../block/align-columns';
import type { ComposedBlock } from '../../block/composed-block';
import { bareMark, markOfStanding } from '../../block/memory';
import type { BlockContent } from '../../block/read-block';
import { UNITS_LABEL } from '../settings';
import { readingOf } from './as-written';
import { type MergedBlock, mergeBlock } from './merge-block';
import * as words from './words';

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
  { putBack, reading = readingOf(old) }: How = {},
): MergedBlock {
  refuseOtherUnits(old);
  return mergeBlock(name, compose(old.info, reading), old, putBack);
}

/** Refuses a table whose units were typed over, by that cell: every figure in it is in the others. */
function refuseOtherUnits(block: BlockContent): void {
  const { info, values, memory } = block;
  const label = markOfStanding(UNITS_LABEL, '');
  const row = memory?.rows.findIndex((one) => one?.marks[0] === label) ?? -1;
  const was = memory?.rows[row]?.marks[1];
  const column = alignColumns(block).indexOf(1);
  const got = values[row]?.[column] ?? '';
  if (was === undefined || got === '' || bareMark(was) === markOfStanding(got, '')) return;
  throw new Error(words.unitsStay(cellA1(info.row + row, info.column + column), String(got)));
}
