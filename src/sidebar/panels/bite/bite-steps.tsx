import { BITE_CAUTIONS } from '../../../../shared/tasks/bite/bite-block';
import { BITE_TASK, LINES_LABEL } from '../../../../shared/tasks/bite/bite-task';
import { Cautions } from '../../parts/cautions';
import { SettingsFields, SheetProblems, UnitsField } from '../../parts/task-fields';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { WriteBlock } from '../../parts/write-block';
import { BiteResult } from './bite-result';
import { LevelsTable } from './levels-table';
import { LinesSection } from './lines-section';

export function BiteSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const state = useTask(BITE_TASK, book);
  const { form } = state;
  return (
    <>
      <UnitsField state={state} />
      <h2>1. The lines</h2>
      <LinesSection
        lines={form.lines}
        problems={form.lineProblems}
        wires={form.wires}
        units={form.units}
        onChange={(lines) => state.answer(LINES_LABEL, lines)}
      />
      <h2>2. Energizer and levels</h2>
      <SettingsFields form={form.settings} state={state} />
      <details>
        <summary>Levels that are named, and how sure they are</summary>
        <LevelsTable />
      </details>
      <SheetProblems state={state} />
      <h2>3. Volts at the far end</h2>
      {form.plan ? <BiteResult plan={form.plan} /> : <p class="hint">Fill in what is missing above.</p>}
      <Cautions sentences={BITE_CAUTIONS} />
      <h2>4. Into the sheet</h2>
      <WriteBlock task={BITE_TASK} state={state} book={book} onDone={onReread} />
    </>
  );
}
