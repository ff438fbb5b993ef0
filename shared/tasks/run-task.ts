/**
 * A task from the sheet to the written block, with or without a page: read, plan, compose, merge, write, tell. The page
 * shows the form between the steps; a program gives all answers at once.
 */
import { type Book, bookOf } from '../block/book';
import { pointingCells } from '../block/pointing-cells';
import { READ_AGAIN } from '../block/read-again';
import { wholeOf } from '../block/read-block';
import type { CallName, Reply, Request, WriteDone } from '../contract';
import { bindLists } from '../lists/bind-lists';
import { blockMeaning } from '../table/block-meaning';
import { areaFingerprint } from './area-fingerprint';
import { astrayCells } from './astray-cells';
import { type Kept, type MergedBlock, mergeBlock } from './merge-block';
import { placeLegend, placeOf, TAB_LABEL } from './place';
import { rebuildBlock } from './rebuild-block';
import { rotationNow } from './rotation-now';
import { filledBeside } from './standing';
import type { Answers, Form, Sources, Task } from './task';

/** The calls of the script, as the page makes them. */
export type Port = <Name extends CallName>(name: Name, request: Request<Name>) => Promise<Reply<Name>>;

/** What was written, and what of the grower's may now mean another row. */
export interface Written extends WriteDone {
  /** The first filled cell beside the table. */
  readonly beside?: string | undefined;
  /** Cells elsewhere that point at rows which have moved. */
  readonly astray?: readonly string[];
  /** What of the grower's stayed in the table, moved below it or gave way. */
  readonly kept?: Kept;
}

export type Outcome<Plan = unknown> =
  | { readonly kind: 'written'; readonly done: Written; readonly plan: Plan }
  /** What is missing or wrong before anything can be written, as the form says it. */
  | { readonly kind: 'questions'; readonly questions: readonly string[] }
  /** Why nothing was written although the form was right. */
  | { readonly kind: 'refused'; readonly sentence: string };

export interface How {
  /** The grower asked for ours in the cells that were typed over. */
  readonly putBack?: boolean;
}

/** The whole way. Throws a TypeError for an answer that the form does not ask for. */
export async function runTask<Plan>(
  port: Port,
  task: Task<Plan>,
  answers: Answers = {},
  how: How = {},
): Promise<Outcome<Plan>> {
  try {
    const book = await readBook(port);
    const form = task.read(book, answers);
    refuseUnasked([...form.labels, placeLegend(task), TAB_LABEL], answers);
    if (form.plan === undefined) return { kind: 'questions', questions: form.questions };
    return { kind: 'written', done: await write(port, task, book, form, answers, how), plan: form.plan };
  } catch (error) {
    if (!(error instanceof Error) || error instanceof TypeError) throw error;
    return { kind: 'refused', sentence: error.message };
  }
}

export async function readBook(port: Port): Promise<Book> {
  return bookOf(await port('readFile', {}));
}

/**
 * The button: reads the sheet anew, composes from what stands now and writes. Throws where lists or tables that the
 * block rests on say something else than in the form that was `seen`.
 */
export async function writeTask<Plan>(
  port: Port,
  task: Task<Plan>,
  seen: Form,
  answers: Answers,
  how: How = {},
): Promise<Written> {
  const now = await readBook(port);
  refuseOtherMeaning(seen.sources, now);
  const form = task.read(now, { ...seen.taken, ...answers });
  if (seen.standing && !form.standing)
    throw new Error('The table is gone from the file. Press “Read the spreadsheet again”.');
  refuseChanged(seen, form, answers);
  return write(port, task, now, form, answers, how);
}

/** What was answered on the page and changed in the sheet as well: nobody knows which is meant. */
function refuseChanged(seen: Form, now: Form, answers: Answers): void {
  const said = ({ inSheet }: Form, label: string): string => JSON.stringify(inSheet[label] ?? '');
  const changed = Object.keys(answers).filter((label) => said(seen, label) !== said(now, label));
  if (changed.length > 0) throw new Error(meanwhile(changed.map((label) => `“${label}”`).join(', ')));
}

function meanwhile(what: string): string {
  return `${what} was changed in the sheet after the page had read it. ${READ_AGAIN}`;
}

function refuseOtherMeaning({ rotation, ...lists }: Sources, now: Book): void {
  bindLists(lists, now);
  const table = rotation && rotationNow(now);
  if (!rotation || (table && blockMeaning(table) === blockMeaning(rotation))) return;
  throw new Error(meanwhile(`The rotation table on “${rotation.info.tab}”`));
}

async function write<Plan>(
  port: Port,
  task: Task<Plan>,
  now: Book,
  form: Form<Plan>,
  answers: Answers,
  { putBack }: How,
): Promise<Written> {
  const { plan, standing } = form;
  if (plan === undefined) throw new Error(`${form.questions.join(' ')} Nothing was written.`);
  const send = (place: Request<'writeBlock'>['place'], block: MergedBlock, expects?: string) =>
    port('writeBlock', requestOf(task, place, block, form.record !== undefined, expects));
  if (!standing) {
    const tabs = now.overview.tabs.map(({ name }) => name);
    const place = placeOf(task, tabs, answers);
    if (place.problem) throw new Error(`${place.problem} Nothing was written.`);
    if (place.at === 'new-tab') {
      const block = mergeBlock(task.name, task.compose(plan, { row: 1, column: 1 }));
      const before = task.ownTab?.(now)?.before;
      return send({ at: 'new-tab', tab: place.tab, ...(before !== undefined && { before }) }, block);
    }
    const { tab, row, column } = await port('readSelection', {});
    return send({ at: 'area', tab, row, column }, mergeBlock(task.name, task.compose(plan, { row, column })));
  }
  const { block: old, reading } = standing;
  const block = rebuildBlock(task.name, old, (corner) => task.compose(plan, corner), {
    putBack,
    reading,
  });
  const area = wholeOf(old);
  const memoryColumn = old.memory && old.info.column + old.info.columns;
  const place = { at: 'own', area, ...(memoryColumn && { memoryColumn }) } as const;
  const done = await send(place, block, areaFingerprint(now, area));
  const pointing = pointingCells(now.tabs, old.info, now.overview.blocks);
  const astray = astrayCells(pointing, old, block.cells);
  return { ...done, beside: filledBeside(now, old), kept: block.kept, astray };
}

function requestOf(
  { name }: Task,
  place: Request<'writeBlock'>['place'],
  { cells, styles, rules, widths, freezeRows = 0 }: MergedBlock,
  replaces: boolean,
  expects: string | undefined,
): Request<'writeBlock'> {
  return {
    name,
    place,
    cells,
    styles,
    rules,
    widths,
    freezeRows,
    ...(replaces && { replaces }),
    ...(expects !== undefined && { expects }),
  };
}

/** What would stay where it is, or move below the table, if it were written now. */
export function keptIfWritten<Plan>(task: Task<Plan>, { plan, standing }: Form<Plan>): Kept | undefined {
  if (plan === undefined || !standing) return undefined;
  try {
    const { block, reading } = standing;
    return rebuildBlock(task.name, block, (corner) => task.compose(plan, corner), { reading }).kept;
  } catch {
    // The button says what is wrong.
    return undefined;
  }
}

function refuseUnasked(asked: readonly string[], answers: Answers): void {
  const wrong = Object.keys(answers).filter(
    (label) => answers[label] !== undefined && !asked.includes(label),
  );
  if (wrong.length === 0) return;
  throw new TypeError(`The form does not ask for ${wrong.join(', ')}. It asks for: ${asked.join('; ')}.`);
}
