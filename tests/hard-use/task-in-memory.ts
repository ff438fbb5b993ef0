/**
 * A task run over a file in memory, by the very runTask of the page: thousands of tables can be typed into and written
 * anew without a spreadsheet. What would be written is handed to the judges.
 */
import type { Book } from '../../shared/block/book';
import { ROTATION_NAME } from '../../shared/block/own-words';
import { type BlockContent, cutBlock } from '../../shared/block/read-block';
import type { TabContent, WriteBlock } from '../../shared/contract';
import type { Answers, Task } from '../../shared/tasks/task';
import { type Port, runTask } from '../../src/headless';
import type { Rebuilt, TypedTask } from './typed-cells';

interface Person<Plan, View extends object> {
  readonly answers?: Answers;
  /** What the person answers to the questions of a form, if anything. */
  readonly asked?: (form: ReturnType<Task<Plan, View>['read']>) => Answers;
  /** Sentences that the page shows beside the form. */
  readonly shown?: (form: ReturnType<Task<Plan, View>['read']>) => readonly string[];
}

export function taskInMemory<Plan, View extends object>(
  name: string,
  whole: Book,
  task: Task<Plan, View>,
  { answers = {}, asked, shown }: Person<Plan, View> = {},
): TypedTask {
  const book = withoutOthers(whole, task.name);
  const content = contentOf(book, task.name);

  async function rebuild(changed: BlockContent): Promise<Rebuilt> {
    const file = withBlock(book, changed);
    // What the page shows is the form that was written from.
    let last: ReturnType<typeof task.read> | undefined;
    const watched: Task<Plan, View> = {
      ...task,
      read: (now, given) => {
        last = task.read(now, given);
        return last;
      },
    };
    const first = await pressed(file, watched, answers);
    if ('cells' in first) return { ...first, told: [...((last && shown?.(last)) ?? []), ...first.told] };
    const more = 'questions' in first ? (asked?.(task.read(file, answers)) ?? {}) : {};
    if (Object.keys(more).length === 0) return { refused: sentencesOf(first) };
    const second = await pressed(file, task, { ...answers, ...more });
    // What the page has asked stands there to be read.
    if ('cells' in second) return { ...second, told: [...sentencesOf(first), ...second.told] };
    return { refused: sentencesOf(second) };
  }

  return { name, content, rebuild };
}

type Stopped = { readonly questions: readonly string[] } | { readonly refused: string };
type Pressed = Stopped | (Pick<WriteBlock, 'cells' | 'styles'> & { readonly told: readonly string[] });

function sentencesOf(stopped: Stopped): readonly string[] {
  return 'questions' in stopped ? stopped.questions : [stopped.refused];
}

async function pressed<Plan, View extends object>(
  file: Book,
  task: Task<Plan, View>,
  answers: Answers,
): Promise<Pressed> {
  const written: WriteBlock[] = [];
  const outcome = await runTask(memoryPort(file, written), task, answers);
  if (outcome.kind === 'questions') return outcome;
  if (outcome.kind === 'refused') return { refused: outcome.sentence };
  const { inPlace = [], below = [] } = outcome.done.kept ?? {};
  const [{ cells, styles }] = written as [WriteBlock];
  // The memory holds marks only; nothing that was typed may be found in it.
  const less = <Cell>(grid: readonly (readonly Cell[])[]): Cell[][] =>
    grid.map((row, r) => row.filter((_, c) => styles[r]![c] !== 'memory'));
  return { cells: less(cells), styles: less(styles), told: [...inPlace, ...below] };
}

function memoryPort(file: Book, written: WriteBlock[]): Port {
  const replies: Readonly<Record<string, (request: WriteBlock) => unknown>> = {
    readFile: () => file,
    writeBlock: (request) => {
      written.push(request);
      return { block: { ...file.overview.blocks[0]!, name: request.name }, a1: 'A1', note: '' };
    },
  };
  return async (name, request) => replies[name]!(request as WriteBlock) as never;
}

/** The block of that name as it stands. */
export function contentOf({ overview, tabs }: Book, name: string): BlockContent {
  const info = overview.blocks.find((block) => block.name === name);
  const tab = tabs.find((one) => one.name === info?.tab);
  if (!info || !tab) throw new Error(`no ${name} in the file`);
  return cutBlock(tab, info);
}

/** The file with the grower's tabs, that of the table and that of the moves: the map's paddocks are a list too. */
export function withoutOthers({ overview, tabs }: Book, name: string): Book {
  const blocks = overview.blocks.filter((block) => [name, ROTATION_NAME].includes(block.name));
  const others = overview.blocks.filter((block) => !blocks.includes(block)).map(({ tab }) => tab);
  return { overview: { ...overview, blocks }, tabs: tabs.filter((tab) => !others.includes(tab.name)) };
}

function withBlock(book: Book, { info, values, formulas }: BlockContent): Book {
  const put = <Cell>(rows: readonly (readonly Cell[])[], block: readonly (readonly Cell[])[]): Cell[][] =>
    rows.map((row, r) => {
      const own = block[r - info.row + 1];
      const left = info.column - 1;
      return own ? [...row.slice(0, left), ...own, ...row.slice(left + own.length)] : [...row];
    });
  const changed = (tab: TabContent): TabContent =>
    tab.name === info.tab
      ? { ...tab, values: put(tab.values, values), formulas: put(tab.formulas, formulas) }
      : tab;
  return { ...book, tabs: book.tabs.map(changed) };
}
