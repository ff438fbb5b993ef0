import type { LayoutForm } from '../../../../shared/tasks/materials/materials-task';
import type { UnitSystem } from '../../../../shared/units/units';
import { OneList } from '../../lists/one-list';
import { SampleFarmOffer } from '../../lists/sample-farm-offer';
import { answeredLists } from '../../lists/use-lists';
import { count } from '../../parts/day-words';
import { Notice } from '../../parts/notice';
import { ChoiceField, SettingsFields } from '../../parts/task-fields';
import type { TaskState } from '../../parts/use-task';
import { PUT_RIGHT } from '../../parts/words';
import * as words from './words';

interface Props {
  readonly layout: LayoutForm;
  readonly state: TaskState;
  readonly units: UnitSystem;
  readonly onReread: () => void;
}

/** What is to be fenced. */
export function LayoutSection({ layout, state, units, onReread }: Props) {
  const { kind, list, grid, field } = layout;
  return (
    <>
      <ChoiceField choice={kind} state={state} />
      {list && <ListPart {...list} state={state} units={units} onReread={onReread} />}
      {grid && <SettingsFields form={grid} state={state} />}
      {field && (
        <>
          <SettingsFields form={field.settings} state={state} />
          <ChoiceField choice={field.cut} state={state} />
        </>
      )}
    </>
  );
}

type ListProps = Omit<Props, 'layout'> & NonNullable<LayoutForm['list']>;

function ListPart({ lists, laidOut, touching, state, units, onReread }: ListProps) {
  const guessed = laidOut?.guessed.length ?? 0;
  const named = lists.paddocks.some(({ adjoins }) => adjoins !== undefined);
  return (
    <>
      <OneList kind="paddocks" lists={answeredLists(lists, state)} units={units} />
      {!lists.chosen.paddocks && <SampleFarmOffer onAdded={onReread} />}
      {(laidOut?.problems.length ?? 0) > 0 && (
        <Notice kind="problem">
          {PUT_RIGHT}
          <ul>
            {laidOut?.problems.map(({ sentence }) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Notice>
      )}
      {guessed > 0 && <p class="hint">{words.rectanglesAssumed(count(guessed, 'paddock'))}</p>}
      <ChoiceField choice={touching} state={state} />
      <p class="hint">
        {named ? words.TOUCHING_NAMED : words.TOUCHING_NEXT} {words.SHORTER_SIDE}
      </p>
    </>
  );
}
