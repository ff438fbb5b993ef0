import { useEffect, useState } from 'preact/hooks';
import { allBlocks } from '../../../shared/block/stamped-blocks';
import type { Overview, TabContent } from '../../../shared/contract';
import { ask } from '../server';
import { useWork, type Work } from './use-work';

/** Everything the page knows of the file: what it is and what stands on its tabs. */
export interface Book {
  readonly overview: Overview;
  readonly tabs: readonly TabContent[];
}

export interface BookReader extends Work {
  readonly book: Book | undefined;
  readonly read: () => void;
}

export async function readBook(): Promise<Book> {
  const overview = await ask('overview', {});
  const names = overview.tabs.filter(({ rows }) => rows > 0).map(({ name }) => name);
  const tabs = names.length > 0 ? await ask('readTabs', { tabs: names }) : [];
  return { overview: { ...overview, blocks: allBlocks(overview.blocks, tabs) }, tabs };
}

/** Reads the file on arrival and whenever it is asked to. */
export function useBook(): BookReader {
  const [book, setBook] = useState<Book>();
  const work = useWork();
  const read = (): void => work.start(async () => setBook(await readBook()));
  useEffect(read, []);
  return { ...work, book, read };
}
