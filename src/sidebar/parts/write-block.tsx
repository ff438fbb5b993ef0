/** Where a task's block goes and the button that writes it: a first time, or over the one that stands. */
import { useState } from 'preact/hooks';
import { areaA1 } from '../../../shared/block/a1';
import { firstFew } from '../../../shared/block/first-few';
import { pointingCells } from '../../../shared/block/pointing-cells';
import { type BlockContent, wholeOf } from '../../../shared/block/read-block';
import type { WriteBlock as Request, WriteDone } from '../../../shared/contract';
import { areaFingerprint } from '../../../shared/tasks/area-fingerprint';
import { astrayCells } from '../../../shared/tasks/astray-cells';
import type { ComposedBlock } from '../../../shared/tasks/composed-block';
import { findBlock } from '../../../shared/tasks/find-block';
import { type MergedBlock, mergeBlock } from '../../../shared/tasks/merge-block';
import { rebuildBlock } from '../../../shared/tasks/rebuild-block';
import { usePage } from '../page';
import { ask } from '../server';
import { Button } from './button';
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
  /** The new tab goes in front of that one. A block that says so has a tab of its own, and no other place. */
  readonly before?: string | undefined;
  readonly book: Book;
  readonly compose: Compose;
  /** Rows right below the block that were read as part of it: it takes them in. */
  readonly adoptRows?: number | undefined;
  /** Why nothing can be written yet. */
  readonly notYet?: string | undefined;
  readonly freezeRows?: number;
  /** Why the block that stands is left as a record and the new one gets a place of its own. */
  readonly record?: string | undefined;
  readonly onDone: (done: WriteDone) => void;
}

export function WriteBlock(props: Props) {
  const { name, what, notYet, adoptRows = 0 } = props;
  const file = props.book.overview;
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
        <PlaceChoice legend={`Where to put ${what}`} place={place} onlyTab={'before' in props} />
      )}
      {notYet && <p class="hint">{notYet}</p>}
      {standing && !notYet && <KeptNotice {...keptNow(props)} />}
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

/** What of the grower's would stay where it is, or move below the table, if it were written now. */
function keptNow({ book, name, adoptRows, compose }: Props): MergedBlock['kept'] {
  const old = findBlock(book, name, adoptRows)?.block;
  try {
    return old
      ? rebuildBlock(name, old, (corner, reading) => compose(corner, reading, book)).kept
      : NOTHING_KEPT;
  } catch {
    // The button says what is wrong.
    return NOTHING_KEPT;
  }
}

const NOTHING_KEPT = { inPlace: [], below: [] };

function KeptNotice({ inPlace, below }: MergedBlock['kept']) {
  return (
    <>
      {inPlace.length > 0 && (
        <Notice kind="note">
          You typed over cells of the table; that stays: {firstFew(inPlace)}. Clear a cell and write anew to
          have ours back.
        </Notice>
      )}
      {below.length > 0 && (
        <Notice kind="note">
          These have no place in the new table and move below it: {firstFew(below)}.
        </Notice>
      )}
    </>
  );
}

async function writeFirst(props: Props, tab: string | undefined): Promise<Written> {
  const now = await readBook();
  if (tab !== undefined) {
    const { before } = props;
    const place = { at: 'new-tab', tab, ...(before !== undefined && { before }) } as const;
    return send(props, place, first(props, { row: 1, column: 1 }, now));
  }
  const selected = await ask('readSelection', {});
  const corner = { row: selected.row, column: selected.column };
  return send(props, { at: 'area', tab: selected.tab, ...corner }, first(props, corner, now));
}

function first({ name, compose }: Props, corner: Parameters<Compose>[0], now: Book): MergedBlock {
  return mergeBlock(name, compose(corner, undefined, now));
}

async function rebuild(props: Props): Promise<Written> {
  const { adoptRows, name } = props;
  const now = await readBook();
  const standing = findBlock(now, name, adoptRows);
  if (!standing) throw new Error('The table is gone from the file. Read the file again.');
  const { block: old, beside } = standing;
  const asRead = findBlock(props.book, name, adoptRows)?.block;
  const block = rebuildBlock(name, old, (corner, reading) => props.compose(corner, reading, now), asRead);
  const area = wholeOf(old);
  const memoryColumn = old.memory && old.info.column + old.info.columns;
  const place = { at: 'own', area, ...(memoryColumn && { memoryColumn }) } as const;
  const done = await send(props, place, block, areaFingerprint(now, area));
  const pointing = pointingCells(now.tabs, old.info, now.overview.blocks);
  return { ...done, beside, kept: block.kept, astray: astrayCells(pointing, old, block.cells) };
}

function send(
  props: Props,
  place: Request['place'],
  { cells, styles, rules, widths }: MergedBlock,
  expects?: string,
): Promise<WriteDone> {
  return ask('writeBlock', {
    name: props.name,
    place,
    cells,
    styles,
    rules,
    widths,
    freezeRows: props.freezeRows ?? 0,
    ...(props.record && { replaces: true }),
    ...(expects !== undefined && { expects }),
  });
}
