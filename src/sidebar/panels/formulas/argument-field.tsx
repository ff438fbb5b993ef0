import { useId, useState } from 'preact/hooks';
import type { Param } from '../../../../shared/catalogue/define';
import { QUANTITIES, type UnitSystem } from '../../../../shared/units/units';
import { usePage } from '../../page';
import { Button } from '../../parts/button';
import { ask } from '../../server';
import { type Argument, BLANK, fromSelection } from './argument';
import * as words from './words';
import { inWords } from './work-out';

interface Props {
  readonly param: Param;
  readonly units: UnitSystem;
  readonly argument: Argument;
  readonly problem: string | undefined;
  readonly onChange: (argument: Argument) => void;
}

/** One argument: typed, or taken from the selected cells. */
export function ArgumentField({ param, units, argument, problem, onChange }: Props) {
  const id = useId();
  const { say } = usePage();
  const [failure, setFailure] = useState<string>();
  const name = inWords(param.name);
  const takeSelection = async (): Promise<void> => {
    setFailure(undefined);
    say(words.reading(name));
    try {
      const selected = fromSelection(await ask('readSelection', {}));
      onChange(selected);
      say(`${name} now comes from ${selected.from === 'cells' ? selected.reference : ''}.`);
    } catch (error) {
      say('');
      setFailure((error as Error).message);
    }
  };
  const shown = failure ?? problem;
  return (
    <div class="field">
      <label for={id}>
        {capital(name)}
        <Unit param={param} units={units} />
        {param.optional && <span class="optional"> – may stay empty</span>}
      </label>
      <p id={`${id}-help`} class="hint">
        {param.help}
      </p>
      <div class="pair">
        <Value id={id} param={param} argument={argument} invalid={shown !== undefined} onChange={onChange} />
        {argument.from === 'cells' ? (
          <Button onPress={() => onChange(BLANK)} label={`Type instead of cells for ${name}`}>
            Type instead
          </Button>
        ) : (
          <Button onPress={takeSelection} label={`Use selected cells for ${name}`}>
            Use selected cells
          </Button>
        )}
      </div>
      {shown !== undefined && (
        <p id={`${id}-problem`} class="problem-text">
          {shown}
        </p>
      )}
    </div>
  );
}

interface ValueProps {
  readonly id: string;
  readonly param: Param;
  readonly argument: Argument;
  readonly invalid: boolean;
  readonly onChange: (argument: Argument) => void;
}

function Value({ id, param, argument, invalid, onChange }: ValueProps) {
  const shared = {
    id,
    'aria-describedby': invalid ? `${id}-problem ${id}-help` : `${id}-help`,
    'aria-invalid': invalid ? ('true' as const) : undefined,
  };
  if (argument.from === 'cells') return <input {...shared} type="text" readOnly value={argument.reference} />;
  const choices = choicesOf(param);
  const type = (text: string): void => onChange({ from: 'typed', text });
  if (choices) {
    return (
      <select {...shared} value={argument.text} onChange={(event) => type(event.currentTarget.value)}>
        <option value="">(nothing chosen)</option>
        {choices.map((choice) => (
          <option key={choice} value={choice}>
            {choice}
          </option>
        ))}
      </select>
    );
  }
  return (
    <input
      {...shared}
      type="text"
      autocomplete="off"
      spellcheck={false}
      value={argument.text}
      onInput={(event) => type(event.currentTarget.value)}
    />
  );
}

function choicesOf(param: Param): readonly string[] | undefined {
  if (param.kind === 'choice') return param.choices;
  return param.kind === 'boolean' ? ['TRUE', 'FALSE'] : undefined;
}

function Unit({ param, units }: { param: Param; units: UnitSystem }) {
  const text =
    'quantity' in param && param.quantity
      ? QUANTITIES[param.quantity][units].symbol
      : 'unit' in param && param.unit
        ? param.unit
        : KIND_HINTS[param.kind];
  return text ? <span class="unit"> ({text})</span> : null;
}

const KIND_HINTS: Readonly<Partial<Record<Param['kind'], string>>> = {
  date: 'date, such as 2026-04-20',
  corners: 'two columns of cells: latitude, longitude',
  list: 'cells',
};

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
