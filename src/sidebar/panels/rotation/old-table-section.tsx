import { type Day, isoFromDay } from '../../../../shared/core/calendar/day';
import type { StandingRotation } from '../../../../shared/tasks/rotation/rotation-standing';
import { COUNT_LABEL } from '../../../../shared/tasks/rotation/rotation-task';
import type { Season } from '../../../../shared/tasks/rotation/season';
import { Notice } from '../../parts/notice';

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
      <p>
        A rotation table stands on “{old.block.info.tab}” with {rows.length} moves, {typed} of them with a day
        typed under “Moved in”. Only what comes after the last real move of each group is planned anew.
      </p>
      {end !== undefined && end <= today && (
        <Notice kind="note">
          The season of this table ended on {isoFromDay(end)}. For a new season type its first and last day
          above: it gets a table of its own, and this one stays as it is.
        </Notice>
      )}
      <label class="choice">
        <input type="checkbox" checked={counted} onChange={(event) => onCount(event.currentTarget.checked)} />
        {COUNT_LABEL}
      </label>
      {problems.length > 0 && (
        <Notice kind="problem">
          The table cannot be written anew before this is put right in the sheet:
          <ul>
            {problems.map(({ sentence }) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Notice>
      )}
      {'rebuild' in season && season.rebuild && season.rebuild.notes.length > 0 && (
        <Notice kind="warning">
          <ul>
            {season.rebuild.notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </Notice>
      )}
    </>
  );
}
