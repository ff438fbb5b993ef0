/** One cell function: its form, the live answer, and the way into the sheet. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { AnyEntry, Param } from '../../../../shared/catalogue/define';
import type { UnitSystem } from '../../../../shared/units/units';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import { UnitsChoice } from '../../parts/units-choice';
import { AnswerView } from './answer-view';
import { type Argument, BLANK } from './argument';
import { ArgumentField } from './argument-field';
import { FunctionHelp } from './function-help';
import { PutFormula } from './put-formula';
import { useReadReferences } from './use-read-references';
import type { SheetFacts } from './use-sheet';
import { type Outcome, workOut } from './work-out';

interface Props {
  readonly entry: AnyEntry;
  readonly sheet: SheetFacts;
  readonly units: UnitSystem;
  readonly onUnits: (units: UnitSystem) => void;
  readonly onBack: () => void;
}

export function FormulaForm({ entry, sheet, units, onUnits, onBack }: Props) {
  const [typedArgs, setArgs] = useState<readonly Argument[]>(() => entry.params.map(() => BLANK));
  const heading = useRef<HTMLHeadingElement>(null);
  // At once: an effect that runs later takes the focus from a field that is being typed into.
  useLayoutEffect(() => heading.current?.focus(), []);
  const written = typedArgs.map((argument, i) =>
    entry.params[i]?.kind === 'units' ? unitsArgument(units) : argument,
  );
  const read = useReadReferences(written);
  const outcome: Outcome = read.problem
    ? {
        kind: 'refused',
        argument: read.argument === undefined ? undefined : entry.params[read.argument]?.name,
        sentence: read.problem,
      }
    : workOut(entry, read.args, sheet.comma);
  const set = (at: number, argument: Argument): void =>
    setArgs((before) => before.map((old, i) => (i === at ? argument : old)));
  return (
    <>
      <Button kind="quiet" onPress={onBack}>
        ← All functions
      </Button>
      <h2 ref={heading} tabIndex={-1} class="function-name">
        <code>{entry.name}</code>
      </h2>
      <p>{entry.summary}</p>
      {sheet.problem && <Notice kind="problem">{sheet.problem}</Notice>}
      {entry.params.some(({ kind }) => kind === 'units') && <UnitsChoice units={units} onChange={onUnits} />}
      {entry.params.map(
        (param, i) =>
          param.kind !== 'units' && (
            <ArgumentField
              key={param.name}
              param={param}
              units={units}
              argument={typedArgs[i] ?? BLANK}
              problem={problemOf(param, outcome)}
              onChange={(argument) => set(i, argument)}
            />
          ),
      )}
      <AnswerView entry={entry} outcome={outcome} units={units} waiting={read.waiting} />
      <PutFormula
        entry={entry}
        args={written}
        comma={sheet.comma}
        ready={outcome.kind === 'answer' && !read.waiting}
      />
      <FunctionHelp entry={entry} />
    </>
  );
}

/** "US" is what the function takes where nothing is given, so it is left out. */
function unitsArgument(units: UnitSystem): Argument {
  return { from: 'typed', text: units === 'US' ? '' : units };
}

function problemOf(param: Param, outcome: Outcome): string | undefined {
  return outcome.kind === 'refused' && outcome.argument === param.name ? outcome.sentence : undefined;
}
