import { firstFew } from '../block/first-few';
import type { BlockContent } from '../block/read-block';
import { blockedSpills } from './blocked-spills';
import { changedMeanwhile } from './changed-meanwhile';
import type { ComposedBlock } from './composed-block';
import { keepFormulas } from './keep-formulas';
import { keepLooks } from './keep-looks';
import { lostCells } from './lost-cells';
import { refuseOtherHeadings } from './refuse-other-headings';
import { refuseOtherUnits } from './refuse-other-units';
import { refuseTypedOver, typedOverCells } from './typed-over-cells';

export interface OverOptions {
  /** The block as the page read it, which what it writes rests on. */
  readonly asRead?: BlockContent | undefined;
  /** What of the old block must not get lost, where that is less than everything typed. */
  readonly mustKeep?: ((old: BlockContent) => BlockContent) | undefined;
  /** Blocks that the same builder makes by other choices: their formulas in the old block are not the grower's. */
  readonly variants?: readonly ComposedBlock[] | undefined;
}

/**
 * A new block to be written over the one that stands, with the formulas that were typed into its settings. Throws,
 * with the cells named, where something typed by hand would be lost.
 */
export function blockOver(old: BlockContent, block: ComposedBlock, options: OverOptions = {}): ComposedBlock {
  const { mustKeep = (content) => content, variants = [], asRead } = options;
  refuseOtherHeadings(old, block);
  refuseTypedOver(old, [...typedOverCells(old, block.cells), ...blockedSpills(old, block.cells)]);
  const cells = keepFormulas(old, block.cells);
  if (asRead) refuseChanged(changedMeanwhile(asRead, old, cells));
  const lost = lostCells(
    mustKeep(old),
    cells,
    variants.map((variant) => variant.cells),
  );
  if (lost.length === 0) return { ...block, cells: keepLooks(old, { ...block, cells }) };
  // With other units every unit and figure of the table would be another.
  refuseOtherUnits(old, lost);
  throw new Error(
    `These cells of the table were typed by hand and would be lost: ${firstFew(lost)}. Move them outside the table first. Nothing was written.`,
  );
}

function refuseChanged(cells: readonly string[]): void {
  if (cells.length === 0) return;
  throw new Error(
    `These cells were changed in the sheet after the page had read it: ${firstFew(cells)}. Press “Read the spreadsheet again” so that they count, look at the numbers and write once more. Nothing was written.`,
  );
}
