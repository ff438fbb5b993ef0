import { Notice } from '../../parts/notice';
import type { OldTable } from './old-table';

/** What becomes of the table that stands when the rules are those of a new season. */
export function LastSeason({ old }: { old: OldTable }) {
  return (
    <Notice kind="note">
      This is a new season. The table on “{old.info.tab}” stays as it is, as the record of the season before;
      the new one gets a tab of its own and is from then on the one that is built anew. The days on which its
      moves really happened count as last use of the paddocks.
    </Notice>
  );
}
