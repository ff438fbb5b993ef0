import { dayFromIso } from '../../../../shared/core/calendar/day';
import { SEASON_LABELS, type StaysForm } from '../../../../shared/tasks/budget/budget-task';
import type { UnitSystem } from '../../../../shared/units/units';
import { ListNotes, seasonNotesOf } from '../../lists/list-notes';
import { OneList } from '../../lists/one-list';
import { SampleFarmOffer } from '../../lists/sample-farm-offer';
import { answeredLists } from '../../lists/use-lists';
import { count } from '../../parts/day-words';
import { Notice } from '../../parts/notice';
import { ChoiceField, TextField } from '../../parts/task-fields';
import type { Book } from '../../parts/use-book';
import type { TaskState } from '../../parts/use-task';
import { PUT_RIGHT } from '../../parts/words';
import * as words from './words';

interface Props {
  readonly stays: StaysForm;
  readonly state: TaskState;
  readonly book: Book;
  readonly units: UnitSystem;
  readonly onReread: () => void;
}

/** Where the stays come from. */
export function StaysSection({ stays, state, book, units, onReread }: Props) {
  return (
    <>
      {stays.from && <ChoiceField choice={stays.from} state={state} />}
      {stays.walk && <Walk {...stays.walk} state={state} book={book} units={units} onReread={onReread} />}
      {stays.problems.length > 0 ? (
        <Notice kind="problem">
          {PUT_RIGHT}
          <ul>
            {stays.problems.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Notice>
      ) : (
        <p>{count(stays.stays.length, 'stay')}.</p>
      )}
    </>
  );
}

type WalkProps = Omit<Props, 'stays'> & NonNullable<StaysForm['walk']>;

function Walk({ lists, typed, season, state, book, units, onReread }: WalkProps) {
  const answered = answeredLists(lists, state);
  const today = dayFromIso(book.overview.today) ?? 0;
  return (
    <>
      <OneList kind="paddocks" lists={answered} units={units} />
      <OneList kind="groups" lists={answered} units={units} />
      {!lists.chosen.paddocks && !lists.chosen.groups && <SampleFarmOffer onAdded={onReread} />}
      <TextField type="date" label={SEASON_LABELS.start} value={typed.start} state={state} />
      <TextField type="date" label={SEASON_LABELS.end} value={typed.end} state={state} />
      <TextField label={SEASON_LABELS.daysOn} hint={words.PLAN_FIRST} value={typed.daysOn} state={state} />
      {/* A plain walk does not look at open dates. */}
      <ListNotes
        notes={seasonNotesOf({ ...lists, paddocks: [] }, season && { ...season, today, system: units })}
      />
    </>
  );
}
