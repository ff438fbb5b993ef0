import { firstFew } from '../../../shared/block/first-few';
import type { Written } from '../../../shared/tasks/run-task';
import { Notice } from './notice';

/** `next`: the next useful task, as a sentence. */
export function WrittenNotices({
  block,
  a1,
  note,
  kept,
  astray = [],
  next,
}: Written & { next?: string | undefined }) {
  return (
    <>
      <Notice kind="done" takeFocus>
        Written on “{block.tab}”, {a1}. {note}
      </Notice>
      <AstrayNotice astray={astray} isDone />
      {next && <p class="hint">Next, under “All tasks”: {next}</p>}
      {kept && kept.inPlace.length > 0 && (
        <Notice kind="note">What you typed over cells of the table stays: {firstFew(kept.inPlace)}.</Notice>
      )}
      {kept?.gaveWay && kept.gaveWay.length > 0 && (
        <Notice kind="note">
          Ours stands again in place of what you had typed: {firstFew(kept.gaveWay)}.
        </Notice>
      )}
      {kept && kept.below.length > 0 && (
        <Notice kind="note">Kept below the table, where it has no place: {firstFew(kept.below)}.</Notice>
      )}
    </>
  );
}

export function BesideNotice({ beside }: { beside: string | undefined }) {
  if (beside === undefined) return null;
  return (
    <Notice kind="warning">
      Something of yours stands beside the table, from {beside} on. It is not part of the table and does not
      move with its rows: see whether it still stands in the right ones.
    </Notice>
  );
}

/** `isDone`: the table is written. */
export function AstrayNotice({ astray, isDone }: { astray: readonly string[]; isDone?: boolean }) {
  if (astray.length === 0) return null;
  return (
    <Notice kind="warning">
      {isDone ? 'Rows of the table have moved.' : 'Rows of the table will move.'} These cells of yours point
      into it and {isDone ? 'may now' : 'will then'} mean another row: {firstFew(astray)}. Look at them, or
      let them look a row up by what stands in it.
    </Notice>
  );
}
