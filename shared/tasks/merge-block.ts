/**
 * Writes a block anew over the one that stands, without losing what the grower typed: a merge of what was written
 * (the memory's marks), what stands, and what is wanted now.
 *
 *   stands as marked               written anew
 *   stands otherwise               the grower typed there: it is kept, and told
 *   blank where something was      written anew: nothing is lost by that
 *   no such row or column any more what was typed there moves, row by row, below the table
 *   no memory (version 0.1.0)      nothing is guessed: what the new table does not hold moves below it
 *
 * With `putBack`, what was typed over something of ours gives way to it, and is told.
 *
 * In a cell that is there to be typed into, another value from the page takes the place of what stands, which then
 * moves below the table if it was typed since the last write.
 */
import { cellA1 } from '../block/a1';
import { BLANK, text } from '../block/cells';
import { SETTING_ID } from '../block/compose-block';
import {
  ANSWER_MARK,
  BLANK_MARK,
  bareMark,
  isLeftOver,
  isMemory,
  isYours,
  markOfCell,
  markOfStanding,
  memoryColumn,
} from '../block/memory';
import type { BlockContent } from '../block/read-block';
import { rowIds } from '../block/row-ids';
import type { BlockCell, BlockStyle, WireCell } from '../contract';
import { shiftFormula } from '../table/shift-formula';
import { alignColumns } from './align-columns';
import { shownCell } from './cell-value';
import type { ComposedBlock } from './composed-block';
import { keptCell } from './kept-cell';

const KEPT_BELOW = 'Kept from this table as it was before';
/** Ids of the rows below the table; what stands in them is the grower's. */
const KEPT_ID = '!';

/** Something of the grower's that stays, named: `B7 (12)`. */
export interface Kept {
  readonly inPlace: readonly string[];
  readonly below: readonly string[];
  /** What gave way to something of ours, as the grower asked for. */
  readonly gaveWay: readonly string[];
}

export interface MergedBlock extends ComposedBlock {
  /** Differs from that of the block that stands; in the head of the last column. */
  readonly stamp: string;
  readonly kept: Kept;
}

/** For each column that stands, the one it was written as. */
type Columns = ReturnType<typeof alignColumns>;

interface Cell {
  readonly row: number;
  readonly column: number;
  readonly value: WireCell;
  readonly formula: string;
}

/** `name`: the block's named range. `old`: the block as it stands in the sheet; absent: there is none. */
export function mergeBlock(
  name: string,
  want: ComposedBlock,
  old?: BlockContent,
  putBack = false,
): MergedBlock {
  const ids = [...rowIds(want.cells, want.ids)];
  const cells = want.cells.map((row) => [...row]);
  const styles = want.styles.map((row) => [...row]);
  const kept = old ? keepTyped(old, { ...want, cells, styles }, ids, putBack) : { inPlace: [], left: [] };
  const inPlace = kept.inPlace.map((cell) => named(old!, cell));
  const below = old ? addBelow(old, kept.left, cells, styles, ids) : [];
  // What stays in place of something of ours is remembered as that, so that it stays the next time too.
  const ours = cells.map((row, r) =>
    row.map((cell, c) => (styles[r]?.[c] === 'input' ? cell : (want.cells[r]?.[c] ?? cell))),
  );
  return {
    ...withMemory(name, { ...want, cells, styles, ids }, old?.memory?.stamp, ours),
    kept: { inPlace: putBack ? [] : inPlace, below, gaveWay: putBack ? inPlace : [] },
  };
}

/**
 * A block with its memory as its last column. `before`: the stamp that stands now, which the new one differs from.
 * `remembered`: the cells as the memory is to know them, where that is not as they are written.
 */
export function withMemory<Block extends ComposedBlock>(
  name: string,
  block: Block,
  before = '',
  remembered: readonly (readonly BlockCell[])[] = block.cells,
) {
  const { cells, styles, widths } = block;
  const ids = rowIds(cells, block.ids);
  const { stamp, texts } = memoryColumn(name.replace(/^SOUNDER_/, ''), remembered, styles, ids, before);
  const across = cells[0]?.map((_, c) => widths[c] ?? 0) ?? [];
  return {
    ...block,
    cells: cells.map((row, r) => [...row, text(texts[r] ?? '')]),
    styles: styles.map((row): BlockStyle[] => [...row, 'memory']),
    widths: [...across, 0],
    stamp,
  };
}

