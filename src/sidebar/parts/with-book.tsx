import type { ComponentChildren } from 'preact';
import { ReadAgain } from './read-again';
import { type Book, Reread, useBook } from './use-book';
import * as words from './words';

/** Reads the whole file on arrival and shows the rest once it is read. */
export function WithBook({ children }: { children: (book: Book, reread: () => void) => ComponentChildren }) {
  const { book, busy, problem, read, take } = useBook();
  return (
    <>
      <ReadAgain busy={busy} problem={problem} read={read} />
      {book && book.overview.passedOver.length > 0 && (
        <p class="hint">{words.passedOver(book.overview.passedOver.join(', '))}</p>
      )}
      {book && <Reread.Provider value={take}>{children(book, read)}</Reread.Provider>}
    </>
  );
}
