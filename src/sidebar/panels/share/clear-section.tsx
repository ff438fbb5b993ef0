import { useState } from 'preact/hooks';
import { wholeOf } from '../../../../shared/block/read-block';
import { areaFingerprint } from '../../../../shared/tasks/area-fingerprint';
import { findPrivate, type PrivateFound } from '../../../../shared/tasks/share/find-private';
import { KIND_WORDS, PRIVATE_KINDS, type PrivateKind } from '../../../../shared/tasks/share/private-columns';
import { usePage } from '../../page';
import { Button } from '../../parts/button';
import { count } from '../../parts/day-words';
import { InputField } from '../../parts/field';
import { Notice } from '../../parts/notice';
import { useWork } from '../../parts/use-work';
import { ask } from '../../server';
import { PrivateList } from './private-list';
import type { SharedFile } from './use-shared-file';

/** Typed to confirm, so that a slip of the mouse clears nothing. */
const WORD = 'CLEAR';

/** In a copy: choose kinds, type the word, clear. The script refuses where this is the original after all. */
export function ClearSection({ shared, onReread }: { shared: SharedFile; onReread: () => void }) {
  const found = findPrivate(shared.contents);
  const kinds = PRIVATE_KINDS.filter((kind) => found.some((one) => one.kind === kind));
  // Without its corners a map has no areas, so that is left to the grower.
  const [left, setLeft] = useState<readonly PrivateKind[]>(['place']);
  const [typed, setTyped] = useState('');
  const [done, setDone] = useState<number>();
  const work = useWork();
  const { say } = usePage();
  const chosen = found.filter(({ kind }) => !left.includes(kind));
  const clear = (): void =>
    work.start(async () => {
      setDone(undefined);
      say('Clearing…');
      const { cells } = await ask('clearPrivate', requestFor(chosen, shared));
      setDone(cells);
      setTyped('');
      say('Cleared in this copy.');
      onReread();
    });
  return (
    <>
      <PrivateList found={found} />
      {found.length > 0 && (
        <>
          <fieldset>
            <legend>Clear in this copy</legend>
            {kinds.map((kind) => (
              <label key={kind} class="choice">
                <input
                  type="checkbox"
                  checked={!left.includes(kind)}
                  onChange={({ currentTarget }) =>
                    setLeft(currentTarget.checked ? left.filter((one) => one !== kind) : [...left, kind])
                  }
                />
                {KIND_WORDS[kind]}
              </label>
            ))}
          </fieldset>
          <InputField
            label={`Type ${WORD} to clear them in “${shared.file.title}”`}
            hint="Only in this copy; the original keeps everything. In this copy, File > Version history brings them back."
            value={typed}
            onChange={setTyped}
          />
          <Button
            kind="main"
            disabled={work.busy || typed.trim() !== WORD || chosen.length === 0}
            onPress={clear}
          >
            {work.busy ? 'Clearing…' : 'Clear in this copy'}
          </Button>
        </>
      )}
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
      {done !== undefined && (
        <Notice kind="done">
          {count(done, 'cell')} cleared. Editors can still find them in this copy’s version history: make a
          second copy of this one and give that away, or share this one for viewing only.
        </Notice>
      )}
    </>
  );
}

function requestFor(chosen: readonly PrivateFound[], { contents, book }: SharedFile) {
  const names = new Set(chosen.map(({ block }) => block));
  return {
    areas: chosen.map(({ area }) => area),
    blocks: contents
      .filter(({ info }) => names.has(info.name))
      .map((block) => ({ name: block.info.name, expects: areaFingerprint(book, wholeOf(block)) })),
  };
}
