import type { BlockContent } from '../../../../shared/block/read-block';
import { tableRows } from '../../../../shared/block/read-block';
import {
  composeLogBlock,
  LOG_BLOCK,
  LOG_HEADINGS,
  LOG_SETTINGS,
} from '../../../../shared/tasks/training/log-block';
import { readLog } from '../../../../shared/tasks/training/read-log';
import { WATCH_STEPS } from '../../../../shared/tasks/training/training-advice';
import { decimalComma } from '../../numbers/decimal-comma';
import { Notice } from '../../parts/notice';
import { ScrollRegion } from '../../parts/scroll-region';
import { SettingsFields } from '../../parts/settings-fields';
import { useSettings } from '../../parts/settings-state';
import { standingBlock } from '../../parts/standing-block';
import type { Book } from '../../parts/use-book';
import { WriteBlock } from '../../parts/write-block';
import { AdviceList } from './escape-steps';

export function LogSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const old = standingBlock(book, LOG_BLOCK);
  const standing = old && readLog(old);
  const on = { units: 'US', comma: decimalComma(book.overview.locale) } as const;
  const settings = useSettings(LOG_SETTINGS, standing?.settings.values ?? {}, on);
  const problems = standing?.settings.problems ?? [];
  const ok = settings.read.ok && problems.length === 0;
  return (
    <>
      <h2>Before turn-out</h2>
      <AdviceList steps={WATCH_STEPS} />
      {old && <LogNow block={old} />}
      <SettingsFields specs={LOG_SETTINGS} {...settings} {...on} onChange={settings.setTyped} />
      {problems.map((problem) => (
        <Notice key={problem} kind="problem">
          {problem}
        </Notice>
      ))}
      <h2>Into the sheet</h2>
      <p>
        One row a pig or batch. The sheet says what is still missing; a seller’s word changes nothing. To let
        the rotation wait: in your group list, under “In rotation from”, type = and click the group’s “Group
        ready from” cell.
      </p>
      <Notice kind="warning">
        Turn out only what a person has seen back off from a live wire. Keep a second fence between pigs and
        roads.
      </Notice>
      <WriteBlock
        asRead={old}
        name={LOG_BLOCK}
        what="the training log"
        tabName="Training log"
        file={book.overview}
        notYet={ok ? undefined : 'Correct the number above first.'}
        compose={(corner, now) => {
          const read = now && readLog(now);
          const inSheet = read?.settings.values.minimumDays;
          const typedHere = settings.typed.minimumDays !== undefined;
          const minimumDays =
            !typedHere && inSheet !== undefined ? inSheet : settings.read.values.minimumDays;
          return composeLogBlock({ minimumDays }, read?.rows ?? [], read?.addedHeadings ?? [], corner);
        }}
        onDone={onReread}
      />
    </>
  );
}

/** What the log in the sheet says now. */
function LogNow({ block }: { block: BlockContent }) {
  const rows = (tableRows({ ...block, values: withoutGaps(block) }, LOG_HEADINGS) ?? []).filter(
    (row) => row.value('Pig or batch') !== '',
  );
  if (rows.length === 0) return <p class="hint">The log in the sheet has no pigs yet.</p>;
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
          {rows.map((row) => (
            <tr key={row.sheetRow}>
              <th scope="row">{String(row.value('Pig or batch'))}</th>
              <td>{String(row.value('Status'))}</td>
              <td>{String(row.value('Still missing'))}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollRegion>
  );
}

/** Blank rows between filled ones are no end of the log. */
function withoutGaps(block: BlockContent): BlockContent['values'] {
  return block.values.filter((row, r) => r < 1 || row.some((cell) => cell !== ''));
}
