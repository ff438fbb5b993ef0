/** "Give a copy away": mark the original, see what is private, clear it in the copy. */

import { firstFew } from '../../../../shared/block/first-few';
import { MARK_BLOCK, readMark } from '../../../../shared/tasks/share/original-mark';
import { COPIER_STEPS, COPY_STEPS, NOT_LOOKED_AT } from '../../../../shared/tasks/share/share-advice';
import { Notice } from '../../parts/notice';
import { ReadAgain } from '../../parts/read-again';
import { ClearSection } from './clear-section';
import { MarkSection } from './mark-section';
import { type SharedFile, useSharedFile } from './use-shared-file';

export function SharePanel() {
  const { shared, busy, problem, read } = useSharedFile();
  return (
    <>
      <ReadAgain busy={busy} problem={problem} read={read} />
      {shared && <ShareSteps shared={shared} onReread={read} />}
      <h2>How to give a copy away</h2>
      <Steps steps={COPY_STEPS} />
      <details>
        <summary>What whoever copies it must allow, and why</summary>
        <Steps steps={COPIER_STEPS} />
      </details>
      <p class="hint">What Google’s menus say is from its help and from memory; it may have changed.</p>
    </>
  );
}

function ShareSteps({ shared, onReread }: { shared: SharedFile; onReread: () => void }) {
  const { title } = shared.file;
  const marked = shared.contents.find(({ info }) => info.name === MARK_BLOCK);
  const mark = marked && readMark(marked.values);
  const isOriginal = mark === shared.mark;
  return (
    <>
      <p>
        This file: <strong>{title}</strong>,{' '}
        {mark === undefined ? 'not marked yet' : isOriginal ? 'the original' : 'a copy'}.
      </p>
      <h2>What is private here</h2>
      <Notice kind="note">
        {NOT_LOOKED_AT} {otherTabs(shared)}
      </Notice>
      {shared.unnamed.length > 0 && (
        <Notice kind="warning">
          {tabNames(shared.unnamed)}: tables of this tool from an earlier season, or copies. What is private
          there is not listed and not cleared: clear it yourself, or delete these tabs in the copy.
        </Notice>
      )}
      {mark !== undefined && !isOriginal ? (
        <ClearSection shared={shared} onReread={onReread} />
      ) : (
        <MarkSection shared={shared} isOriginal={isOriginal} onReread={onReread} />
      )}
    </>
  );
}

/** A copied tab holds no table of this tool, whatever it looks like. */
function otherTabs({ file, contents }: SharedFile): string {
  const looked = new Set(contents.map(({ info }) => info.tab));
  const others = file.tabs.map(({ name }) => name).filter((name) => !looked.has(name));
  return others.length === 0 ? '' : `Tabs not looked at: ${tabNames(others)}.`;
}

const MOST_TABS = 30;

function tabNames(names: readonly string[]): string {
  return firstFew(
    names.map((name) => `“${name}”`),
    MOST_TABS,
  );
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
