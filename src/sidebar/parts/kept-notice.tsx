import { firstFew } from '../../../shared/block/first-few';
import type { Kept } from '../../../shared/tasks/merge/merge-block';
import { Button } from './button';
import { Notice } from './notice';
import * as words from './words';

interface Props {
  readonly kept: Kept;
  readonly busy: boolean;
  /** Writes anew with ours in the cells that were typed over. */
  readonly onPutBack: () => void;
}

/** What of the grower's stays where it is, or moves below the table, when it is written anew. */
export function KeptNotice({ kept, busy, onPutBack }: Props) {
  return (
    <>
      {kept.inPlace.length > 0 && (
        <>
          <Notice kind="note">{words.staysTyped(firstFew(kept.inPlace))}</Notice>
          <Button disabled={busy} onPress={onPutBack}>
            Put ours back
          </Button>
        </>
      )}
      {kept.below.length > 0 && <Notice kind="note">{words.movesBelow(firstFew(kept.below))}</Notice>}
    </>
  );
}
