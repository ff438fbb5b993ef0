import { firstFew } from '../../../shared/block/first-few';
import type { WriteDone } from '../../../shared/contract';
import { Notice } from './notice';

/** What was written, and what of the grower's may now mean another row. */
export type Written = WriteDone & {
  /** The first filled cell beside the table. */
  readonly beside?: string | undefined;
  /** Cells elsewhere that point at rows which have moved. */
  readonly astray?: readonly string[];
  /** Cells of the table before, in whose place something else stands. */
  readonly replaced?: readonly string[];
};

export function WrittenNotices({ block, a1, note, beside, astray = [], replaced = [] }: Written) {
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
      {replaced.length > 0 && (
        <Notice kind="warning">
          The table was made anew from your lists and choices, and these values in it gave way:{' '}
          {firstFew(replaced)}. If you typed one of them by hand, type it in the list or the field that it
          comes from.
        </Notice>
      )}
    </>
  );
}
