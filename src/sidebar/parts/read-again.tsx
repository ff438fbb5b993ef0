import { Button } from './button';
import { Notice } from './notice';

interface Props {
  readonly busy: boolean;
  readonly problem: string | undefined;
  readonly read: () => void;
}

/** Head of a task that reads the spreadsheet: what went wrong, that it is reading, and the way to read again. */
export function ReadAgain({ busy, problem, read }: Props) {
  return (
    <>
      {problem && <Notice kind="problem">{problem}</Notice>}
      {busy && <p aria-live="polite">Reading the spreadsheet…</p>}
      <Button disabled={busy} onPress={read}>
        Read the spreadsheet again
      </Button>
    </>
  );
}
