import { BUDGET_TASK } from '../../../../shared/tasks/budget/budget-task';
import { BUDGET_CAUTIONS } from '../../../../shared/tasks/budget/words';
import { count } from '../../parts/day-words';
import { Notice } from '../../parts/notice';
import { SettingsFields, unitsRest } from '../../parts/task-fields';
import { settingsWords, TaskScreen } from '../../parts/task-screen';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { BudgetMore, BudgetResult } from './budget-result';
import { StaysSection } from './stays-section';

export function BudgetSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const state = useTask(BUDGET_TASK, book);
  const { plan, stays, units, settings, workable, limits } = state.form;
  return (
    <TaskScreen
      task={BUDGET_TASK}
      state={state}
      book={book}
      answer={
        <>
          {workable.leftOut.map((sentence) => (
            <Notice key={sentence} kind="warning">
              {sentence}
            </Notice>
          ))}
          {plan && <BudgetResult plan={plan} needs={workable.needs} limits={limits} />}
        </>
      }
      more={plan && <BudgetMore plan={plan} needs={workable.needs} limits={limits} />}
      cautions={BUDGET_CAUTIONS}
      rests={[
        {
          title: 'Which stays',
          words: count(stays.stays.length, 'stay'),
          isAsked: stays.problems.length > 0 || stays.stays.length === 0,
          fields: <StaysSection stays={stays} state={state} book={book} units={units} onReread={onReread} />,
        },
        {
          title: 'What to count with',
          words: settingsWords(settings),
          isAsked: !settings.ok,
          fields: <SettingsFields form={settings} state={state} />,
        },
        ...unitsRest(state),
      ]}
    />
  );
}
