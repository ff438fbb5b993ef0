import { useState } from 'preact/hooks';
import { startUnits } from '../../../../shared/lists/start-units';
import { decimalComma } from '../../../../shared/locale/decimal-comma';
import {
  BUDGET_BLOCK,
  BUDGET_CAUTIONS,
  type BudgetPlan,
  budgetBlock,
} from '../../../../shared/tasks/budget/budget-block';
import { BUDGET_SETTINGS } from '../../../../shared/tasks/budget/budget-settings';
import { earlierBudget } from '../../../../shared/tasks/budget/earlier-budget';
import { readBudget } from '../../../../shared/tasks/budget/read-budget';
import { workableStays } from '../../../../shared/tasks/budget/workable-stays';
import { insideSettings, readUnits } from '../../../../shared/tasks/settings';
import { standingBlock } from '../../../../shared/tasks/standing-block';
import type { UnitSystem } from '../../../../shared/units/units';
import { Cautions } from '../../parts/cautions';
import { Notice } from '../../parts/notice';
import { SettingsFields } from '../../parts/settings-fields';
import { useSettings } from '../../parts/settings-state';
import { UnitsChoice } from '../../parts/units-choice';
import type { Book } from '../../parts/use-book';
import { WriteBlock } from '../../parts/write-block';
import { BudgetResult } from './budget-result';
import { StaysSection } from './stays-section';
import { rotationOf, useStays } from './use-stays';

export function BudgetSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const old = standingBlock(book, BUDGET_BLOCK);
  const standing = old && readBudget(old);
  const standingUnits = old && readUnits(old);
  const [chosenUnits, setUnits] = useState<UnitSystem>(
    () => rotationOf(book)?.old.settings?.unitSystem ?? startUnits(book),
  );
  const units = standingUnits ?? chosenUnits;
  const on = { units, comma: decimalComma(book.overview.locale) };
  const settings = useSettings(BUDGET_SETTINGS, standing?.settings.values ?? {}, on);
  const stays = useStays(book, units, on.comma, standing);
  const sheetProblems = standing?.settings.problems ?? [];
  const inside = insideSettings(BUDGET_SETTINGS, settings.read.values, units);
  const workable = workableStays(settings.read.ok ? stays.stays : [], inside, units);
  const wrong = !settings.read.ok || stays.problems.length > 0 || sheetProblems.length > 0;
  const ready = !wrong && workable.stays.length > 0;
  const plan: BudgetPlan | undefined = ready
    ? {
        stays: workable.stays,
        units,
        settings: settings.read.values,
        source: stays.source,
        origin: stays.words,
        leftOut: workable.leftOut,
      }
    : undefined;
  return (
    <>
      {!standingUnits && <UnitsChoice units={units} onChange={setUnits} />}
      <h2>1. Which stays</h2>
      <StaysSection state={stays} units={units} onReread={onReread} />
      <h2>2. What to count with</h2>
      <SettingsFields specs={BUDGET_SETTINGS} {...settings} {...on} onChange={settings.setTyped} />
      {sheetProblems.map((problem) => (
        <Notice key={problem} kind="problem">
          {problem}
        </Notice>
      ))}
      <h2>3. What it comes to</h2>
      {workable.leftOut.map((sentence) => (
        <Notice key={sentence} kind="warning">
          {sentence}
        </Notice>
      ))}
      {plan && <BudgetResult plan={plan} needs={workable.needs} limits={inside} />}
      {!plan && <p class="hint">Fill in what is missing above.</p>}
      <Cautions sentences={BUDGET_CAUTIONS} />
      <h2>4. Into the sheet</h2>
      <WriteBlock
        name={BUDGET_BLOCK}
        what="the budget"
        tabName="Feed and water"
        book={book}
        notYet={plan ? undefined : 'Something above is still missing or wrong.'}
        compose={(corner, standing, now) => {
          if (!plan) throw new Error('Something is still missing above. Nothing was written.');
          const bound = { ...plan, source: stays.bind(now) };
          return budgetBlock(bound, standing ? readBudget(standing).notes : new Map(), corner);
        }}
        record={old && plan && earlierBudget(old, plan.stays)}
        onDone={onReread}
      />
    </>
  );
}
