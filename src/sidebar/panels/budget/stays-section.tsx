import type { UnitSystem } from '../../../../shared/units/units';
import { ListNotes } from '../../lists/list-notes';
import { OneList } from '../../lists/one-list';
import { SampleFarmOffer } from '../../lists/sample-farm-offer';
import { Choices } from '../../parts/choices';
import { count } from '../../parts/day-words';
import { InputField } from '../../parts/field';
import { Notice } from '../../parts/notice';
import type { StaysFrom, StaysState } from './use-stays';

interface Props {
  readonly state: StaysState;
  readonly units: UnitSystem;
  readonly onReread: () => void;
}

/** Where the stays come from. */
export function StaysSection({ state, units, onReread }: Props) {
  const { lists, season } = state;
  return (
    <>
      {state.rotationTab !== undefined && (
        <Choices
          legend="Which stays?"
          value={state.from}
          options={[
            { value: 'rotation', text: `The moves planned on “${state.rotationTab}”` },
            { value: 'lists', text: 'My lists, paddock after paddock' },
          ]}
          onChange={(from) => state.setFrom(from as StaysFrom)}
        />
      )}
      {state.from === 'lists' && (
        <>
          <OneList kind="paddocks" lists={lists} units={units} />
          <OneList kind="groups" lists={lists} units={units} />
          {!lists.chosen.paddocks && !lists.chosen.groups && <SampleFarmOffer onAdded={onReread} />}
          <InputField
            type="date"
            label="First day"
            value={season.start}
            onChange={(start) => state.setSeason({ ...season, start })}
          />
          <InputField
            type="date"
            label="Last day (pigs leave)"
            value={season.end}
            onChange={(end) => state.setSeason({ ...season, end })}
          />
          <InputField
            label="Days in a paddock"
            hint="Plan the moves first for better figures: they know rests, open dates and the ground."
            value={season.daysOn}
            onChange={(daysOn) => state.setSeason({ ...season, daysOn })}
          />
        </>
      )}
      <ListNotes notes={state.notes} />
      {state.problems.length > 0 ? (
        <Notice kind="problem">
          To put right first:
          <ul>
            {state.problems.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Notice>
      ) : (
        <p>{count(state.stays.length, 'stay')}.</p>
      )}
    </>
  );
}
