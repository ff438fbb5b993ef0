import { useState } from 'preact/hooks';
import { CATALOGUE } from '../../../../shared/catalogue';
import type { CellValue } from '../../../../shared/catalogue/define';
import { call } from '../../../../shared/door/call';
import { startUnits } from '../../../../shared/lists/start-units';
import { decimalComma } from '../../../../shared/locale/decimal-comma';
import { insideSettings, readUnits } from '../../../../shared/tasks/settings';
import { standingBlock } from '../../../../shared/tasks/standing-block';
import {
  composePenBlock,
  PEN_BLOCK,
  PEN_CAUTIONS,
  PEN_SETTINGS,
  type PenSettings,
} from '../../../../shared/tasks/training/pen-block';
import { penPlan } from '../../../../shared/tasks/training/pen-drawing';
import { readPen } from '../../../../shared/tasks/training/read-pen';
import type { UnitSystem } from '../../../../shared/units/units';
import { formatNumber } from '../../numbers/format-number';
import { Cautions } from '../../parts/cautions';
import { Notice } from '../../parts/notice';
import { SettingsFields } from '../../parts/settings-fields';
import { useSettings } from '../../parts/settings-state';
import { UnitsChoice } from '../../parts/units-choice';
import type { Book } from '../../parts/use-book';
import { WriteBlock } from '../../parts/write-block';
import { PenDrawing } from './pen-drawing';

export function PenSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const old = standingBlock(book, PEN_BLOCK);
  const standing = old && readPen(old);
  const standingUnits = old && readUnits(old);
  const [chosenUnits, setUnits] = useState<UnitSystem>(() => startUnits(book));
  const units = standingUnits ?? chosenUnits;
  const on = { units, comma: decimalComma(book.overview.locale) };
  const settings = useSettings(PEN_SETTINGS, standing?.settings.values ?? {}, on);
  const problems = standing?.settings.problems ?? [];
  const ok = settings.read.ok && problems.length === 0;
  return (
    <>
      {!standingUnits && <UnitsChoice units={units} onChange={setUnits} />}
      <SettingsFields specs={PEN_SETTINGS} {...settings} {...on} onChange={settings.setTyped} />
      {problems.map((problem) => (
        <Notice key={problem} kind="problem">
          {problem}
        </Notice>
      ))}
      <h2>What it takes</h2>
      {ok ? <Pen settings={settings.read.values} units={units} /> : <p>Correct the numbers above first.</p>}
      <Cautions sentences={PEN_CAUTIONS} />
      <h2>Into the sheet</h2>
      <p class="hint">There you type what you have; what to buy follows.</p>
      <WriteBlock
        name={PEN_BLOCK}
        what="the pen list"
        tabName="Training pen"
        book={book}
        notYet={ok ? undefined : 'Correct the numbers above first.'}
        compose={(corner, now) => {
          const read = now && readPen(now);
          return composePenBlock(
            withTyped(settings.read.values, settings.typed, read?.settings.values ?? {}),
            read?.onHand ?? [],
            units,
            corner,
          );
        }}
        onDone={onReread}
      />
    </>
  );
}

/** Numbers changed in the sheet since the page read it count, unless they were typed here. */
function withTyped(
  values: PenSettings,
  typed: Partial<Record<keyof PenSettings, string>>,
  now: Partial<PenSettings>,
): PenSettings {
  const changed = Object.entries(now).filter(([key]) => typed[key as keyof PenSettings] === undefined);
  return { ...values, ...Object.fromEntries(changed) };
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
