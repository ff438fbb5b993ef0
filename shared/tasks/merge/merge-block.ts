/**
 * Writes a block anew over the one that stands, without losing what the grower typed: a merge of what was written
 * (the memory's marks), what stands, and what is wanted now.
 *
 *   stands as marked               written anew
 *   stands otherwise               the grower typed there: it is kept, and told
 *   blank where something was      written anew: nothing is lost by that
 *   a column that was put in       stays a column of the grower's, in its place (place-columns.ts)
 *   no such row or column any more what was typed there moves, row by row, below the table
 *   no memory, or an earlier one   nothing is guessed: what the new table does not hold moves below it
 *
 * With `putBack`, what was typed over something of ours gives way to it, and is told.
 *
 * In a cell that is there to be typed into, another value from the page takes the place of what stands, which then
 * moves below the table if it was typed since the last write.
 */
import type { Columns } from '../../block/align-columns';
import { BLANK, text } from '../../block/cells';
import { isRecordId } from '../../block/compose-block';
import type { ComposedBlock } from '../../block/composed-block';
import { isLeftOver, memoryColumn } from '../../block/memory';
import type { BlockContent } from '../../block/read-block';
import { rowIds } from '../../block/row-ids';
import type { BlockCell, BlockStyle } from '../../contract';
import { columnPlaces } from './column-places';
import { keepTyped } from './keep-typed';
import { fillOwn, ownColumns } from './own-columns';
import { placeColumns, type Slot, slotsOf } from './place-columns';
import { addBelow, named } from './rows-below';
import type { StandingCell as Cell, Stay } from './standing-cell';

/** Something of the grower's that stays, named by the cell in which it stands: `B7 (12)`. */
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
  /** By the cells before the write, and by those after it. */
  readonly kept: Kept;
  readonly keptThen: Kept;
}

/** `name`: the block's named range. `old`: the block as it stands in the sheet; absent: there is none. */
export function mergeBlock(
  name: string,
  want: ComposedBlock,
  old?: BlockContent,
  putBack = false,
): MergedBlock {
  if (!old) return { ...withMemory(name, want), kept: NOTHING, keptThen: NOTHING };
  const ids = [...rowIds(want.cells, want.ids)];
  const rows = rowsAgainIn(old, ids);
  const { columns, isNew, placeOf } = columnPlaces(old, want, rows);
  const { inPlace, left, cells, kept } = keepTyped(old, want, rows, placeOf, putBack);
  const hasRow = ({ row }: Cell): boolean => rows[row] !== undefined;
  const own = ownColumns(old, want, columns, left.filter(hasRow));
  const isInOwn = (cell: Cell): boolean => hasRow(cell) && own.has(cell.column);
  const isOwn = (c: number): boolean => own.has(c);
  const slots = slotsOf(columns, want.cells[0]?.length ?? 0, isOwn, isNew, !old.memory?.stamp);
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
  const over = inPlace.map(
    ([cell, row, column]): Stay => [
      cell,
      row,
      slots.findIndex((slot) => 'ours' in slot && slot.ours === column),
    ],
  );
  const keptAs = (name: (stay: Stay) => string): Kept => {
    const [there, under] = [over.map(name), below.map(name)];
    return putBack ? { inPlace: [], below: under, gaveWay: there } : { inPlace: there, below: under };
  };
  return {
    ...withMemory(name, { ...want, ...placed, ids }, old.memory?.stamp, memory),
    kept: keptAs(([cell]) => named(old, cell)),
    keptThen: keptAs(([cell, row, column]) => named(old, { ...cell, row, column })),
  };
}

const NOTHING: Kept = { inPlace: [], below: [] };

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

/** A record that the grower coloured keeps its looks wherever it goes. */
function keepLooks(
  cells: BlockCell[][],
  slots: readonly Slot[],
  rows: readonly (number | undefined)[],
  columns: Columns,
  ids: readonly string[],
): void {
  for (const [r, at] of rows.entries()) {
    if (at === undefined || !isRecordId(ids[at])) continue;
    for (const [place, slot] of slots.entries()) {
      const column = 'ours' in slot ? columns.indexOf(slot.ours) : slot.own;
      const cell = cells[at]?.[place];
      if (cell && !cell.from && column >= 0) cells[at]![place] = { ...cell, from: [r, column] };
    }
  }
}
