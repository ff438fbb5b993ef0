import { firstFew } from '../../../shared/block/first-few';
import type { WriteDone } from '../../../shared/contract';
import type { Kept } from '../../../shared/tasks/merge-block';
import { Notice } from './notice';

/** What was written, and what of the grower's may now mean another row. */
export type Written = WriteDone & {
  /** The first filled cell beside the table. */
  readonly beside?: string | undefined;
  /** Cells elsewhere that point at rows which have moved. */
  readonly astray?: readonly string[];
  /** What of the grower's stayed in the table, or moved below it. */
  readonly kept?: Kept;
};

export function WrittenNotices({ block, a1, note, beside, astray = [], kept }: Written) {
  return (
    <>
      <Notice kind="done">
        Written on “{block.tab}”, {a1}. {note}
      </Notice>
      {beside && (
        <Notice kind="warning">
          Something of yours stands beside the table, from {beside} on. It is not part of the table and did
          not move with its rows: see whether it still stands in the right ones.
        </Notice>
      )}
      {astray.length > 0 && (
        <Notice kind="warning">
          Rows of the table have moved. These cells of yours point into it and may now mean another row:{' '}
          {firstFew(astray)}. Look at them.
        </Notice>
      )}
      {kept && kept.inPlace.length > 0 && (
        <Notice kind="note">What you typed over cells of the table stays: {firstFew(kept.inPlace)}.</Notice>
      )}
      {kept && kept.below.length > 0 && (
        <Notice kind="note">Kept below the table, where it has no place: {firstFew(kept.below)}.</Notice>
      )}
    </>
  );
}
