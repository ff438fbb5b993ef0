import { firstFew } from '../../../shared/block/first-few';
import type { Written } from '../../../shared/tasks/run-task';
import { Notice } from './notice';

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
