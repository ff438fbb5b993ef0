/**
 * A task from the sheet to the written block, with or without a page: read, plan, compose, merge, write, tell. The page
 * shows the form between the steps; a program gives all answers at once.
 */
import { type Book, bookAfter, bookOf, tabNamed } from '../block/book';
import { cellOnTab } from '../block/cell-on-tab';
import { fileFingerprint } from '../block/file-fingerprint';
import { isFilled } from '../block/is-filled';
import { pointingCells } from '../block/pointing-cells';
import type { BlockCell, CallName, FileChanged, Reply, Request, WriteDone } from '../contract';
import { bindLists } from '../lists/bind-lists';
import { blockMeaning } from '../table/block-meaning';
import { areaFingerprint } from './area-fingerprint';
import { astrayCells } from './merge/astray-cells';
import { type Kept, type MergedBlock, mergeBlock } from './merge/merge-block';
import { rebuildBlock } from './merge/rebuild-block';
import { placeLegend, placeOf, TAB_LABEL, tabBehind } from './place';
import { standingRotation } from './rotation/rotation-standing';
import { filledBeside, type Standing } from './standing';
import type { Answers, Form, Sources, Task } from './task';
import { readyCells } from './training/ready-cells';
import * as words from './words';

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
  /** The file as it stands now, other tabs as they were read; undefined where it is to be read again. */
  readonly after?: Book | undefined;
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
    const asked = task.read(book, answers);
    refuseUnasked([...asked.labels, placeLegend(task), TAB_LABEL], answers);
    const form =
      asked.plan === undefined && task.solve ? task.read(book, { ...task.solve(asked), ...answers }) : asked;
    if (form.plan === undefined) return { kind: 'questions', questions: form.questions };
    const done = writtenOr(await write(port, task, book, form, answers, how));
    return { kind: 'written', done, plan: form.plan };
  } catch (error) {
    if (!(error instanceof Error) || error instanceof TypeError) throw error;
    return { kind: 'refused', sentence: error.message };
  }
}

export async function readBook(port: Port): Promise<Book> {
  return bookOf(await port('readFile', {}));
}

/**
 * The button: composes from what stands now and writes. The script reads the file and writes where it is still the
 * `book` of the form that was `seen`; else it gives back what it has read, and all is composed anew from that. Throws
 * where lists or tables that the block rests on say something else by then.
 */
export async function writeTask<Plan>(
  port: Port,
  task: Task<Plan>,
  book: Book,
  seen: Form,
  answers: Answers,
  how: How = {},
): Promise<Written> {
  const file = fileFingerprint(book.overview.today, book.tabs);
  const done = await write(port, task, book, unchanged(task, book, seen, answers), answers, how, file);
  if (!('changed' in done)) return done;
  const now = bookOf(done.changed);
  return writtenOr(await write(port, task, now, unchanged(task, now, seen, answers), answers, how));
}

function writtenOr(done: Written | FileChanged): Written {
  if ('changed' in done) throw new Error(words.changedSince('The file'));
  return done;
}

/** The form that the file makes as it stands now. Throws where it says something else than what was `seen`. */
export async function readUnchanged<Plan, View extends object>(
  port: Port,
  task: Task<Plan, View>,
  seen: Form,
  answers: Answers,
): Promise<Form<Plan> & View> {
  return unchanged(task, await readBook(port), seen, answers);
}

function unchanged<Plan, View extends object>(
  task: Task<Plan, View>,
  now: Book,
  seen: Form,
  answers: Answers,
): Form<Plan> & View {
  refuseOtherMeaning(seen.sources, now);
  const form = task.read(now, { ...seen.taken, ...answers });
  if (seen.standing && !form.standing) throw new Error(words.TABLE_GONE);
  if (form.standing && !seen.standing && !seen.record)
    throw new Error(words.meanwhileStands(form.standing.area.tab));
  refuseChanged(seen, form, answers);
  return form;
}

/** What was answered on the page and changed in the sheet as well: nobody knows which is meant. */
function refuseChanged(seen: Form, now: Form, answers: Answers): void {
  const said = ({ inSheet }: Form, label: string): string => JSON.stringify(inSheet[label] ?? '');
  const changed = Object.keys(answers).filter((label) => said(seen, label) !== said(now, label));
  if (changed.length > 0)
    throw new Error(words.changedSince(changed.map((label) => `“${label}”`).join(', ')));
}

function refuseOtherMeaning({ rotation, ...lists }: Sources, now: Book): void {
  bindLists(lists, now);
  const table = rotation && standingRotation(now)?.block;
  if (!rotation || (table && blockMeaning(table) === blockMeaning(rotation))) return;
  throw new Error(words.changedSince(words.rotationTable(rotation.info.tab)));
}

