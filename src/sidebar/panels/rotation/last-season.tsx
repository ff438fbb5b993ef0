import type { PlanProblem } from '../../../../shared/plan/model';
import { liveMoves } from '../../../../shared/table/frozen-rotation';
import type { OldTable } from '../../../../shared/tasks/rotation/old-table';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import { useWork } from '../../parts/use-work';
import { freezeTable } from './freeze-table';

/** What becomes of the table that stands when the rules are those of a new season. */
export function LastSeason({ old }: { old: OldTable }) {
  return (
    <Notice kind="note">
      This is a new season. The table on “{old.info.tab}” stays as the record of the season before, with its
      figures as they are now; the new one gets a tab of its own and is from then on the one that is built
      anew. The days on which its moves really happened count as last use of the paddocks.
    </Notice>
  );
}

interface Props {
  readonly old: OldTable;
  readonly lists: Pick<PlanProblem, 'paddocks' | 'groups'>;
  readonly onDone: () => void;
}

/** The record of a season must not change with the lists of the next one. */
export function KeepFigures({ old, lists, onDone }: Props) {
  const work = useWork();
  const live = liveMoves(old.rotation);
  if (live === 0) return null;
  const keep = (): void =>
    work.start(async () => {
      const isKept = await freezeTable(old, lists);
      if (!isKept)
        throw new Error(`Some moves of the table on “${old.info.tab}” have no day. Give them one first.`);
      onDone();
    });
  return (
    <>
      <Notice kind="warning">
        {live} moves of the table on “{old.info.tab}” still show head, weight and feed as your lists are now.
        Keep its figures before you change the lists for another season. Where the lists are changed already,
        set them back first (File, Version history).
      </Notice>
      <Button disabled={work.busy} onPress={keep}>
        {work.busy ? 'Writing…' : 'Keep the figures of this season'}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </>
  );
}
