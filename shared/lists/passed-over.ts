import { MAP_BLOCK } from '../block/own-words';
import { CORNERS_TITLE } from '../block/words';
import type { BlockInfo, TabContent } from '../contract';

/**
 * The part of a block of ours that the list finder passes over: all of it, except that the map's paddock list is
 * a list like the grower's own and only its corners are passed over.
 */
export function passedOver(tab: TabContent, block: BlockInfo): BlockInfo {
  if (block.name !== MAP_BLOCK) return block;
  const rows = Array.from({ length: block.rows }, (_, i) => block.row + i);
  const row = rows.find((one) => tab.values[one - 1]?.[block.column - 1] === CORNERS_TITLE);
  return row === undefined ? block : { ...block, row, rows: block.row + block.rows - row };
}
