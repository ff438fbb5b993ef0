/** Where a task's block goes and the button that writes it: a first time, or over the one that stands. */
import { useState } from 'preact/hooks';
import { areaA1 } from '../../../shared/block/a1';
import { pointingCells } from '../../../shared/block/pointing-cells';
import type { BlockContent } from '../../../shared/block/read-block';
import type { Overview, WriteBlock as Request, WriteDone } from '../../../shared/contract';
import { blockFingerprint } from '../../../shared/table/block-fingerprint';
import { astrayCells } from '../../../shared/tasks/astray-cells';
import { blockOver } from '../../../shared/tasks/block-over';
import type { ComposedBlock } from '../../../shared/tasks/composed-block';
import { replacedCells } from '../../../shared/tasks/replaced-cells';
import { usePage } from '../page';
import { ask } from '../server';
import { Button } from './button';
import { findBlock } from './find-block';
import { Notice } from './notice';
import { PlaceChoice, usePlace } from './place-choice';
import { type Book, readBook } from './use-book';
import { useWork } from './use-work';
import { type Written, WrittenNotices } from './written-notices';

/**
 * Composes the block for that corner; `old` is what stands there now, to keep what was typed, `now` the file as it is
 * when the button is pressed. Throws where lists or tables that the block rests on say something else by now.
 */
export type Compose = (
  corner: { readonly row: number; readonly column: number },
  old: BlockContent | undefined,
  now: Book,
) => ComposedBlock;

interface Props {
  /** Named range, such as SOUNDER_MAP. */
  readonly name: string;
  /** "the map": for the button and the messages. */
  readonly what: string;
  readonly tabName: string;
  readonly file: Overview;
  readonly compose: Compose;
  /** The block as the page read it, where one stands: what is written rests on that. */
  readonly asRead: BlockContent | undefined;
  /** Rows right below the block that were read as part of it: it takes them in. */
  readonly adoptRows?: number | undefined;
  /** Why nothing can be written yet. */
  readonly notYet?: string | undefined;
  readonly freezeRows?: number;
  /** What of the standing block a rebuild must not lose, where that is less than everything typed. */
  readonly mustKeep?: (old: BlockContent) => BlockContent;
  /** What the same builder makes by other choices, so that formulas of theirs are known as ours. */
  readonly variants?: (corner: BlockContent['info'], old: BlockContent) => readonly ComposedBlock[];
  /** Why the block that stands is left as a record and the new one gets a place of its own. */
  readonly record?: string | undefined;
  readonly onDone: (done: WriteDone) => void;
}

export function WriteBlock(props: Props) {
  const { name, what, file, notYet, adoptRows = 0 } = props;
  const place = usePlace(
    props.tabName,
    file.tabs.map((tab) => tab.name),
  );
  const [done, setDone] = useState<Written>();
  const work = useWork();
  const { say } = usePage();
  const { record } = props;
  const standing = record ? undefined : file.blocks.find((block) => block.name === name);
  const problem = standing ? undefined : place.problem;
  const write = (): void =>
    work.start(async () => {
      setDone(undefined);
      say(`Writing ${what}…`);
      const written = standing
        ? await rebuild(props)
        : await writeFirst(props, place.at === 'new-tab' ? place.tab.trim() : undefined);
      setDone(written);
      say(`Done: ${what} on ${written.block.tab}, ${written.a1}.`);
      props.onDone(written);
    });
  return (
    <>
      {record && <Notice kind="note">{record}</Notice>}
      {standing ? (
        <p>
          A table of this kind stands on “{standing.tab}”, {areaA1(standing)}. It is written anew there; what
          you typed in it is kept, or you are told.
          {adoptRows > 0 && ` ${rowsTaken(adoptRows)}`}
        </p>
      ) : (
        <PlaceChoice legend={`Where to put ${what}`} place={place} />
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
      {done && <WrittenNotices {...done} />}
    </>
  );
}

function rowsTaken(rows: number): string {
  return rows === 1
    ? 'The filled row right below it becomes part of it.'
    : `The ${rows} filled rows right below it become part of it.`;
}

async function writeFirst(props: Props, tab: string | undefined): Promise<Written> {
  const now = await readBook();
  if (tab !== undefined)
    return send(props, { at: 'new-tab', tab }, props.compose({ row: 1, column: 1 }, undefined, now));
  const selected = await ask('readSelection', {});
  const corner = { row: selected.row, column: selected.column };
  return send(props, { at: 'area', tab: selected.tab, ...corner }, props.compose(corner, undefined, now));
}

async function rebuild(props: Props): Promise<Written> {
  const { adoptRows } = props;
  const now = await readBook();
  const standing = findBlock(now, props.name, adoptRows);
  if (!standing) throw new Error('The table is gone from the file. Read the file again.');
  const { block: old, beside } = standing;
  const variants = props.variants?.(old.info, old);
  const block = blockOver(old, props.compose(old.info, old, now), {
    mustKeep: props.mustKeep,
    variants,
    asRead: props.asRead,
  });
  const place = { at: 'own', ...(adoptRows ? { adoptRows } : {}) } as const;
  const done = await send(props, place, block, blockFingerprint(old.values, old.formulas));
  const pointing = pointingCells(now.tabs, old.info, now.overview.blocks);
  return {
    ...done,
    beside,
    astray: astrayCells(pointing, old, block.cells),
    replaced: replacedCells(old, block.cells),
  };
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
    ...(props.record && { replaces: true }),
    ...(expects !== undefined && { expects }),
  });
}
