import { useEffect, useState } from 'preact/hooks';
import { allBlocks } from '../../../shared/block/stamped-blocks';
import type { WholeFile } from '../../../shared/contract';
import { ask } from '../server';
import { useWork, type Work } from './use-work';

/** Everything the page knows of the file: what it is and what stands on its tabs. */
export type Book = Readonly<WholeFile>;

export interface BookReader extends Work {
  readonly book: Book | undefined;
  readonly read: () => void;
}

/** The whole file in one call. Blocks whose name is missing are found by the head of their memory. */
export async function readBook(): Promise<Book> {
  const { overview, tabs } = await ask('readFile', {});
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
