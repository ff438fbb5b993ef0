import { type BlockContent, cutBlock } from '../../../shared/block/read-block';
import type { BlockInfo } from '../../../shared/contract';
import { ask } from '../server';

/** What stands in a block of ours now. */
async function readBlock(info: BlockInfo): Promise<BlockContent> {
  const [content] = await ask('readTabs', { tabs: [info.tab] });
  if (!content) throw new Error(`There is no tab named “${info.tab}” any more. Read the file again.`);
  return cutBlock(content, info);
}

/** The block of that name and some rows below it, freshly looked up; undefined where there is none. */
export async function findBlock(name: string, rowsBelow = 0): Promise<BlockContent | undefined> {
  const { blocks } = await ask('overview', {});
  const info = blocks.find((block) => block.name === name);
  return info && readBlock({ ...info, rows: info.rows + rowsBelow });
}
