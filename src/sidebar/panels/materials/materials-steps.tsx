import { useState } from 'preact/hooks';
import { bindLists } from '../../../../shared/lists/bind-lists';
import { startUnits } from '../../../../shared/lists/start-units';
import { decimalComma } from '../../../../shared/locale/decimal-comma';
import { COMPARISON_SETTINGS } from '../../../../shared/tasks/materials/comparison-model';
import type { AtATime } from '../../../../shared/tasks/materials/material-needs';
import {
  MATERIALS_BLOCK,
  MATERIALS_CAUTIONS,
  type MaterialsPlan,
  materialsBlock,
} from '../../../../shared/tasks/materials/materials-block';
import { MATERIALS_SETTINGS } from '../../../../shared/tasks/materials/materials-settings';
import { NOTHING_TYPED, readMaterials } from '../../../../shared/tasks/materials/read-materials';
import { strandsForWeight } from '../../../../shared/tasks/materials/strands-for-weight';
import { readUnits, type SettingSpec } from '../../../../shared/tasks/settings';
import { standingBlock } from '../../../../shared/tasks/standing-block';
import { toInside, type UnitSystem } from '../../../../shared/units/units';
import { Cautions } from '../../parts/cautions';
import { Choices } from '../../parts/choices';
import { Notice } from '../../parts/notice';
import { SettingsFields } from '../../parts/settings-fields';
import { useSettings } from '../../parts/settings-state';
import { UnitsChoice } from '../../parts/units-choice';
import type { Book } from '../../parts/use-book';
import { useReset } from '../../parts/use-reset';
import { WriteBlock } from '../../parts/write-block';
import { LayoutSection } from './layout-section';
import { MaterialsResult } from './materials-result';
import { useLayout } from './use-layout';

const AT_A_TIME = [
  { value: 'all', text: 'All of them' },
  { value: 'set', text: 'A set that moves with the pigs' },
];
const SET_SETTINGS: readonly SettingSpec<'together'>[] = [
  {
    key: 'together',
    label: 'Paddocks that stand together',
    unit: 'paddocks',
    start: 2,
    min: 1,
    whole: true,
    note: 'What the pigs stand in, and what goes up next.',
  },
];
/** Settings that every farm sets; the others wait behind "More settings". */
const MAIN_KEYS = ['pigWeight', 'strands', 'postSpacing', 'publicSide', 'standing'];
const MAIN = MATERIALS_SETTINGS.filter(({ key }) => MAIN_KEYS.includes(key));
const MORE = MATERIALS_SETTINGS.filter(({ key }) => !MAIN_KEYS.includes(key));

export function MaterialsSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const old = standingBlock(book, MATERIALS_BLOCK);
  const standing = old && readMaterials(old);
  const standingUnits = old && readUnits(old);
  const [chosenUnits, setUnits] = useState<UnitSystem>(() => startUnits(book));
  const units = standingUnits ?? chosenUnits;
  const on = { units, comma: decimalComma(book.overview.locale) };
  const [typedAt, setAt] = useState<AtATime['kind']>();
  const at = typedAt ?? standing?.atATime?.kind ?? 'set';
  useReset(standing?.atATime, () => setAt(undefined));
  const together = useSettings(SET_SETTINGS, standingSet(standing?.atATime), on);
  const settings = useSettings(MATERIALS_SETTINGS, standing?.settings.values ?? {}, on);
  const weightKg = toInside(settings.read.values.pigWeight ?? 0, 'mass', units);
  const comparison = useSettings(COMPARISON_SETTINGS, standing?.comparison.values ?? {}, on);
  const layout = useLayout(book, { ...on, shape: settings.read.values.shape || 1, standing });
  const problems = [standing, standing?.settings, standing?.comparison, standing?.grid].flatMap(
    (part) => part?.problems ?? [],
  );
  const numbersOk = settings.read.ok && comparison.read.ok && (at === 'all' || together.read.ok);
  const atATime: AtATime =
    at === 'all' ? { kind: 'all' } : { kind: 'set', paddocks: together.read.values.together ?? 1 };
  const plan: MaterialsPlan | undefined =
    layout.layout && numbersOk && problems.length === 0
      ? {
          layout: layout.layout,
          atATime,
          units,
          settings: settings.read.values,
          comparison: comparison.read.values,
          ...(layout.kind === 'list' && layout.source && { list: layout.source }),
        }
      : undefined;
  return (
    <>
      {!standingUnits && <UnitsChoice units={units} onChange={setUnits} />}
      <h2>1. What is fenced</h2>
      <LayoutSection state={layout} {...on} onReread={onReread} />
      <Choices
        legend="How many paddocks stand fenced at a time?"
        value={at}
        options={AT_A_TIME}
        onChange={(kind) => setAt(kind as AtATime['kind'])}
      />
      {at === 'set' && (
        <SettingsFields specs={SET_SETTINGS} {...together} {...on} onChange={together.setTyped} />
      )}
      <h2>2. How it is built</h2>
      <SettingsFields specs={MAIN} {...settings} {...on} onChange={settings.setTyped} />
      {settings.read.values.strands !== strandsForWeight(weightKg) && (
        <p class="hint">
          For pigs of that weight {strandsForWeight(weightKg)} strands are the usual start (two: extension,
          second hand; three for the smallest: judgement).
        </p>
      )}
      <details open={MORE.some(({ key }) => settings.read.problems[key] !== undefined)}>
        <summary>More settings</summary>
        <SettingsFields specs={MORE} {...settings} {...on} onChange={settings.setTyped} />
      </details>
      <details open={!comparison.read.ok}>
        <summary>Comparison with fixed fence</summary>
        <SettingsFields specs={COMPARISON_SETTINGS} {...comparison} {...on} onChange={comparison.setTyped} />
      </details>
      {problems.map((problem) => (
        <Notice key={problem} kind="problem">
          {problem}
        </Notice>
      ))}
      <h2>3. What it takes</h2>
      {plan ? <MaterialsResult plan={plan} /> : <p class="hint">Fill in what is missing above.</p>}
      <Cautions sentences={MATERIALS_CAUTIONS} />
      <h2>4. Into the sheet</h2>
      <p class="hint">
        There you type what you have and what things cost; what to buy and its cost follow, and the comparison
        with woven wire and panels.
      </p>
      <WriteBlock
        name={MATERIALS_BLOCK}
        what="the materials list"
        tabName="Fence materials"
        book={book}
        notYet={plan ? undefined : 'Something above is still missing or wrong.'}
        compose={(corner, standing, now) => {
          if (!plan) throw new Error('Something is still missing above. Nothing was written.');
          const { paddocks } = bindLists(plan.list ? { paddocks: plan.list } : {}, now);
          const bound = paddocks ? { ...plan, list: paddocks } : plan;
          return materialsBlock(bound, standing ? readMaterials(standing).typed : NOTHING_TYPED, corner);
        }}
        onDone={onReread}
      />
    </>
  );
}

function standingSet(atATime: AtATime | undefined): { together?: number } {
  return atATime?.kind === 'set' ? { together: atATime.paddocks } : {};
}
