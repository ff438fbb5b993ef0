import type { BlockContent } from '../block/read-block';
import type { ComposedBlock } from './composed-block';
import { keepFormulas } from './keep-formulas';
import { lostCells } from './lost-cells';
import { refuseTypedOver, typedOverCells } from './typed-over-cells';

export interface OverOptions {
  /** What of the old block must not get lost, where that is less than everything typed. */
  readonly mustKeep?: ((old: BlockContent) => BlockContent) | undefined;
  /** Blocks that the same builder makes by other choices: their formulas in the old block are not the grower's. */
  readonly variants?: readonly ComposedBlock[] | undefined;
}

const MOST_NAMED = 8;

/**
 * A new block to be written over the one that stands, with the formulas that were typed into its settings. Throws,
 * with the cells named, where something typed by hand would be lost.
 */
export function blockOver(old: BlockContent, block: ComposedBlock, options: OverOptions = {}): ComposedBlock {
  const { mustKeep = (content) => content, variants = [] } = options;
  refuseTypedOver(old, typedOverCells(old, block.cells));
  const cells = keepFormulas(old, block.cells);
  const lost = lostCells(
    mustKeep(old),
    cells,
    variants.map((variant) => variant.cells),
  );
  if (lost.length === 0) return { ...block, cells };
  const more = lost.length > MOST_NAMED ? ` and ${lost.length - MOST_NAMED} more` : '';
  throw new Error(
    `These cells of the table were typed by hand and would be lost: ${lost.slice(0, MOST_NAMED).join(', ')}${more}. Move them outside the table first. Nothing was written.`,
  );
}
