import { createContext } from 'preact';
import { useContext, useEffect, useState } from 'preact/hooks';
import { type Book, bookOf } from '../../../shared/block/book';
import { ask } from '../server';
import { useWork, type Work } from './use-work';

export type { Book };

export interface BookReader extends Work {
  readonly book: Book | undefined;
  readonly read: () => void;
  /** The file is known to stand like this by now; undefined: it is read again. */
  readonly take: (after: Book | undefined) => void;
}

/** The whole file in one call. */
export async function readBook(): Promise<Book> {
  return bookOf(await ask('readFile', {}));
}

/** For parts deep in a page that have written something into the sheet: takes the file as it stands now, or reads it again. */
export const Reread = createContext<(after?: Book) => void>(() => undefined);

export function useReread(): (after?: Book) => void {
  return useContext(Reread);
}

/** Reads the file on arrival and whenever it is asked to. */
export function useBook(): BookReader {
  const [book, setBook] = useState<Book>();
  const work = useWork();
  const read = (): void => work.start(async () => setBook(await readBook()));
  const take = (after: Book | undefined): void => (after ? setBook(after) : read());
  useEffect(read, []);
  return { ...work, book, read, take };
}
