import { CATALOGUE } from '../../../../shared/catalogue';
import type { CellValue } from '../../../../shared/catalogue/define';
import { call } from '../../../../shared/door/call';
import { capital } from '../../../../shared/plan/words';
import { insideSettings } from '../../../../shared/tasks/settings';
import { tooFewStrands } from '../../../../shared/tasks/strands-setting';
import { PEN_SETTINGS, type PenSettings } from '../../../../shared/tasks/training/pen-block';
import { penPlan } from '../../../../shared/tasks/training/pen-drawing';
import { PEN_TASK } from '../../../../shared/tasks/training/pen-task';
import { PEN_CAUTIONS } from '../../../../shared/tasks/training/words';
import type { UnitSystem } from '../../../../shared/units/units';
import { count } from '../../parts/day-words';
import { Notice } from '../../parts/notice';
import { SettingsFields, unitsRest } from '../../parts/task-fields';
import { settingsWords, TaskScreen } from '../../parts/task-screen';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { PenDrawing } from './pen-drawing';

export function PenSteps({ book }: { book: Book }) {
  const state = useTask(PEN_TASK, book);
  const { plan, settings } = state.form;
  return (
    <TaskScreen
      task={PEN_TASK}
      state={state}
      book={book}
      answer={plan && <PenNeeds {...plan} />}
      more={plan && <Pen {...plan} />}
      cautions={PEN_CAUTIONS}
      rests={[
        {
          title: 'The pigs and the pen',
          words: settingsWords(settings),
          isAsked: !settings.ok,
          fields: <SettingsFields form={settings} state={state} />,
        },
        ...unitsRest(state),
      ]}
    />
  );
}

interface PenProps {
  readonly settings: PenSettings;
  readonly units: UnitSystem;
}

function PenNeeds({ settings, units }: PenProps) {
  const { weight = 1, strands = 1 } = insideSettings(PEN_SETTINGS, settings, units);
  const tooFew = tooFewStrands(weight, strands, units);
  // The last one is the height of a single wire; of more the drawing says how high each hangs.
  const lines = linesOf(settings, units).slice(0, strands === 1 ? undefined : -1);
  return (
    <div class="answer">
      {tooFew && <Notice kind="warning">{tooFew}</Notice>}
      <table>
        <caption class="hint">{count(strands, 'live wire')}, as drawn below</caption>
        <tbody>
          {lines.map(([item = '', amount = '', unit = '']) => (
            <tr key={String(item)}>
              <th scope="row">{capital(String(item))}</th>
              <td class="number">
                {typeof amount === 'number'
                  ? amount.toLocaleString(undefined, { maximumFractionDigits: 1 })
                  : amount}{' '}
                {String(item).endsWith(String(unit)) ? '' : unit}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Pen({ settings, units }: PenProps) {
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
      <h2>How it is laid out</h2>
      <PenDrawing plan={plan} units={units} />
    </>
  );
}

/** What TRAINING_PEN counts for one wire. */
const PER_WIRE: readonly CellValue[] = ['offset insulators', 'live wire'];

/** The same call as the block makes, and what hangs on the wires times their number. */
function linesOf(
  { head, weight, panel, spacing, area, strands }: PenSettings,
  units: UnitSystem,
): readonly (readonly CellValue[])[] {
  const entry = CATALOGUE.find(({ name }) => name === 'TRAINING_PEN');
  if (!entry) return [];
  const answer = call(entry, [head, weight, panel, spacing, area, units], { dayOfDate: () => Number.NaN });
  if (!Array.isArray(answer)) return [];
  return answer.map(([item = '', amount = '', unit = '']) =>
    PER_WIRE.includes(item) ? [item, Number(amount) * (strands ?? 1), unit] : [item, amount, unit],
  );
}
