/** "Plan the moves": lists, rules, plan, table, one after the other on one screen. */
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import { RotationSteps } from './rotation-steps';
import { useBook } from './use-book';

export function RotationPanel() {
  const reader = useBook();
  const { book, busy, problem, read } = reader;
  return (
    <>
      {problem && <Notice kind="problem">{problem}</Notice>}
      {busy && <p aria-live="polite">Reading the spreadsheet…</p>}
      <Button disabled={busy} onPress={read}>
        Read the spreadsheet again
      </Button>
      {book && <RotationSteps book={book} onReread={read} />}
    </>
  );
}