async function write<Plan>(
  port: Port,
  task: Task<Plan>,
  now: Book,
  form: Form<Plan>,
  answers: Answers,
  { putBack }: How,
  file?: string,
): Promise<Written | FileChanged> {
  const { plan, standing, first } = form;
  if (plan === undefined) throw new Error(`${form.questions.join(' ')} Nothing was written.`);
  const send = async (
    place: Request<'writeBlock'>['place'],
    block: MergedBlock,
    more: Pick<Request<'writeBlock'>, 'file' | 'timeZone' | 'expects'>,
  ): Promise<Written | FileChanged> => {
    const done = await port('writeBlock', {
      ...requestOf(task, place, block, form.record !== undefined),
      ...more,
    });
    return 'changed' in done ? done : { ...done, after: bookAfter(now, done) };
  };
  const asRead = file === undefined ? {} : { file, timeZone: now.overview.timeZone };
  if (!standing) {
    const record = first?.read(now, {});
    if (first && record?.plan !== undefined) {
      const kept = await write(port, first, now, record, {}, {}, file);
      const { first: _, ...rest } = form;
      return 'changed' in kept ? kept : write(port, task, kept.after ?? now, rest, answers, {});
    }
    const place = placeOf(task, now.overview.tabs, answers);
    if (place.problem) throw new Error(`${place.problem} Nothing was written.`);
    if (place.at === 'new-tab') {
      const block = mergeBlock(task.name, task.compose(plan, { row: 1, column: 1 }));
      const before = tabBehind(now, task.name);
      return send({ at: 'new-tab', tab: place.tab, ...(before !== undefined && { before }) }, block, asRead);
    }
    const { tab, row, column } = await port('readSelection', {});
    const block = mergeBlock(task.name, task.compose(plan, { row, column }));
    return send({ at: 'area', tab, row, column }, block, asRead);
  }
  const { area, memoryColumn } = standing;
  const block = rebuilt(task, plan, standing, putBack);
  const place = { at: 'own', area, memoryColumn, frozenRows: frozenRows(standing, block) } as const;
  const expects = areaFingerprint(now, area);
  const done = await send(place, withLooksFrom(standing, block), { ...asRead, expects });
  if ('changed' in done) return done;
  const astray = astrayIn(now, standing, block);
  return { ...done, beside: filledBeside(now, standing), kept: block.keptThen, astray };
}

function rebuilt<Plan>(
  task: Task<Plan>,
  plan: Plan,
  { block, reading }: Standing,
  putBack?: boolean,
): MergedBlock {
  return rebuildBlock(task.name, block, (corner) => task.compose(plan, corner), { putBack, reading });
}

function astrayIn(book: Book, { block: old }: Standing, { ids }: MergedBlock): readonly string[] {
  const ours = [...book.overview.blocks, ...readyCells(book)];
  return astrayCells(pointingCells(book.tabs, old.info, ours), old, ids);
}

/** How many rows stand frozen, if they are those that were frozen with the block: down to the same one as now. */
function frozenRows({ block }: Standing, { ids, freezeRows = 0 }: MergedBlock): number | undefined {
  const last = ids[freezeRows - block.info.row];
  const row = block.memory?.rows.findIndex((one) => one !== undefined && one.id === last) ?? -1;
  return row < 0 ? undefined : block.info.row + row;
}

/** Looks are taken from the sheet, where the memory may stand among the columns. */
function withLooksFrom(
  { block: { info }, memoryColumn = Infinity }: Standing,
  block: MergedBlock,
): MergedBlock {
  const beyond = memoryColumn - info.column;
  if (beyond >= info.columns) return block;
  const moved = (cell: BlockCell): BlockCell =>
    cell.from && cell.from[1] >= beyond ? { ...cell, from: [cell.from[0], cell.from[1] + 1] } : cell;
  return { ...block, cells: block.cells.map((row) => row.map(moved)) };
}

function requestOf(
  { name }: Task,
  place: Request<'writeBlock'>['place'],
  { cells, styles, rules, widths, freezeRows = 0, freezeColumns }: MergedBlock,
  replaces: boolean,
): Request<'writeBlock'> {
  return {
    name,
    place,
    cells,
    styles,
    rules,
    widths,
    freezeRows,
    freezeColumns,
    ...(replaces && { replaces }),
  };
}

/** What becomes of the grower's if it were written now. */
export interface Outlook {
  /** The first filled cell beside the table. */
  readonly beside: string | undefined;
  /** What would stay where it is, or move below the table. */
  readonly kept: Kept;
  /** Cells elsewhere that would mean something else. */
  readonly astray: readonly string[];
  /** Filled cells where the table would grow: while they hold something nothing is written. */
  readonly taken: readonly string[];
}

export function ifWritten<Plan>(
  task: Task<Plan>,
  { plan, standing }: Form<Plan>,
  book: Book,
): Outlook | undefined {
  if (plan === undefined || !standing) return undefined;
  try {
    const block = rebuilt(task, plan, standing);
    const astray = astrayIn(book, standing, block);
    const [beside, taken] = [filledBeside(book, standing), takenBy(book, standing, block)];
    return { beside, kept: block.kept, astray, taken };
  } catch {
    // The button says what is wrong.
    return undefined;
  }
}

function takenBy(book: Book, { area }: Standing, { cells }: MergedBlock): readonly string[] {
  const tab = tabNamed(book, area.tab);
  const isOld = (r: number, c: number): boolean => r < area.rows && c < area.columns;
  return cells.flatMap((row, r) =>
    row.flatMap((_, c) => {
      const [above, left] = [area.row - 1 + r, area.column - 1 + c];
      return tab && !isOld(r, c) && isFilled(tab, above, left)
        ? [cellOnTab(tab.name, above + 1, left + 1)]
        : [];
    }),
  );
}

function refuseUnasked(asked: readonly string[], answers: Answers): void {
  const wrong = Object.keys(answers).filter(
    (label) => answers[label] !== undefined && !asked.includes(label),
  );
  if (wrong.length === 0) return;
  throw new TypeError(words.notAsked(wrong.join(', '), asked.join('; ')));
}
