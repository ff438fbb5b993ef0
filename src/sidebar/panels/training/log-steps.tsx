import type { BlockContent } from '../../../../shared/block/read-block';
import { decimalComma } from '../../../../shared/locale/decimal-comma';
import { NEW_TABLE } from '../../../../shared/tasks/room-to-type';
import { composeLogBlock, LOG_BLOCK, LOG_SETTINGS } from '../../../../shared/tasks/training/log-block';
import { NOT_READY } from '../../../../shared/tasks/training/log-headings';
import { logStates, readLog } from '../../../../shared/tasks/training/read-log';
import { readyLookup } from '../../../../shared/tasks/training/ready-lookup';
import { WATCH_STEPS } from '../../../../shared/tasks/training/training-advice';
import { standingAndBelow } from '../../parts/grown-block';
import { NotPart } from '../../parts/not-part';
import { Notice } from '../../parts/notice';
import { ScrollRegion } from '../../parts/scroll-region';
import { SettingsFields } from '../../parts/settings-fields';
import { useSettings } from '../../parts/settings-state';
import type { Book } from '../../parts/use-book';
import { WriteBlock } from '../../parts/write-block';
import { AdviceList } from './escape-steps';
import { LogDecides } from './log-decides';

export function LogSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const old = standingAndBelow(book, LOG_BLOCK);
  const standing = old && readLog(old.content);
  const on = { units: 'US', comma: decimalComma(book.overview.locale) } as const;
  const settings = useSettings(LOG_SETTINGS, standing?.settings.values ?? {}, on);
  const problems = standing?.settings.problems ?? [];
  const lookup = old && readyLookup(old.content, 'A6');
  const ok = settings.read.ok && problems.length === 0;
  return (
    <>
      <h2>Before turn-out</h2>
      <AdviceList steps={WATCH_STEPS} />
      {old && <LogNow block={old.content} adoptRows={old.adoptRows} />}
      <SettingsFields specs={LOG_SETTINGS} {...settings} {...on} onChange={settings.setTyped} />
      {problems.map((problem) => (
        <Notice key={problem} kind="problem">
          {problem}
        </Notice>
      ))}
      <h2>Into the sheet</h2>
      <p>One row a pig or batch. The sheet says what is still missing; a seller’s word changes nothing.</p>
      {old && lookup ? (
        <LogDecides book={book} log={old.content} lookup={lookup} onDone={onReread} />
      ) : (
        <p>Once the log stands, a button here lets the rotation wait for it.</p>
      )}
      <Notice kind="warning">
        Turn out only what a person has seen back off from a live wire. Keep a second fence between pigs and
        roads.
      </Notice>
      <NotPart apart={old?.apart} />
      <WriteBlock
        adoptRows={old?.adoptRows}
        name={LOG_BLOCK}
        what="the training log"
        tabName="Training log"
        book={book}
        notYet={ok ? undefined : 'Correct the number above first.'}
        compose={(corner, now) => {
          const read = now && readLog(now);
          const inSheet = read?.settings.values.minimumDays;
          const typedHere = settings.typed.minimumDays !== undefined;
          const minimumDays =
            !typedHere && inSheet !== undefined ? inSheet : settings.read.values.minimumDays;
          const room = read && old ? { lines: read.lines, below: old.below } : NEW_TABLE;
          return composeLogBlock({ minimumDays }, read?.rows ?? [], read?.headings ?? [], corner, room);
        }}
        onDone={onReread}
      />
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
