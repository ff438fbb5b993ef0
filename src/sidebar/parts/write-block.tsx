/** Where a task's block goes and the button that writes it: a first time, or over the one that stands. */
import { useState } from 'preact/hooks';
import { areaA1 } from '../../../shared/block/a1';
import type { BlockContent } from '../../../shared/block/read-block';
import type { Overview, WriteBlock as Request, WriteDone } from '../../../shared/contract';
import { blockFingerprint } from '../../../shared/table/block-fingerprint';
import type { ComposedBlock } from '../../../shared/tasks/composed-block';
import { lostCells } from '../../../shared/tasks/lost-cells';
import { usePage } from '../page';
import { ask } from '../server';
import { Button } from './button';
import { Choices } from './choices';
import { InputField } from './field';
import { Notice } from './notice';
import { findBlock } from './use-file';
import { useWork } from './use-work';

/** Composes the block for that corner; `old` is what stands there now, to keep what was typed. */
export type Compose = (
  corner: { readonly row: number; readonly column: number },
  old: BlockContent | undefined,
) => ComposedBlock;

interface Props {
  /** Named range, such as SOUNDER_MAP. */
  readonly name: string;
  /** "the map": for the button and the messages. */
  readonly what: string;
  readonly tabName: string;
  readonly file: Overview;
  readonly compose: Compose;
  /** Why nothing can be written yet. */
  readonly notYet?: string | undefined;
  readonly freezeRows?: number;
  /** What of the standing block a rebuild must not lose, where that is less than everything typed. */
  readonly mustKeep?: (old: BlockContent) => BlockContent;
  readonly onDone: (done: WriteDone) => void;
}

const PLACES = [
  { value: 'new-tab', text: 'On a new tab' },
  { value: 'area', text: 'In the empty area at the selected cell' },
];

export function WriteBlock(props: Props) {
  const { name, what, file, notYet } = props;
  const [at, setAt] = useState('new-tab');
  const [typed, setTyped] = useState<string>();
  const [done, setDone] = useState<WriteDone>();
  const work = useWork();
  const { say } = usePage();
  const standing = file.blocks.find((block) => block.name === name);
  const tab = typed ?? freeName(props.tabName, file);
  const problem = standing || at !== 'new-tab' ? undefined : tabProblem(tab, file);
  const write = (): void =>
    work.start(async () => {
      setDone(undefined);
      say(`Writing ${what}…`);
      const written = standing
        ? await rebuild(props)
        : await writeFirst(props, at === 'new-tab' ? tab.trim() : undefined);
      setDone(written);
      say(`Done: ${what} on ${written.block.tab}, ${written.a1}.`);
      props.onDone(written);
    });
  return (
    <>
      {standing ? (
        <p>
          A table of this kind stands on “{standing.tab}”, {areaA1(standing)}. It is written anew there; what
          you typed in it is kept.
        </p>
      ) : (
        <>
          <Choices legend={`Where to put ${what}`} value={at} options={PLACES} onChange={setAt} />
          {at === 'new-tab' ? (
            <InputField label="Name of the new tab" value={tab} problem={problem} onChange={setTyped} />
          ) : (
            <p class="hint">
              Select the cell for the upper left corner in the sheet first. Nothing that stands there is
              written over: if the area is not empty, you are told.
            </p>
          )}
        </>
      )}
      {notYet && <p class="hint">{notYet}</p>}
      <Button
        kind="main"
        disabled={work.busy || problem !== undefined || notYet !== undefined}
        onPress={write}
      >
        {work.busy ? 'Writing…' : standing ? `Write ${what} anew` : `Write ${what}`}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
      {done && (
        <Notice kind="done">
          Written on “{done.block.tab}”, {done.a1}.
        </Notice>
      )}
    </>
  );
}

async function writeFirst(props: Props, tab: string | undefined): Promise<WriteDone> {
  if (tab !== undefined)
    return send(props, { at: 'new-tab', tab }, props.compose({ row: 1, column: 1 }, undefined));
  const selected = await ask('readSelection', {});
  const corner = { row: selected.row, column: selected.column };
  return send(props, { at: 'area', tab: selected.tab, ...corner }, props.compose(corner, undefined));
}

async function rebuild(props: Props): Promise<WriteDone> {
  const old = await findBlock(props.name);
  if (!old) throw new Error('The table is gone from the file. Read the file again.');
  const block = props.compose(old.info, old);
  const lost = lostCells(props.mustKeep?.(old) ?? old, block.cells);
  if (lost.length > 0) {
    throw new Error(
      `These cells of the table were typed by hand and would be lost: ${lost.slice(0, 8).join(', ')}${lost.length > 8 ? ` and ${lost.length - 8} more` : ''}. Move them outside the table first. Nothing was written.`,
    );
  }
  return send(props, { at: 'own' }, block, blockFingerprint(old.values, old.formulas));
}

function send(
  props: Props,
  place: Request['place'],
  block: ComposedBlock,
  expects?: string,
): Promise<WriteDone> {
  return ask('writeBlock', {
    name: props.name,
    place,
    ...block,
    freezeRows: props.freezeRows ?? 0,
    ...(expects !== undefined && { expects }),
  });
}

function tabProblem(tab: string, file: Overview): string | undefined {
  if (tab.trim() === '') return 'The new tab needs a name.';
  const taken = file.tabs.some(({ name }) => name.toLowerCase() === tab.trim().toLowerCase());
  return taken ? 'There is already a tab of this name. Choose another.' : undefined;
}

function freeName(wanted: string, file: Overview): string {
  const taken = new Set(file.tabs.map(({ name }) => name.toLowerCase()));
  for (let i = 1; ; i++) {
    const name = i === 1 ? wanted : `${wanted} ${i}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
}
