/**
 * Writes a block anew over the one that stands, without losing what the grower typed: a merge of what was written
 * (the memory's marks), what stands, and what is wanted now.
 *
 *   stands as marked               written anew
 *   stands otherwise               the grower typed there: it is kept, and told
 *   blank where something was      written anew: nothing is lost by that
 *   a column that was put in       stays a column of the grower's, in its place (place-columns.ts)
 *   no such row or column any more what was typed there moves, row by row, below the table
 *   no memory (version 0.1.0)      nothing is guessed: what the new table does not hold moves below it
 *
 * With `putBack`, what was typed over something of ours gives way to it, and is told.
 *
 * In a cell that is there to be typed into, another value from the page takes the place of what stands, which then
 * moves below the table if it was typed since the last write.
 */
import { cellA1 } from '../block/a1';
import { alignColumns, type Columns } from '../block/align-columns';
import { BLANK, text } from '../block/cells';
import { NAMING_CELLS, RECORD_ID, SETTING_ID } from '../block/compose-block';
import type { ComposedBlock } from '../block/composed-block';
import {
  ANSWER_MARK,
  BLANK_MARK,
  bareMark,
  isLeftOver,
  isYours,
  markOfCell,
  markOfStanding,
  memoryColumn,
} from '../block/memory';
import type { BlockContent } from '../block/read-block';
import { rowIds } from '../block/row-ids';
import type { BlockCell, BlockStyle, WireCell } from '../contract';
import { shiftFormula } from '../table/shift-formula';
import { answersIn } from './answers-in';
import { shownCell } from './cell-value';
import { keptCell } from './kept-cell';
import { fillOwn, ownColumns } from './own-columns';
import { placeColumns, type Slot, slotsOf } from './place-columns';
import { type StandingCell as Cell, isNothing } from './standing-cell';

export const KEPT_BELOW = 'Kept from this table as it was before';
/** Ids of the rows below the table; what stands in them is the grower's. */
const KEPT_ID = '!';

/** Something of the grower's that stays, named: `B7 (12)`. */
export interface Kept {
  readonly inPlace: readonly string[];
  readonly below: readonly string[];
  /** What gave way to something of ours, as the grower asked for. */
  readonly gaveWay?: readonly string[];
}

export interface MergedBlock extends ComposedBlock {
  /** Differs from that of the block that stands; in the head of the last column. */
  readonly stamp: string;
  readonly ids: readonly string[];
  readonly kept: Kept;
}

type Grid = { cells: BlockCell[][]; styles: BlockStyle[][] };

