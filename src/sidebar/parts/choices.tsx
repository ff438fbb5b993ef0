import { useId } from 'preact/hooks';
import type { Option } from './field';

interface Props {
  readonly legend: string;
  readonly value: string;
  readonly options: readonly Option[];
  readonly onChange: (value: string) => void;
}

/** One of a few, as radio buttons. */
export function Choices({ legend, value, options, onChange }: Props) {
  const name = useId();
  return (
    <fieldset>
      <legend>{legend}</legend>
      {options.map((option) => (
        <label key={option.value} class="choice">
          <input
            type="radio"
            name={name}
            checked={value === option.value}
            onChange={() => onChange(option.value)}
          />
          {option.text}
        </label>
      ))}
    </fieldset>
  );
}
