import { NEW_LINE, type TypedLine } from '../../../../shared/tasks/bite/typed-line';
import type { WireRow } from '../../../../shared/tasks/bite/wire-rows';
import { symbolOf, type UnitSystem } from '../../../../shared/units/units';
import { Button } from '../../parts/button';
import { InputField, SelectField } from '../../parts/field';
import * as words from './words';

interface Props {
  readonly lines: readonly TypedLine[];
  readonly problems: readonly (string | undefined)[];
  readonly wires: readonly WireRow[];
  readonly units: UnitSystem;
  readonly onChange: (lines: readonly TypedLine[]) => void;
}

export function LinesSection({ lines, problems, wires, units, onChange }: Props) {
  const options = wires.map(({ name }) => ({ value: name, text: name }));
  const change = (at: number, part: Partial<TypedLine>): void =>
    onChange(lines.map((line, i) => (i === at ? { ...line, ...part } : line)));
  return (
    <>
      {lines.map((line, at) => (
        <fieldset key={at}>
          <legend>{line.Name || `Line ${at + 1}`}</legend>
          <InputField label="Name" value={line.Name} onChange={(Name) => change(at, { Name })} />
          <InputField
            label={
              <>
                Length <span class="unit">({symbolOf('length', units)})</span>
              </>
            }
            hint={words.ALONG_FENCE}
            problem={problems[at] || undefined}
            value={line.Length}
            onChange={(Length) => change(at, { Length })}
          />
          <InputField
            label="Live wires"
            hint={words.SHARED_CURRENT}
            value={line['Live wires']}
            onChange={(live) => change(at, { 'Live wires': live })}
          />
          <SelectField
            label="Wire"
            value={line.Wire}
            options={options}
            onChange={(Wire) => change(at, { Wire })}
          />
          {lines.length > 1 && (
            <Button
              label={`Remove ${line.Name || `line ${at + 1}`}`}
              onPress={() => onChange(lines.filter((_, i) => i !== at))}
            >
              Remove
            </Button>
          )}
        </fieldset>
      ))}
      <Button onPress={() => onChange([...lines, { ...NEW_LINE, Name: `Line ${lines.length + 1}` }])}>
        One more line
      </Button>
      <p class="hint">{words.BY_ITS_LOOK}</p>
    </>
  );
}
