/** "Give a copy away": mark the original, see what is private, clear it in the copy. */
import type { ComponentChildren } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { findPrivate } from '../../../../shared/tasks/share/find-private';
import { markTask } from '../../../../shared/tasks/share/mark-task';
import { isMark } from '../../../../shared/tasks/share/original-mark';
import { COPIER_STEPS, COPY_STEPS, NOT_LOOKED_AT } from '../../../../shared/tasks/share/words';
import { count } from '../../parts/day-words';
import { Notice } from '../../parts/notice';
import { ReadAgain } from '../../parts/read-again';
import { Frame } from '../../parts/task-screen';
import { Reread } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { WriteBlock } from '../../parts/write-block';
import { type Cleared, ClearSection } from './clear-section';
import { PrivateList } from './private-list';
import { tabNames } from './tab-names';
import { type SharedFile, useSharedFile } from './use-shared-file';
import * as words from './words';

export function SharePanel() {
  const { shared, busy, problem, read } = useSharedFile();
  return (
    <>
      <ReadAgain busy={busy} problem={problem} read={read} />
      {shared && (
        <Reread.Provider value={read}>
          <ShareSteps shared={shared} onReread={read} />
        </Reread.Provider>
      )}
    </>
  );
}

function ShareSteps({ shared, onReread }: { shared: SharedFile; onReread: () => void }) {
  const [done, setDone] = useState<Cleared>();
  const marks = shared.file.blocks.filter(isMark);
  const isOriginal = marks.some(({ name }) => name === shared.mark);
  const isCopy = marks.length > 0 && !isOriginal;
  const isBlank = marks.length === 0 && done?.isAll === true;
  const found = findPrivate(shared.contents);
  const filled = found.reduce((sum, one) => sum + one.filled, 0);
  return (
    <Frame
      before={
        <>
          {done && (
            <Notice key={done.words} kind="done" takeFocus>
              {done.words}
            </Notice>
          )}
          {shared.unnamed.length > 0 && (
            <Notice kind="warning">{words.ofEarlierSeasons(tabNames(shared.unnamed))}</Notice>
          )}
        </>
      }
      answer={
        <div class="answer">
          <p>
            <strong>{shared.file.title}</strong>:{' '}
            {isBlank ? 'a blank copy' : isCopy ? 'a copy' : isOriginal ? 'the original' : 'not marked yet'}.
          </p>
          <p>
            <span class="big">{count(filled, 'cell')}</span> with something private in the tables of this
            tool.
          </p>
          {isBlank && <p>{leftWords(shared)}</p>}
          {isOriginal && (
            <p>
              <strong>It is marked:</strong> now File &gt; Make a copy, and open this task there. Nothing is
              cleared here.
            </p>
          )}
        </div>
      }
      button={
        isCopy ? (
          <>
            <ClearSection
              shared={shared}
              found={found}
              onCleared={(cleared) => {
                setDone(cleared);
                onReread();
              }}
            />
            <Folded title={words.WORK_HERE}>
              <MarkButton shared={shared} />
            </Folded>
          </>
        ) : (
          !isOriginal &&
          !isBlank && (
            <MarkButton shared={shared} onDone={() => setDone({ words: words.MARKED, isAll: false })} />
          )
        )
      }
      more={
        <>
          <h2>What is private here</h2>
          <PrivateList found={found} />
          <Folded title="What is not looked at">
            <p>
              {NOT_LOOKED_AT} {otherTabs(shared)}
            </p>
          </Folded>
          <Folded title="How to give a copy away">
            <Steps steps={COPY_STEPS} />
          </Folded>
          <Folded title={words.COPIER_TITLE}>
            <Steps steps={COPIER_STEPS} />
            <p class="hint">{words.FROM_MEMORY}</p>
          </Folded>
        </>
      }
    />
  );
}

/** By the mark a copy is known. */
function MarkButton({ shared, onDone }: { shared: SharedFile; onDone?: () => void }) {
  const task = useMemo(() => markTask(shared.mark), [shared.mark]);
  const state = useTask(task, shared.book);
  return (
    <>
      <p>{words.MARK_FIRST}</p>
      <WriteBlock task={task} state={state} book={shared.book} onDone={onDone} />
    </>
  );
}

function Folded({ title, children }: { title: string; children: ComponentChildren }) {
  return (
    <details class="rests">
      <summary>{title}</summary>
      {children}
    </details>
  );
}

/** What still stands in a copy whose tables were cleared. */
function leftWords({ book }: SharedFile): string {
  const filled = book.tabs.filter(({ values }) => values.some((row) => row.some((value) => value !== '')));
  if (filled.length === 0) return words.NOTHING_LEFT;
  return words.filledTabs(tabNames(filled.map(({ name }) => name)));
}

/** A copied tab holds no table of this tool, whatever it looks like. */
function otherTabs({ file, contents }: SharedFile): string {
  const looked = new Set(contents.map(({ info }) => info.tab));
  const others = file.tabs.map(({ name }) => name).filter((name) => !looked.has(name));
  return others.length === 0 ? '' : words.notLookedAt(tabNames(others));
}

function Steps({ steps }: { steps: readonly string[] }) {
  return (
    <ol>
      {steps.map((step) => (
        <li key={step}>{step}</li>
      ))}
    </ol>
  );
}
