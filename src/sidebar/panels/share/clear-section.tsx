import { useMemo, useState } from 'preact/hooks';
import { wholeOf } from '../../../../shared/block/read-block';
import { dayWords } from '../../../../shared/core/calendar/day-words';
import { areaFingerprint } from '../../../../shared/tasks/area-fingerprint';
import { type BlankCopy, blankCopy, blankRequest } from '../../../../shared/tasks/share/blank-copy';
import type { PrivateFound } from '../../../../shared/tasks/share/find-private';
import { KIND_WORDS, PRIVATE_KINDS, type PrivateKind } from '../../../../shared/tasks/share/private-columns';
import { recordedMoves } from '../../../../shared/tasks/share/recorded-moves';
import { usePage } from '../../page';
import { Button } from '../../parts/button';
import { Choices } from '../../parts/choices';
import { count } from '../../parts/day-words';
import { InputField } from '../../parts/field';
import { Notice } from '../../parts/notice';
import { useWork } from '../../parts/use-work';
import { ask } from '../../server';
import { tabNames } from './tab-names';
import type { SharedFile } from './use-shared-file';
import * as words from './words';

const WHAT = [
  { value: 'private', text: 'What is private' },
  { value: 'all', text: words.EVERYTHING },
];

/** What was done; a copy with everything cleared carries no mark any more. */
export interface Cleared {
  readonly words: string;
  readonly isAll: boolean;
}

interface Props {
  readonly shared: SharedFile;
  readonly found: readonly PrivateFound[];
  readonly onCleared: (cleared: Cleared) => void;
}

/** In a copy: choose what, type the name of the file, clear. The script refuses where this is the original after all. */
export function ClearSection({ shared, found, onCleared }: Props) {
  const { title } = shared.file;
  const blank = useMemo(() => blankCopy(shared.book), [shared.book]);
  const [what, setWhat] = useState('private');
  // Without its corners a map has no areas, so that is left to the grower.
  const [left, setLeft] = useState<readonly PrivateKind[]>(['place']);
  const [withLists, setWithLists] = useState(true);
  const [typed, setTyped] = useState('');
  const recorded = useMemo(() => recordedMoves(shared.book), [shared.book]);
  const work = useWork();
  const { say } = usePage();
  const isAll = what === 'all';
  const chosen = found.filter(({ kind }) => !left.includes(kind));
  const isNothing = (isAll ? blank.tables : chosen).length === 0;
  const clear = (): void =>
    work.start(async () => {
      say('Clearing…');
      const request = isAll ? blankRequest(blank, withLists) : privateRequest(chosen, shared);
      await ask('clearInCopy', request);
      say(words.CLEARED);
      const filled = chosen.reduce((sum, one) => sum + one.filled, 0);
      const done = isAll ? blankWords(blank, withLists) : count(filled, 'cell');
      onCleared({ words: `${done} cleared. ${words.EDITORS_FIND}`, isAll });
    });
  return (
    <>
      <Choices legend="Clear in this copy" value={what} options={WHAT} onChange={setWhat} />
      {isAll ? (
        <>
          <Box text="The rows of my lists too" checked={withLists} onChange={setWithLists} />
          <p class="hint">{words.goes(blankWords(blank, withLists))}</p>
        </>
      ) : (
        <details class="rests">
          <summary>
            {chosen.length === found.length
              ? 'All of it'
              : `All but ${left.map((kind) => KIND_WORDS[kind]).join('; ')}`}
          </summary>
          {PRIVATE_KINDS.filter((kind) => found.some((one) => one.kind === kind)).map((kind) => (
            <Box
              key={kind}
              text={KIND_WORDS[kind]}
              checked={!left.includes(kind)}
              onChange={(on) => setLeft(on ? left.filter((one) => one !== kind) : [...left, kind])}
            />
          ))}
        </details>
      )}
      {recorded && (
        <Notice kind="warning">
          {words.recordedHere(title, count(recorded.count, 'move'), dayWords(recorded.last))}
        </Notice>
      )}
      <InputField label={words.typeName(title)} value={typed} onChange={setTyped} />
      <Button kind="main" disabled={work.busy || typed.trim() !== title.trim() || isNothing} onPress={clear}>
        {work.busy ? 'Clearing…' : 'Clear in this copy'}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
      <p class="hint">{words.ORIGINAL_KEEPS}</p>
    </>
  );
}

function Box(props: { text: string; checked: boolean; onChange: (checked: boolean) => void }) {
  return (
    <label class="choice">
      <input
        type="checkbox"
        checked={props.checked}
        onChange={({ currentTarget }) => props.onChange(currentTarget.checked)}
      />
      {props.text}
    </label>
  );
}

function blankWords({ tables, tableTabs, lookups, listTabs }: BlankCopy, withLists: boolean): string {
  const rows = withLists && listTabs.length > 0 ? `; the rows of the lists on ${tabNames(listTabs)}` : '';
  const into = lookups.length > 0 ? `; ${count(lookups.length, 'look-up')} into our training log` : '';
  return `${count(tables.length, 'table')} of ours, on ${tabNames(tableTabs)}${into}${rows}`;
}

function privateRequest(chosen: readonly PrivateFound[], { contents, book }: SharedFile) {
  const names = new Set(chosen.map(({ block }) => block));
  return {
    areas: chosen.map(({ area }) => area),
    blocks: contents
      .filter(({ info }) => names.has(info.name))
      .map((block) => ({ name: block.info.name, expects: areaFingerprint(book, wholeOf(block)) })),
    rows: [],
    tables: [],
  };
}
