import { PARASITE_CAUTION } from '../../../../shared/catalogue/cautions';
import type { EvennessWord } from '../../../../shared/table/settings-rows';
import type { RuleProblems } from '../../../../shared/tasks/rotation/read-rules';
import type { RestKind, RulesForm } from '../../../../shared/tasks/rotation/rules-form';
import { symbolOf, type UnitSystem } from '../../../../shared/units/units';
import { Choices } from '../../parts/choices';
import { MONTHS, WEEKDAYS } from '../../parts/day-words';
import { Field, InputField } from '../../parts/field';
import * as words from './words';

interface Props {
  readonly form: RulesForm;
  readonly units: UnitSystem;
  readonly problems: RuleProblems;
  readonly onChange: (form: RulesForm) => void;
}

const REST_KINDS = [
  { value: 'fixed', text: 'The same all season' },
  { value: 'monthly', text: 'By month' },
  { value: 'forage', text: 'From forage growth' },
];

/** The more moves, the less the small paddocks bear. */
const EVENNESS_WORDS = [
  { value: 'fewest', text: 'Fewest moves' },
  { value: 'some', text: 'Some: shorter stays where the ground is small' },
  { value: 'most', text: 'Most: every paddock alike for its size' },
];

/** Season, rest, stay and move days. */
export function RulesSection({ form, units, problems, onChange }: Props) {
  const set = (change: Partial<RulesForm>): void => onChange({ ...form, ...change });
  const text = (field: 'shortest' | 'longest' | 'restDays' | 'needed' | 'groundLimit') => ({
    value: form[field],
    problem: problems[field],
    onChange: (value: string) => set({ [field]: value }),
  });
  const date = (field: 'seasonStart' | 'seasonEnd') => ({
    type: 'date' as const,
    value: form[field],
    problem: problems[field],
    onChange: (value: string) => set({ [field]: value }),
  });
  return (
    <>
      <InputField label="Season starts" {...date('seasonStart')} />
      <InputField label="Season ends" hint={words.SEASON_END_NOTE} {...date('seasonEnd')} />
      <Choices
        legend="Rest for a paddock"
        value={form.rest}
        options={REST_KINDS}
        onChange={(value) => set({ rest: value as RestKind })}
      />
      <p class="hint">{PARASITE_CAUTION}</p>
      {form.rest === 'fixed' && (
        <InputField label="Days of rest" hint={words.REST_NOTE} {...text('restDays')} />
      )}
      {form.rest === 'monthly' && (
        <Months
          legend="Days of rest by the month the pigs leave"
          values={form.monthlyRest}
          problem={problems.monthlyRest}
          onChange={(monthlyRest) => set({ monthlyRest })}
        />
      )}
      {form.rest === 'forage' && (
        <>
          <Months
            legend="Forage growth a day, by month"
            values={form.growth}
            problem={problems.growth}
            onChange={(growth) => set({ growth })}
          />
          <InputField
            label="Growth needed before pigs come back"
            hint={words.growthUnit(symbolOf('massPerArea', units))}
            {...text('needed')}
          />
        </>
      )}
      <InputField label="Shortest stay (days)" {...text('shortest')} />
      <InputField label="Longest stay (days)" hint={words.STAY_NOTE} {...text('longest')} />
      <Choices
        legend={words.HOW_MUCH_MOVED}
        value={form.evenness}
        options={EVENNESS_WORDS}
        onChange={(value) => set({ evenness: value as EvennessWord })}
      />
      <Weekdays
        chosen={form.weekdays}
        problem={problems.weekdays}
        onChange={(weekdays) => set({ weekdays })}
      />
      <Field
        label="Dates with no moves – may stay empty"
        hint={words.NO_MOVES_NOTE}
        problem={problems.noMoveDays}
      >
        {(described) => (
          <textarea
            {...described}
            rows={2}
            value={form.noMoveDays}
            onInput={(event) => set({ noMoveDays: event.currentTarget.value })}
          />
        )}
      </Field>
      <InputField
        label={`Ground limit (${symbolOf('loadPerArea', units)}) – may stay empty`}
        hint={words.LIMIT_NOTE}
        {...text('groundLimit')}
      />
    </>
  );
}

interface MonthsProps {
  readonly legend: string;
  readonly values: readonly string[];
  readonly problem: string | undefined;
  readonly onChange: (values: readonly string[]) => void;
}

function Months({ legend, values, problem, onChange }: MonthsProps) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      {problem && <p class="problem-text">{problem}</p>}
      <div class="months">
        {MONTHS.map((month, i) => (
          <label key={month}>
            {month}
            <input
              type="text"
              autocomplete="off"
              value={values[i] ?? ''}
              onInput={(event) => onChange(replaced(values, i, event.currentTarget.value))}
            />
          </label>
        ))}
      </div>
    </fieldset>
  );
}

interface WeekdaysProps {
  readonly chosen: readonly boolean[];
  readonly problem: string | undefined;
  readonly onChange: (chosen: readonly boolean[]) => void;
}

function Weekdays({ chosen, problem, onChange }: WeekdaysProps) {
  return (
    <fieldset>
      <legend>Move days</legend>
      {problem && <p class="problem-text">{problem}</p>}
      <div class="weekdays">
        {WEEKDAYS.map((name, i) => (
          <label key={name} class="choice">
            <input
              type="checkbox"
              checked={chosen[i] ?? false}
              onChange={(event) => onChange(replaced(chosen, i, event.currentTarget.checked))}
            />
            {name}
          </label>
        ))}
      </div>
    </fieldset>
  );
}

function replaced<Item>(items: readonly Item[], at: number, item: Item): Item[] {
  return items.map((old, i) => (i === at ? item : old));
}
