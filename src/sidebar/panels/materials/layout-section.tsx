import type { Cut } from '../../../../shared/tasks/materials/cut-field';
import type { Touching } from '../../../../shared/tasks/materials/layout';
import { GRID_SETTINGS } from '../../../../shared/tasks/materials/layout-rows';
import type { UnitSystem } from '../../../../shared/units/units';
import { OneList } from '../../lists/one-list';
import { SampleFarmOffer } from '../../lists/sample-farm-offer';
import { Choices } from '../../parts/choices';
import { count } from '../../parts/day-words';
import { Notice } from '../../parts/notice';
import { SettingsFields } from '../../parts/settings-fields';
import { FIELD_SETTINGS, type LayoutKind, type LayoutState } from './use-layout';

const KINDS = [
  { value: 'list', text: 'The paddocks of my list' },
  { value: 'grid', text: 'A block of equal paddocks, rows × columns' },
  { value: 'field', text: 'One field, cut into paddocks' },
];
const TOUCHING = [
  { value: 'lengths', text: 'Side by side along their lengths' },
  { value: 'widths', text: 'End to end along their widths' },
  { value: 'alone', text: 'Nowhere: each stands alone' },
];
const CUTS = [
  { value: 'strips', text: 'Strips as long as the field' },
  { value: 'least fence', text: 'Rows and columns with the least fence' },
];

interface Props {
  readonly state: LayoutState;
  readonly units: UnitSystem;
  readonly comma: boolean;
  readonly onReread: () => void;
}

/** What is to be fenced. */
export function LayoutSection({ state, units, comma, onReread }: Props) {
  return (
    <>
      <Choices
        legend="What do you fence?"
        value={state.kind}
        options={KINDS}
        onChange={(kind) => state.setKind(kind as LayoutKind)}
      />
      {state.kind === 'list' && <ListPart state={state} units={units} onReread={onReread} />}
      {state.kind === 'grid' && (
        <SettingsFields
          specs={GRID_SETTINGS}
          {...state.grid}
          units={units}
          comma={comma}
          onChange={state.grid.setTyped}
        />
      )}
      {state.kind === 'field' && (
        <>
          <SettingsFields
            specs={FIELD_SETTINGS}
            {...state.field}
            units={units}
            comma={comma}
            onChange={state.field.setTyped}
          />
          <Choices
            legend="How"
            value={state.cut}
            options={CUTS}
            onChange={(cut) => state.setCut(cut as Cut)}
          />
        </>
      )}
    </>
  );
}

function ListPart({
  state,
  units,
  onReread,
}: {
  state: LayoutState;
  units: UnitSystem;
  onReread: () => void;
}) {
  const { lists, laidOut } = state;
  const guessed = laidOut?.guessed.length ?? 0;
  const named = lists.paddocks.some(({ adjoins }) => adjoins !== undefined);
  return (
    <>
      <OneList kind="paddocks" lists={lists} units={units} />
      {!lists.chosen.paddocks && <SampleFarmOffer onAdded={onReread} />}
      {(laidOut?.problems.length ?? 0) > 0 && (
        <Notice kind="problem">
          To put right in the sheet first:
          <ul>
            {laidOut?.problems.map(({ sentence }) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Notice>
      )}
      {guessed > 0 && (
        <p class="hint">
          {count(guessed, 'paddock')} with an area but no sides: a rectangle is assumed, see “Length of a
          paddock for each width”.
        </p>
      )}
      <Choices
        legend="Where paddocks touch"
        value={state.touching}
        options={TOUCHING}
        onChange={(touching) => state.setTouching(touching as Touching)}
      />
      <p class="hint">
        {named
          ? 'Which ones touch is taken from your column of adjoining paddocks.'
          : 'Each paddock is taken to touch the next one in the list.'}{' '}
        The shorter of the two sides counts as shared.
      </p>
    </>
  );
}
