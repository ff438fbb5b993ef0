import type { BlockContent } from '../../../../shared/block/read-block';
import { NOT_READY } from '../../../../shared/tasks/training/log-headings';
import { LOG_TASK } from '../../../../shared/tasks/training/log-task';
import { logStates } from '../../../../shared/tasks/training/read-log';
import { readyLookup } from '../../../../shared/tasks/training/ready-lookup';
import { LOG_CAUTION, WATCH_STEPS } from '../../../../shared/tasks/training/words';
import { count } from '../../parts/day-words';
import { ScrollRegion } from '../../parts/scroll-region';
import { SettingsFields } from '../../parts/task-fields';
import { settingsWords, TaskScreen } from '../../parts/task-screen';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { AdviceList } from './escape-steps';
import { LogDecides } from './log-decides';
import * as words from './words';

export function LogSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const state = useTask(LOG_TASK, book);
  const { standing, settings } = state.form;
  const lookup = standing && readyLookup(standing.reading, 'A6');
  return (
    <TaskScreen
      task={LOG_TASK}
      state={state}
      book={book}
      answer={
        <div class="answer">
          {standing ? (
            <LogNow block={standing.reading} adoptRows={standing.adoptRows} />
          ) : (
            <p>{words.ONE_ROW}</p>
          )}
        </div>
      }
      cautions={[LOG_CAUTION]}
      more={
        <>
          {standing && lookup && (
            <LogDecides book={book} log={standing.reading} lookup={lookup} onDone={onReread} />
          )}
          <details class="rests">
            <summary>{words.BEFORE_TURN_OUT}</summary>
            <AdviceList steps={WATCH_STEPS} />
          </details>
        </>
      }
      rests={[
        {
          title: 'When a pig is ready',
          words: settingsWords(settings),
          isAsked: !settings.ok,
          fields: <SettingsFields form={settings} state={state} />,
        },
      ]}
    />
  );
}

const NOT_COUNTED = 'below the log: not counted until it is written anew';

/** What the log in the sheet says now. */
function LogNow({ block, adoptRows }: { block: BlockContent; adoptRows: number }) {
  const rows = logStates(block);
  if (rows.length === 0) return <p class="hint">{words.NO_PIGS_YET}</p>;
  const firstBelow = block.info.row + block.info.rows - adoptRows;
  const shown = rows.map((row) =>
    row.sheetRow < firstBelow ? row : { ...row, status: NOT_READY, missing: NOT_COUNTED },
  );
  const waiting = shown.filter(({ status }) => status === NOT_READY).length;
  return (
    <>
      <p>
        <span class="big">{waiting}</span> of {count(rows.length, 'row')} not ready.
      </p>
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
            {shown.map(({ sheetRow, name, status, missing }) => (
              <tr key={sheetRow}>
                <th scope="row">{name || `(row ${sheetRow})`}</th>
                <td>{status}</td>
                <td>{missing}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
    </>
  );
}
