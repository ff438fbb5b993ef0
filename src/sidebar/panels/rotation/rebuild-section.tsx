import { areaA1 } from '../../../../shared/block/a1';
import { firstFew } from '../../../../shared/block/first-few';
import type { Kept } from '../../../../shared/tasks/merge-block';
import type { OldTable } from '../../../../shared/tasks/rotation/old-table';
import { Button } from '../../parts/button';
import { KeptNotice } from '../../parts/kept-notice';
import { Notice } from '../../parts/notice';

interface Props {
  readonly old: OldTable;
  /** What other units do to the table, in sentences. */
  readonly units: readonly string[];
  /** What the new table changes, in sentences. */
  readonly changes: readonly string[];
  /** What was typed and stays, or has no place any more. */
  readonly kept: Kept;
  /** Cells elsewhere that will point at another move. */
  readonly astray: readonly string[];
  readonly busy: boolean;
  /** `putBack`: with ours in the cells that were typed over. */
  readonly onWrite: (putBack: boolean) => void;
}

/** A table stands already: what building it anew changes, and the button that does it. */
export function RebuildSection({ old, units, changes, kept, astray, busy, onWrite }: Props) {
  return (
    <>
      <p>
        The table on “{old.info.tab}”, {areaA1(old.info)}, is built anew in its place. Moves that really
        happened stay, and what you typed stays with its move: days under Moved in, cover, notes, your own
        columns, and what you typed over cells of the table.
      </p>
      {old.adopted > 0 && (
        <p>Your own columns right beside the table become part of it, so that they move with its rows.</p>
      )}
      {old.apart && (
        <Notice kind="warning">
          Further right something stands in the rows of the table, from {old.apart} on. It is not part of the
          table and stays in its rows; the moves beside it may shift.
        </Notice>
      )}
      <h3>What changes</h3>
      <ul>
        {changes.map((change) => (
          <li key={change}>{change}</li>
        ))}
      </ul>
      <KeptNotice kept={kept} busy={busy} onPutBack={() => onWrite(true)} />
      {units.length > 0 && <Notice kind="warning">{units.join(' ')}</Notice>}
      {astray.length > 0 && (
        <Notice kind="warning">
          Moves or settings will stand in other rows. These cells of yours point at rows of the table and will
          then mean others: {firstFew(astray)}. Look them over, or let them look a move up by its group and
          day.
        </Notice>
      )}
      <Button kind="main" disabled={busy} onPress={() => onWrite(false)}>
        {busy ? 'Writing…' : 'Build the table anew'}
      </Button>
    </>
  );
}