/** Puts what was typed into its place in `want`; gives what has none, and what was kept where something of ours stood. */
function keepTyped(old: BlockContent, want: ComposedBlock, ids: readonly string[], putBack: boolean) {
  const rowOf = new Map(ids.map((id, r) => [id, r]));
  const columns = alignColumns(old, want.cells[0]?.length ?? 0);
  const inPlace: Cell[] = [];
  const loose: Cell[] = [];
  const isAnswered = answersIn(old, columns);
  // What the new block holds beside what stands in its place already.
  const wanted = want.cells.map((row) => row.map(markOfCell));
  const spare = countedMarks(wanted);
  for (const [r, row] of old.values.entries()) {
    const memory = old.memory?.rows[r];
    const isOwn = old.memory && memory !== undefined && !isLeftOver(old.memory, memory);
    const at = isOwn ? rowOf.get(memory.id) : undefined;
    if (isOwn && at === undefined && isTakenAway(old, r, columns)) continue;
    for (const [c, value] of row.entries()) {
      const cell: Cell = { row: r, column: c, value, formula: old.formulas[r]?.[c] ?? '' };
      const to = columns[c];
      const mark = to === undefined ? undefined : memory?.marks[to];
      const now = at === undefined || to === undefined ? undefined : want.cells[at]?.[to];
      const standing = markOfStanding(value, cell.formula);
      const isWanted = now !== undefined && wanted[at!]![to!] === standing;
      if (isWanted) take(spare, standing);
      const isRoom = mark === ANSWER_MARK || (now?.k === 'blank' && now.answer === true);
      if (isNothing(cell) || isAnswered(r, c)) continue;
      const isTyped = mark === undefined || bareMark(mark) !== standing;
      if (!isTyped && !isYours(mark)) continue;
      if (now === undefined || mark === undefined || isRoom) loose.push(cell);
      else {
        const end = settle(want, [at!, to!], cell, { mark, isTyped, isWanted, putBack });
        if (end === 'in place of ours') inPlace.push(cell);
        else if (end === 'gives way') loose.push(cell);
      }
    }
  }
  return {
    inPlace,
    left: loose.filter(({ value, formula }) => !take(spare, markOfStanding(value, formula))),
  };
}

/**
 * A row that begins with a cell of the grower's, or a setting, in which nothing was typed since it was written, and
 * that the new block does not have: taken away on the page, and meant.
 */
function isTakenAway({ values, formulas, memory }: BlockContent, r: number, columns: Columns): boolean {
  const marks = memory?.rows[r]?.marks ?? [];
  const isAsWritten = (value: WireCell, c: number): boolean => {
    const mark = marks[columns[c] ?? -1] ?? '';
    return mark === ANSWER_MARK || bareMark(mark) === markOfStanding(value, formulas[r]?.[c] ?? '');
  };
  const id = memory?.rows[r]?.id ?? KEPT_ID;
  const isOnPage = id.startsWith(SETTING_ID) || (isYours(marks[0] ?? '') && !id.startsWith(KEPT_ID));
  return isOnPage && (values[r] ?? []).every(isAsWritten);
}

function isNothing({ value, formula }: Cell): boolean {
  // A formula that lost what it pointed to has nothing left to keep.
  return (value === '' && formula === '') || formula.includes('#REF!') || isMemory(value);
}

interface Marked {
  readonly mark: string;
  readonly isTyped: boolean;
  /** The new block holds the same there. */
  readonly isWanted: boolean;
  readonly putBack: boolean;
}

/** Settles what stands in a cell that the new block has too. */
function settle(
  { cells, styles }: ComposedBlock,
  [row, column]: readonly [row: number, column: number],
  cell: Cell,
  { mark, isTyped, isWanted, putBack }: Marked,
): 'stays' | 'in place of ours' | 'gives way' {
  const now = cells[row]![column]!;
  const stays = keptCell(cell.value, shiftFormula(cell.formula, row - cell.row));
  const from = [cell.row, cell.column] as [number, number];
  const put = (kept: BlockCell): void => {
    cells[row]![column] = {
      ...('format' in now && now.format && 'format' in kept ? { format: now.format } : {}),
      ...kept,
      from,
    };
  };
  if (isWanted) {
    if (now.k !== 'f') put(now);
    return 'stays';
  }
  if (!isTyped) return now.k === 'blank' ? 'gives way' : 'stays';
  if (styles[row]?.[column] !== 'input') {
    if (!putBack) put(stays);
    return 'in place of ours';
  }
  const isSameNumber = now.k === 'n' && cell.formula !== '' && now.v === cell.value;
  const isUnaware = now.k === 'blank' || markOfCell(now) === bareMark(mark);
  if (!isSameNumber && !isUnaware) return 'gives way';
  put(stays);
  return 'stays';
}

