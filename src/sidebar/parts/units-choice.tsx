import type { UnitSystem } from '../../../shared/units/units';
import { Choices } from './choices';

const OPTIONS = [
  { value: 'US', text: 'US (ft, ac, lb, gal, °F)' },
  { value: 'metric', text: 'Metric (m, ha, kg, L, °C)' },
];

/** The grower's units. */
export function UnitsChoice(props: { units: UnitSystem; onChange: (units: UnitSystem) => void }) {
  return (
    <Choices
      legend="Units"
      value={props.units}
      options={OPTIONS}
      onChange={(value) => props.onChange(value === 'metric' ? 'metric' : 'US')}
    />
  );
}
