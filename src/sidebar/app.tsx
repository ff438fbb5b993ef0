/** The frame of the page: the first screen, one task at a time, the way back, and the spoken status line. */
import { useCallback, useEffect, useMemo, useState } from 'preact/hooks';
import { Page, type PageServices } from './page';
import { Button } from './parts/button';
import { ScreenHeading } from './parts/screen-heading';
import { ask } from './server';
import { TASKS } from './tasks';
import * as words from './words';

export function App() {
  const [taskId, setTaskId] = useState<string>();
  const [status, setStatus] = useState('');
  const [moved, setMoved] = useState(false);
  const go = useCallback((id: string | undefined) => {
    setStatus('');
    setMoved(true);
    setTaskId(id);
  }, []);
  const task = TASKS.find(({ id }) => id === taskId);
  const services = useMemo<PageServices>(
    () => ({
      say: setStatus,
      titles: TASKS.filter((other) => other !== task).map(({ title }) => title),
      open: (wanted) => go(TASKS.find(({ title }) => title === wanted)?.id),
    }),
    [task],
  );
  return (
    <Page.Provider value={services}>
      <main key={taskId ?? 'home'}>
        {task ? (
          <>
            <Button kind="quiet" onPress={() => go(undefined)}>
              ← All tasks
            </Button>
            <ScreenHeading takeFocus>{task.title}</ScreenHeading>
            <task.Panel />
          </>
        ) : (
          <Home takeFocus={moved} onChoose={go} />
        )}
      </main>
      <p class="status" role="status">
        {status}
      </p>
    </Page.Provider>
  );
}

function Home(props: { takeFocus: boolean; onChoose: (id: string) => void }) {
  return (
    <>
      <ScreenHeading takeFocus={props.takeFocus}>{words.WHAT_TO_DO}</ScreenHeading>
      <ul class="tasks">
        {useTasks().map((task) => (
          <li key={task.id}>
            <button
              type="button"
              class="task"
              aria-describedby={`about-${task.id}`}
              onClick={() => props.onChoose(task.id)}
            >
              {task.title}
            </button>
            <p id={`about-${task.id}`}>{task.about}</p>
          </li>
        ))}
      </ul>
      <p class="hint">{words.STAYS_HERE}</p>
    </>
  );
}

/** In their order; one that needs a block of ours comes first where that stands. */
function useTasks(): typeof TASKS {
  const [blocks, setBlocks] = useState<readonly string[]>([]);
  useEffect(() => {
    // Where the file cannot be read, the task that is chosen says so.
    ask('overview', {}).then(
      (overview) => setBlocks(overview.blocks.map(({ name }) => name)),
      () => undefined,
    );
  }, []);
  const isDue = ({ needs }: (typeof TASKS)[number]): boolean => needs !== undefined && blocks.includes(needs);
  return [...TASKS.filter(isDue), ...TASKS.filter((task) => !isDue(task))];
}
