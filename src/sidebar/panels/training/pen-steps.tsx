import { CATALOGUE } from '../../../../shared/catalogue';
import type { CellValue } from '../../../../shared/catalogue/define';
import { call } from '../../../../shared/door/call';
import { insideSettings } from '../../../../shared/tasks/settings';
import { PEN_CAUTIONS, PEN_SETTINGS, type PenSettings } from '../../../../shared/tasks/training/pen-block';
import { penPlan } from '../../../../shared/tasks/training/pen-drawing';
import { PEN_TASK } from '../../../../shared/tasks/training/pen-task';
import type { UnitSystem } from '../../../../shared/units/units';
import { formatNumber } from '../../numbers/format-number';
import { Cautions } from '../../parts/cautions';
import { SettingsFields, SheetProblems, UnitsField } from '../../parts/task-fields';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { WriteBlock } from '../../parts/write-block';
import { PenDrawing } from './pen-drawing';

export function PenSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const state = useTask(PEN_TASK, book);
  const { plan, settings } = state.form;
  return (
    <>
      <UnitsField state={state} />
      <SettingsFields form={settings} state={state} />
      <SheetProblems state={state} />
      <h2>What it takes</h2>
      {plan ? <Pen {...plan} /> : <p>Correct the numbers above first.</p>}
      <Cautions sentences={PEN_CAUTIONS} />
      <h2>Into the sheet</h2>
      <p class="hint">There you type what you have; what to buy follows.</p>
      <WriteBlock task={PEN_TASK} state={state} book={book} onDone={onReread} />
    </>
  );
}

function Pen({ settings, units }: { settings: PenSettings; units: UnitSystem }) {
  const {
    head = 1,
    weight = 1,
    panel = 1,
    spacing = 1,
    area = 1,
    strands = 1,
  } = insideSettings(PEN_SETTINGS, settings, units);
  const plan = penPlan({
    head,
    weightKg: weight,
    panelMeters: panel,
    spacingMeters: spacing,
    areaSquareMeters: area,
    strands,
  });
  return (
    <>
      <table>
        <caption class="hint">For one live wire, as TRAINING_PEN counts it</caption>
        <tbody>
          {linesOf(settings, units).map(([item = '', amount = '', unit = '']) => (
            <tr key={String(item)}>
              <th scope="row">{item}</th>
              <td class="number">
                {typeof amount === 'number' ? formatNumber(amount) : amount} {unit}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <PenDrawing plan={plan} units={units} />
    </>
  );
}

/** The same call as the block makes. */
function linesOf(
  { head, weight, panel, spacing, area }: PenSettings,
  units: UnitSystem,
): readonly (readonly CellValue[])[] {
  const entry = CATALOGUE.find(({ name }) => name === 'TRAINING_PEN');
  if (!entry) return [];
  const answer = call(entry, [head, weight, panel, spacing, area, units], { dayOfDate: () => Number.NaN });
  return Array.isArray(answer) ? answer : [];
}
