import { useState } from 'preact/hooks';
import { usePage } from '../../page';
import { Button } from '../../parts/button';
import { Choices } from '../../parts/choices';
import { InputField } from '../../parts/field';
import { Notice } from '../../parts/notice';
import type { Work } from '../../parts/use-work';
import type { Place } from './write-table';

interface Props {
  /** Tabs that there are already. */
  readonly tabs: readonly string[];
  readonly work: Work;
  readonly onWrite: (place: Place) => void;
}

const PLACES = [
  { value: 'new-tab', text: 'On a new tab' },
  { value: 'area', text: 'In the empty area at the selected cell' },
];

/** Where a first table goes, and the button that writes it. */
export function WriteSection({ tabs, work, onWrite }: Props) {
  const [at, setAt] = useState('new-tab');
  const [typed, setTyped] = useState<string>();
  const { say } = usePage();
  const tab = typed ?? freeName(tabs);
  const taken = tabs.some((name) => name.toLowerCase() === tab.trim().toLowerCase());
  const problem =
    at !== 'new-tab'
      ? undefined
      : tab.trim() === ''
        ? 'The new tab needs a name.'
        : taken
          ? 'There is already a tab of this name. Choose another.'
          : undefined;
  return (
    <>
      <Choices legend="Where" value={at} options={PLACES} onChange={setAt} />
      {at === 'new-tab' ? (
        <InputField label="Name of the new tab" value={tab} problem={problem} onChange={setTyped} />
      ) : (
        <p class="hint">
          Select the cell for the upper left corner in the sheet first. Nothing that stands there is written
          over: if the area is not empty, you are told.
        </p>
      )}
      <Button
        kind="main"
        disabled={work.busy || problem !== undefined}
        onPress={() => {
          say('Writing the table…');
          onWrite(at === 'new-tab' ? { at: 'new-tab', tab: tab.trim() } : { at: 'selection' });
        }}
      >
        {work.busy ? 'Writing…' : 'Write the table'}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </>
  );
}

const TAB_NAME = 'Rotation';

function freeName(tabs: readonly string[]): string {
  const taken = new Set(tabs.map((name) => name.toLowerCase()));
  for (let i = 1; ; i++) {
    const name = i === 1 ? TAB_NAME : `${TAB_NAME} ${i}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
}
