import { BITE_TASK, LINES_LABEL } from '../../../../shared/tasks/bite/bite-task';
import { BITE_CAUTIONS } from '../../../../shared/tasks/bite/words';
import { unitsRest } from '../../parts/task-fields';
import { settingsWords, TaskScreen } from '../../parts/task-screen';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { BiteResult } from './bite-result';
import { EnergizerFields, TECHNICAL } from './energizer-fields';
import { LevelsTable } from './levels-table';
import { LinesSection } from './lines-section';
import * as words from './words';

export function BiteSteps({ book }: { book: Book }) {
  const state = useTask(BITE_TASK, book);
  const { form } = state;
  return (
    <TaskScreen
      task={BITE_TASK}
      state={state}
      book={book}
      answer={form.plan && <BiteResult plan={form.plan} />}
      cautions={BITE_CAUTIONS}
      rests={[
        {
          title: 'The lines',
          words: form.lines.map(({ Name, Wire }) => `${Name}, ${Wire}`).join('; '),
          isAsked: form.lineProblems.some((problem) => problem !== undefined),
          fields: (
            <LinesSection
              lines={form.lines}
              problems={form.lineProblems}
              wires={form.wires}
              units={form.units}
              onChange={(lines) => state.answer(LINES_LABEL, lines)}
            />
          ),
        },
        {
          title: 'Energizer and levels',
          words: settingsWords({
            ...form.settings,
            specs: form.settings.specs.filter(({ key }) => !TECHNICAL.includes(key)),
          }),
          isAsked: !form.settings.ok,
          fields: (
            <>
              <EnergizerFields form={form.settings} state={state} />
              <details>
                <summary>{words.LEVELS_TITLE}</summary>
                <LevelsTable />
              </details>
            </>
          ),
        },
        ...unitsRest(state),
      ]}
    />
  );
}
