import { useEffect, useState } from 'preact/hooks';
import type { WholeFile } from '../../../shared/contract';
import { ask } from '../server';
import { useWork, type Work } from './use-work';

/** Everything the page knows of the file: what it is and what stands on its tabs. */
export type Book = Readonly<WholeFile>;

export interface BookReader extends Work {
  readonly book: Book | undefined;
  readonly read: () => void;
}

export function readBook(): Promise<Book> {
  return ask('readFile', {});
}

/** Reads the file on arrival and whenever it is asked to. */
export function useBook(): BookReader {
  const [book, setBook] = useState<Book>();
  const work = useWork();
  const read = (): void => work.start(async () => setBook(await readBook()));
  useEffect(read, []);
  return { ...work, book, read };
}