/** `name`: the block's named range. `old`: the block as it stands in the sheet; absent: there is none. */
export function mergeBlock(
  name: string,
  want: ComposedBlock,
  old?: BlockContent,
  putBack = false,
): MergedBlock {
  if (!old) return { ...withMemory(name, want), kept: { inPlace: [], below: [] } };
  const ids = [...rowIds(want.cells, want.ids)];
  const rows = rowsAgainIn(old, ids);
  const columns = alignColumns(old, want.cells[0]?.length ?? 0);
  const { inPlace, left, cells, kept } = keepTyped(old, want, rows, columns, putBack);
  const hasRow = ({ row }: Cell): boolean => rows[row] !== undefined;
  const own = ownColumns(old, want, columns, left.filter(hasRow));
  const isInOwn = (cell: Cell): boolean => hasRow(cell) && own.has(cell.column);
  const slots = slotsOf(columns, want.cells[0]?.length ?? 0, (c) => own.has(c), !old.memory?.stamp);
  const placed = placeColumns({ ...want, cells }, slots, old.info.column, kept);
  fillOwn(old, placed.cells, slots, rows, ids, left.filter(isInOwn));
  keepLooks(placed.cells, slots, rows, columns, ids);
  // What stays in place of something of ours is remembered as that, so that it stays the next time too.
  const remembered = cells.map((row, r) =>
    row.map((cell, c) =>
      !want.records && want.styles[r]?.[c] === 'input' ? cell : (want.cells[r]?.[c] ?? cell),
    ),
  );
  for (const [r, c] of want.typed ?? []) remembered[r]![c] = BLANK;
  const places = columns.map((written, c) =>
    slots.findIndex((slot) => ('own' in slot ? slot.own === c : slot.ours === written)),
  );
  const below = addBelow(
    old,
    left.filter((cell) => !isInOwn(cell)),
    placed,
    ids,
    { slots, places, columns, isRecord: want.records === true },
  );
  const ofOurs = <Value>(row: readonly Value[]): Value[] => [
    ...slots
      .flatMap((slot, c) => ('ours' in slot ? [{ ours: slot.ours, value: row[c]! }] : []))
      .sort((a, b) => a.ours - b.ours)
      .map(({ value }) => value),
    ...row.slice(slots.length),
  ];
  const memory = {
    cells: placed.cells.map((row, r) => remembered[r] ?? ofOurs(row)),
    styles: placed.styles.map(ofOurs),
  };
  const over = inPlace.map((cell) => named(old, cell));
  return {
    ...withMemory(name, { ...want, ...placed, ids }, old.memory?.stamp, memory),
    kept: putBack ? { inPlace: [], below, gaveWay: over } : { inPlace: over, below },
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
  remembered: Pick<ComposedBlock, 'cells' | 'styles'> = block,
) {
  const { cells, styles, widths } = block;
  const ids = rowIds(cells, block.ids);
  const kind = name.replace(/^SOUNDER_/, '');
  const { stamp, texts } = memoryColumn(kind, remembered.cells, remembered.styles, ids, before);
  const across = cells[0]?.map((_, c) => widths[c] ?? 0) ?? [];
  return {
    ...block,
    cells: cells.map((row, r) => [...row, text(texts[r] ?? '')]),
    styles: styles.map((row): BlockStyle[] => [...row, 'memory']),
    widths: [...across, 0],
    ids,
    stamp,
  };
}

/** The row of the new block that each row that stands is; undefined where there is none. */
function rowsAgainIn({ values, memory }: BlockContent, ids: readonly string[]): (number | undefined)[] {
  const rowOf = new Map(ids.map((id, r) => [id, r]));
  return values.map((_, r) => {
    const row = memory?.rows[r];
    return memory && row && !isLeftOver(memory, row) ? rowOf.get(row.id) : undefined;
  });
}

/** Puts what was typed into its place in `want`; gives what has none, and what was kept where something of ours stood. */
function keepTyped(
  old: BlockContent,
  want: ComposedBlock,
  rows: readonly (number | undefined)[],
  columns: Columns,
  putBack: boolean,
) {
  const cells = want.cells.map((row) => [...row]);
  const kept = new Set<BlockCell>();
  const inPlace: Cell[] = [];
  const loose: Cell[] = [];
  const isAnswered = answersIn(old, columns);
  // What the new block holds beside what stands in its place already.
  const wanted = want.cells.map((row) => row.map(markOfCell));
  const spare = countedMarks(want.records ? [] : wanted);
  for (const [r, row] of old.values.entries()) {
    const memory = old.memory?.rows[r];
    const isOwn = old.memory && memory !== undefined && !isLeftOver(old.memory, memory);
    const at = rows[r];
    if (isOwn && at === undefined && isTakenAway(old, r, columns)) continue;
    const isHeld = !want.records || (memory?.id.startsWith(KEPT_ID) ?? false);
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
      if (!isTyped && !(isHeld && isYours(mark))) continue;
      if (now === undefined || mark === undefined || isRoom) loose.push(cell);
      else {
        const end = settle({ ...want, cells }, kept, [at!, to!], cell, { mark, isTyped, isWanted, putBack });
        if (end === 'in place of ours') inPlace.push(cell);
        else if (end === 'gives way') loose.push(cell);
      }
    }
  }
  return {
    inPlace,
    left: loose.filter(({ value, formula }) => !take(spare, markOfStanding(value, formula))),
    cells,
    kept,
  };
}

