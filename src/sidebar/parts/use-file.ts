import { useEffect, useState } from 'preact/hooks';
import { type BlockContent, cutBlock } from '../../../shared/block/read-block';
import type { BlockInfo, Overview } from '../../../shared/contract';
import { ask } from '../server';
import { useWork, type Work } from './use-work';

export interface FileReader extends Work {
  readonly file: Overview | undefined;
  readonly read: () => void;
}

/** What the file is: tabs, our blocks, locale. Read on arrival and whenever it is asked to. */
export function useFile(): FileReader {
  const [file, setFile] = useState<Overview>();
  const work = useWork();
  const read = (): void => work.start(async () => setFile(await ask('overview', {})));
  useEffect(read, []);
  return { ...work, file, read };
}

/** What stands in a block of ours now. */
export async function readBlock(info: BlockInfo): Promise<BlockContent> {
  const [content] = await ask('readTabs', { tabs: [info.tab] });
  if (!content) throw new Error(`There is no tab named “${info.tab}” any more. Read the file again.`);
  return cutBlock(content, info);
}

/** The block of that name, freshly looked up; undefined where there is none. */
export async function findBlock(name: string): Promise<BlockContent | undefined> {
  const { blocks } = await ask('overview', {});
  const info = blocks.find((block) => block.name === name);
  return info && readBlock(info);
}
