import type { ComponentChildren } from 'preact';
import { Button } from './button';
import { Notice } from './notice';
import { type Book, useBook } from './use-book';

/** Reads the whole file on arrival and shows the rest once it is read. */
export function WithBook({ children }: { children: (book: Book, reread: () => void) => ComponentChildren }) {
  const { book, busy, problem, read } = useBook();
  return (
    <>
      {problem && <Notice kind="problem">{problem}</Notice>}
      {busy && <p aria-live="polite">Reading the spreadsheet…</p>}
      <Button disabled={busy} onPress={read}>
        Read the spreadsheet again
      </Button>
      {book && children(book, read)}
    </>
  );
}
