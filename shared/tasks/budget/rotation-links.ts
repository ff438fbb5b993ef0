import { columnLetters } from '../../block/a1';
import type { BlockContent } from '../../block/read-block';
import { columnsOf } from '../../table/move-rows';
import { rememberedRotation } from '../../table/remembered-rotation';
import type { LinkedColumn, StaySource } from './stay-columns';

const LINKED: readonly LinkedColumn[] = [
  'group',
  'paddock',
  'inDay',
  'stayDays',
  'mostHead',
  'meanHead',
  'startWeight',
  'growthDays',
  'dailyGain',
  'area',
];

/**
 * Where the columns of the rotation table stand, for links to its cells; undefined where they are not all found, or
 * where the tab's name holds an apostrophe, which not every engine can refer to.
 */
export function rotationLinks(block: BlockContent): StaySource['rotation'] {
  const { info } = block;
  if (info.tab.includes("'")) return undefined;
  const standing = columnsOf(rememberedRotation(block));
  const found = LINKED.flatMap((key) => {
    const column = standing.get(key);
    return column === undefined ? [] : [[key, columnLetters(info.column + column)] as const];
  });
  if (found.length < LINKED.length) return undefined;
  return { tab: info.tab, columns: Object.fromEntries(found) as Record<LinkedColumn, string> };
}
