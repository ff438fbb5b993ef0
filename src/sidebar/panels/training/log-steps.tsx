import type { BlockContent } from '../../../../shared/block/read-block';
import { NOT_READY } from '../../../../shared/tasks/training/log-headings';
import { LOG_TASK } from '../../../../shared/tasks/training/log-task';
import { logStates } from '../../../../shared/tasks/training/read-log';
import { readyLookup } from '../../../../shared/tasks/training/ready-lookup';
import { WATCH_STEPS } from '../../../../shared/tasks/training/training-advice';
import { Notice } from '../../parts/notice';
import { ScrollRegion } from '../../parts/scroll-region';
import { SettingsFields, SheetProblems } from '../../parts/task-fields';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { WriteBlock } from '../../parts/write-block';
import { AdviceList } from './escape-steps';
import { LogDecides } from './log-decides';

export function LogSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const state = useTask(LOG_TASK, book);
  const { standing, settings } = state.form;
  const lookup = standing && readyLookup(standing.reading, 'A6');
  return (
    <>
      <h2>Before turn-out</h2>
      <AdviceList steps={WATCH_STEPS} />
      {standing && <LogNow block={standing.reading} adoptRows={standing.adoptRows} />}
      <SettingsFields form={settings} state={state} />
      <SheetProblems state={state} />
      <h2>Into the sheet</h2>
      <p>One row a pig or batch. The sheet says what is still missing; a seller’s word changes nothing.</p>
      {standing && lookup ? (
        <LogDecides book={book} log={standing.reading} lookup={lookup} onDone={onReread} />
      ) : (
        <p>Once the log stands, a button here lets the rotation wait for it.</p>
      )}
      <Notice kind="warning">
        Turn out only what a person has seen back off from a live wire. Keep a second fence between pigs and
        roads.
      </Notice>
      <WriteBlock task={LOG_TASK} state={state} book={book} onDone={onReread} />
    </>
  );
}

const NOT_COUNTED = 'below the log: not counted until it is written anew';

/** What the log in the sheet says now. */
function LogNow({ block, adoptRows }: { block: BlockContent; adoptRows: number }) {
  const rows = logStates(block);
  if (rows.length === 0) return <p class="hint">The log in the sheet has no pigs yet.</p>;
  const firstBelow = block.info.row + block.info.rows - adoptRows;
  return (
    <ScrollRegion label="The training log, scrolls sideways">
      <table class="wide">
        <thead>
          <tr>
            <th scope="col">Pig or batch</th>
            <th scope="col">Status</th>
            <th scope="col">Still missing</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ sheetRow, name, status, missing }) => (
            <tr key={sheetRow}>
              <th scope="row">{name || `(row ${sheetRow})`}</th>
              <td>{sheetRow < firstBelow ? status : NOT_READY}</td>
              <td>{sheetRow < firstBelow ? missing : NOT_COUNTED}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollRegion>
  );
}
