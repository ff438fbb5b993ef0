import { BUDGET_CAUTIONS } from '../../../../shared/tasks/budget/budget-block';
import { BUDGET_TASK } from '../../../../shared/tasks/budget/budget-task';
import { Cautions } from '../../parts/cautions';
import { Notice } from '../../parts/notice';
import { SettingsFields, SheetProblems, UnitsField } from '../../parts/task-fields';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { WriteBlock } from '../../parts/write-block';
import { BudgetResult } from './budget-result';
import { StaysSection } from './stays-section';

export function BudgetSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const state = useTask(BUDGET_TASK, book);
  const { plan, stays, units, settings, workable, limits } = state.form;
  return (
    <>
      <UnitsField state={state} />
      <h2>1. Which stays</h2>
      <StaysSection stays={stays} state={state} book={book} units={units} onReread={onReread} />
      <h2>2. What to count with</h2>
      <SettingsFields form={settings} state={state} />
      <SheetProblems state={state} />
      <h2>3. What it comes to</h2>
      {workable.leftOut.map((sentence) => (
        <Notice key={sentence} kind="warning">
          {sentence}
        </Notice>
      ))}
      {plan ? (
        <BudgetResult plan={plan} needs={workable.needs} limits={limits} />
      ) : (
        <p class="hint">Fill in what is missing above.</p>
      )}
      <Cautions sentences={BUDGET_CAUTIONS} />
      <h2>4. Into the sheet</h2>
      <WriteBlock task={BUDGET_TASK} state={state} book={book} onDone={onReread} />
    </>
  );
}
