import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

export interface FieldProps {
  readonly label: ComponentChildren;
  readonly hint?: ComponentChildren;
  readonly problem?: string | undefined;
}

interface Described {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': 'true' | undefined;
}

/** Label above, hint under it, the control, and what is wrong with it in words. */
export function Field(props: FieldProps & { children: (described: Described) => ComponentChildren }) {
  const id = useId();
  const { hint, problem } = props;
  const describedBy = [problem && `${id}-problem`, hint && `${id}-hint`].filter(Boolean).join(' ');
  return (
    <div class="field">
      <label for={id}>{props.label}</label>
      {hint && (
        <p id={`${id}-hint`} class="hint">
          {hint}
        </p>
      )}
      {props.children({
        id,
        'aria-describedby': describedBy || undefined,
        'aria-invalid': problem ? 'true' : undefined,
      })}
      {problem && (
        <p id={`${id}-problem`} class="problem-text">
          {problem}
        </p>
      )}
    </div>
  );
}

export interface InputProps extends FieldProps {
  readonly type?: 'text' | 'date';
  readonly value: string;
  readonly onChange: (value: string) => void;
}

export function InputField({ type = 'text', value, onChange, ...field }: InputProps) {
  return (
    <Field {...field}>
      {(described) => (
        <input
          {...described}
          type={type as 'text'}
          autocomplete="off"
          value={value}
          onInput={(event) => onChange(event.currentTarget.value)}
        />
      )}
    </Field>
  );
}

export interface Option {
  readonly value: string;
  readonly text: string;
}

interface SelectProps extends FieldProps {
  readonly value: string;
  readonly options: readonly Option[];
  readonly onChange: (value: string) => void;
}

export function SelectField({ value, options, onChange, ...field }: SelectProps) {
  return (
    <Field {...field}>
      {(described) => (
        <select {...described} value={value} onChange={(event) => onChange(event.currentTarget.value)}>
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.text}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