/** A call of a cell function of ours, which spills. */
const CALL = /^=[A-Z]+_[A-Z_]+\(/i;
/** What it shows where it has no room for its answer: in Google Sheets the first, in the preview the second. */
const NO_ROOM: readonly unknown[] = ['#REF!', '#SPILL!'];

/**
 * Whether what stands in the room for an answer is the answer: its function stands above it in its column, or left of
 * the room's first row, and has room. Else somebody typed there.
 */
function answersIn(
  { values, formulas, memory }: BlockContent,
  columns: Columns,
): (row: number, column: number) => boolean {
  // A row that was put in is room where the row below it is.
  const isRoom = (r: number, c: number): boolean => {
    const row = memory?.rows.slice(Math.max(r, 0)).find((one) => one !== undefined);
    return r >= 0 && row?.marks[columns[c] ?? -1] === ANSWER_MARK;
  };
  const answers = (r: number, c: number): boolean =>
    CALL.test(formulas[r]?.[c] ?? '') && !NO_ROOM.includes(values[r]?.[c]);
  return (row, column) => {
    if (!isRoom(row, column)) return false;
    let top = row;
    while (isRoom(top - 1, column)) top--;
    let first = column;
    while (isRoom(top, first - 1)) first--;
    return answers(top - 1, column) || answers(top, first - 1);
  };
}

function countedMarks(marks: readonly (readonly string[])[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const mark of marks.flat()) counts.set(mark, (counts.get(mark) ?? 0) + 1);
  return counts;
}

/** Takes one of that mark out of those that are counted; false where none is left. */
function take(counts: Map<string, number>, mark: string): boolean {
  const count = counts.get(mark) ?? 0;
  counts.set(mark, count - 1);
  return count > 0;
}

/** Adds rows below the block for what has no other place, each cell in its column. */
function addBelow(
  old: BlockContent,
  left: readonly Cell[],
  cells: BlockCell[][],
  styles: BlockStyle[][],
  ids: string[],
): readonly string[] {
  const wasBelow = (row: number): boolean => old.memory?.rows[row]?.id.startsWith(KEPT_ID) ?? false;
  const all = left.filter(({ value }) => value !== KEPT_BELOW);
  if (all.length === 0) return [];
  const width = Math.max(cells[0]?.length ?? 0, ...all.map(({ column }) => column + 1));
  const add = (row: readonly BlockCell[], style: BlockStyle): void => {
    cells.push([...row]);
    styles.push(row.map(() => style));
    ids.push(`${KEPT_ID}${cells.length}`);
  };
  add([BLANK], 'plain');
  add([text(KEPT_BELOW)], 'heading');
  for (const row of new Set(all.map((cell) => cell.row))) {
    const at = cells.length;
    const line = Array.from({ length: width }, (): BlockCell => BLANK);
    for (const { column, value, formula } of all.filter((cell) => cell.row === row)) {
      line[column] = { ...keptCell(value, shiftFormula(formula, at - row)), from: [row, column] };
    }
    add(line, 'input');
  }
  for (const [r, row] of cells.entries()) {
    while (row.length < width) row.push(BLANK);
    while (styles[r]!.length < width) styles[r]!.push('plain');
  }
  return all.filter(({ row }) => !wasBelow(row)).map((cell) => named(old, cell));
}

function named({ info }: BlockContent, { row, column, value, formula }: Cell): string {
  return `${cellA1(info.row + row, info.column + column)} (${formula === '' ? shownCell(value) : formula})`;
}

/**
 * The block as its readers want it: with our own words where the grower typed over them, without what was typed where
 * we left a blank, and without the rows that were kept below it or left over by a write that did not end.
 */
export function asWritten(block: BlockContent, wordOf: ReadonlyMap<string, string>): BlockContent {
  const { memory } = block;
  if (!memory) return block;
  const isOwn = (r: number): boolean => {
    const row = memory.rows[r];
    return !row || (!row.id.startsWith(KEPT_ID) && !isLeftOver(memory, row));
  };
  const rows = block.values.map((_, r) => r).filter(isOwn);
  const columns = alignColumns(block, memory.rows[0]?.marks.length ?? 0);
  const wordAt = (r: number, c: number): string | undefined => {
    const mark = memory.rows[r]?.marks[columns[c] ?? -1];
    if (mark === BLANK_MARK) return '';
    return mark === undefined || isYours(mark) ? undefined : wordOf.get(mark);
  };
  return {
    info: { ...block.info, rows: rows.length },
    values: rows.map((r) => block.values[r]!.map((value, c) => wordAt(r, c) ?? value)),
    formulas: rows.map((r) =>
      block.formulas[r]!.map((formula, c) => (wordAt(r, c) === undefined ? formula : '')),
    ),
    memory: { ...memory, rows: rows.map((r) => memory.rows[r]) },
  };
}
