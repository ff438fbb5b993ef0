import { type Day, isoFromDay } from '../../../../shared/core/calendar/day';
import type { StandingRotation } from '../../../../shared/tasks/rotation/rotation-standing';
import type { Season } from '../../../../shared/tasks/rotation/season';
import { COUNT_LABEL } from '../../../../shared/tasks/rotation/words';
import { Notice, SentencesNotice } from '../../parts/notice';
import * as words from './words';

interface Props {
  readonly old: StandingRotation;
  readonly season: Season;
  readonly today: Day;
  readonly counted: boolean;
  readonly onCount: (counted: boolean) => void;
}

/** What is taken over from the table that stands in the file, and what is wrong in it. */
export function OldTableSection({ old, season, today, counted, onCount }: Props) {
  const { problems, rows, settings } = old.rotation;
  const end = settings?.rules.seasonEnd;
  const typed = rows.filter(({ movedIn }) => movedIn !== undefined).length;
  return (
    <>
      <p>{words.tableStands(old.block.info.tab, rows.length, typed)}</p>
      {end !== undefined && end <= today && <Notice kind="note">{words.seasonEnded(isoFromDay(end))}</Notice>}
      <label class="choice">
        <input type="checkbox" checked={counted} onChange={(event) => onCount(event.currentTarget.checked)} />
        {COUNT_LABEL}
      </label>
      <SentencesNotice
        kind="problem"
        lead={words.PUT_RIGHT}
        sentences={problems.map(({ sentence }) => sentence)}
      />
      {'rebuild' in season && <SentencesNotice kind="warning" sentences={season.rebuild?.notes ?? []} />}
    </>
  );
}