/** A record that the grower coloured keeps its looks wherever it goes. */
function keepLooks(
  cells: BlockCell[][],
  slots: readonly Slot[],
  rows: readonly (number | undefined)[],
  columns: Columns,
  ids: readonly string[],
): void {
  for (const [r, at] of rows.entries()) {
    if (at === undefined || !ids[at]?.startsWith(RECORD_ID)) continue;
    for (const [place, slot] of slots.entries()) {
      const column = 'ours' in slot ? columns.indexOf(slot.ours) : slot.own;
      const cell = cells[at]?.[place];
      if (cell && !cell.from && column >= 0) cells[at]![place] = { ...cell, from: [r, column] };
    }
  }
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
  keptCells: Set<BlockCell>,
  [row, column]: readonly [row: number, column: number],
  cell: Cell,
  { mark, isTyped, isWanted, putBack }: Marked,
): 'stays' | 'in place of ours' | 'gives way' {
  const now = cells[row]![column]!;
  const stays = keptCell(cell.value, shiftFormula(cell.formula, row - cell.row));
  const from = [cell.row, cell.column] as [number, number];
  const put = (kept: BlockCell): void => {
    const cell = {
      ...('format' in now && now.format && 'format' in kept ? { format: now.format } : {}),
      ...kept,
      from,
    };
    cells[row]![column] = cell;
    keptCells.add(cell);
  };
  if (isWanted) {
    if (now.k !== 'f') put(now);
    return 'stays';
  }
  if (!isTyped) return now.k === 'blank' ? 'gives way' : 'stays';
  // A formula that shows what is to be written stays that formula.
  if (cell.formula !== '' && markOfCell(now) === markOfStanding(cell.value, '')) {
    put(stays);
    return 'stays';
  }
  if (styles[row]?.[column] !== 'input') {
    if (!putBack) put(stays);
    return 'in place of ours';
  }
  const isUnaware = now.k === 'blank' || markOfCell(now) === bareMark(mark);
  if (!isUnaware) return 'gives way';
  put(stays);
  return 'stays';
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

interface Placing {
  readonly slots: readonly Slot[];
  /** Where each column that stands comes to stand; -1 for nowhere. */
  readonly places: readonly number[];
  readonly columns: Columns;
  /** Lines of records begin with the cells that say which it was. */
  readonly isRecord: boolean;
}

/** Adds rows below the block for what has no other place, each cell in its column. */
function addBelow(
  old: BlockContent,
  left: readonly Cell[],
  { cells, styles }: Grid,
  ids: string[],
  { slots, places, columns, isRecord }: Placing,
): readonly string[] {
  const idOfRow = (row: number): string => old.memory?.rows[row]?.id ?? '';
  const all = left.filter(({ value }) => value !== KEPT_BELOW);
  if (all.length === 0) return [];
  const placeOf = ({ column }: Cell): number => (places[column]! < 0 ? column : places[column]!);
  const width = Math.max(slots.length, ...all.map((cell) => placeOf(cell) + 1));
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
    const naming = isRecord && idOfRow(row).startsWith(RECORD_ID) ? NAMING_CELLS : 0;
    for (let w = 0; w < naming; w++) {
      line[slots.findIndex((slot) => 'ours' in slot && slot.ours === w)] = keptCell(
        old.values[row]?.[columns.indexOf(w)] ?? '',
        '',
      );
    }
    for (const cell of all.filter((one) => one.row === row)) {
      const { column, value, formula } = cell;
      line[placeOf(cell)] = { ...keptCell(value, shiftFormula(formula, at - row)), from: [row, column] };
    }
    add(line, 'input');
  }
  for (const [r, row] of cells.entries()) {
    while (row.length < width) row.push(BLANK);
    while (styles[r]!.length < width) styles[r]!.push('plain');
  }
  return all.filter(({ row }) => !idOfRow(row).startsWith(KEPT_ID)).map((cell) => named(old, cell));
}

function named({ info }: BlockContent, { row, column, value, formula }: Cell): string {
  return `${cellA1(info.row + row, info.column + column)} (${formula === '' ? shownCell(value) : formula})`;
}

/**
 * The block as its readers want it: with our own words where the grower typed over them, without what was typed where
 * we left a blank, and without the rows that were kept below it or left over by a write that did not end. Columns stand
 * as they were written, without those of the grower's.
 */
export function asWritten(block: BlockContent, wordOf: ReadonlyMap<string, string>): BlockContent {
  const { memory } = block;
  if (!memory) return block;
  const isOwn = (r: number): boolean => {
    const row = memory.rows[r];
    return !row || (!row.id.startsWith(KEPT_ID) && !isLeftOver(memory, row));
  };
  const rows = block.values.map((_, r) => r).filter(isOwn);
  const columns = alignColumns(block, 0);
  const written = Math.max(0, ...rows.map((r) => memory.rows[r]?.marks.length ?? 0));
  const order = Array.from({ length: written }, (_, w) => columns.indexOf(w));
  const wordAt = (r: number, c: number): string | undefined => {
    const mark = memory.rows[r]?.marks[columns[c] ?? -1];
    if (mark === BLANK_MARK) return '';
    return mark === undefined || isYours(mark) ? undefined : wordOf.get(mark);
  };
  return {
    info: { ...block.info, rows: rows.length },
    values: rows.map((r) => order.map((c) => wordAt(r, c) ?? block.values[r]![c] ?? '')),
    formulas: rows.map((r) =>
      order.map((c) => (wordAt(r, c) === undefined ? (block.formulas[r]![c] ?? '') : '')),
    ),
    memory: { ...memory, rows: rows.map((r) => memory.rows[r]) },
  };
}
