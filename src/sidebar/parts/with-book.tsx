import type { ComponentChildren } from 'preact';
import { type Book, useBook } from '../panels/rotation/use-book';
import { Button } from './button';
import { Notice } from './notice';

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
