import { Notice } from '../../parts/notice';
import type { Writer } from './use-write';

/** Where the table was written, or why it was not. Stays in sight also when the plan must be worked out again. */
export function WriteOutcome({ writer: { problem, done } }: { writer: Writer }) {
  return (
    <>
      {problem && <Notice kind="problem">{problem}</Notice>}
      {done && (
        <Notice kind="done">
          The table stands on “{done.block.tab}”, {done.a1}.
        </Notice>
      )}
      {done && (
        <p class="hint">Next, under “All tasks”: “See today at a glance” makes a page for the phone of it.</p>
      )}
      {done?.note && <Notice kind="warning">{done.note}</Notice>}
    </>
  );
}
