import { UNITS_LEGEND, UNITS_OPTIONS } from '../../../shared/tasks/ask';
import type { UnitSystem } from '../../../shared/units/units';
import { Choices } from './choices';

const OPTIONS = Object.entries(UNITS_OPTIONS).map(([value, text]) => ({ value, text }));

/** The grower's units. */
export function UnitsChoice(props: { units: UnitSystem; onChange: (units: UnitSystem) => void }) {
  return (
    <Choices
      legend={UNITS_LEGEND}
      value={props.units}
      options={OPTIONS}
      onChange={(value) => props.onChange(value === 'metric' ? 'metric' : 'US')}
    />
  );
}
