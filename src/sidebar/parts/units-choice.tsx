import { useId } from 'preact/hooks';
import type { UnitSystem } from '../../../shared/units/units';

const CHOICES: readonly { system: UnitSystem; label: string }[] = [
  { system: 'US', label: 'US (ft, ac, lb, gal, °F)' },
  { system: 'metric', label: 'Metric (m, ha, kg, L, °C)' },
];

/** The grower's units, as two radio buttons. */
export function UnitsChoice(props: { units: UnitSystem; onChange: (units: UnitSystem) => void }) {
  const name = useId();
  return (
    <fieldset>
      <legend>Units</legend>
      {CHOICES.map(({ system, label }) => (
        <label key={system} class="choice">
          <input
            type="radio"
            name={name}
            checked={props.units === system}
            onChange={() => props.onChange(system)}
          />
          {label}
        </label>
      ))}
    </fieldset>
  );
}
