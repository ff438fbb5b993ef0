import { type Book, tabNamed } from '../block/book';
import { cellOnTab } from '../block/cell-on-tab';
import { isFilled } from '../block/is-filled';
import { isInArea } from '../block/is-in-area';
import { type BlockContent, cut, cutBlock, wholeOf } from '../block/read-block';
import type { BlockInfo, TabContent } from '../contract';
import { areasBeside } from '../lists/found-lists';
import { readingOf } from './merge/as-written';
import { grownBlock } from './merge/grown-block';
import { widenedBlock } from './merge/widened-block';
import type { TableRoom } from './room-to-type';

/** A block that stands in the file. */
export interface Standing {
  /** As it stands, with the filled rows right below it or columns right beside it that it takes in. */
  readonly block: BlockContent;
  /** For those who read what was typed in it: our own words stand where the grower typed over them. */
  readonly reading: BlockContent;
  /** The whole rectangle that is written over, and the column of its memory, where it has one. */
  readonly area: BlockInfo;
  readonly memoryColumn: number | undefined;
  /** How many rows below it, and columns beside it, are taken in. */
  readonly adoptRows: number;
  readonly adoptColumns: number;
  /** Empty lines below those. */
  readonly below: TableRoom['below'];
  /** A filled cell further down that is no part of the block, though near it. */
  readonly apart: string | undefined;
}

/**
 * The block of that name. `grows`: it is typed into, and takes in the rows that were filled right below it, or the
 * columns that were begun right beside it.
 */
export function standingOf(book: Book, name: string, grows?: 'down' | 'across'): Standing | undefined {
  const named = book.overview.blocks.find((block) => block.name === name);
  const tab = tabNamed(book, named?.tab);
  if (!named || !tab) return undefined;
  const alone = cutBlock(tab, named);
  const others = (): readonly BlockInfo[] => areasBeside(book, name);
  if (grows === 'across') return widened(tab, alone, others());
  if (!grows) return standing(alone, {});
  const { info, below, apart } = grownBlock(tab, alone.info, others);
  const adoptRows = info.rows - alone.info.rows;
  const block = adoptRows > 0 ? cutBlock(tab, named, adoptRows) : alone;
  return standing(block, {
    adoptRows,
    below,
    apart: apart === undefined ? undefined : firstCell(tab, info, apart),
  });
}

function standing(block: BlockContent, found: Partial<Standing>): Standing {
  return {
    block,
    reading: readingOf(block),
    area: wholeOf(block),
    memoryColumn: memoryColumnOf(block),
    adoptRows: 0,
    adoptColumns: 0,
    below: Number.POSITIVE_INFINITY,
    apart: undefined,
    ...found,
  };
}

/** The memory stands right of what was written. */
function memoryColumnOf({ info, memory }: BlockContent): number | undefined {
  return memory && info.column + info.columns;
}

/** With the columns that the grower began right beside it: beyond its memory, and read as if that were not there. */
function widened(tab: TabContent, written: BlockContent, others: readonly BlockInfo[]): Standing {
  const memoryColumn = memoryColumnOf(written);
  const table = memoryColumn === undefined ? tab : withoutColumn(tab, memoryColumn);
  const info = widenedBlock(table, written.info, others);
  const adoptColumns = info.columns - written.info.columns;
  if (adoptColumns === 0) return standing(written, {});
  const { memory } = written;
  return standing({ ...cut(table, info), ...(memory && { memory }) }, { memoryColumn, adoptColumns });
}

function withoutColumn(tab: TabContent, column: number): TabContent {
  const less = <Cell>(rows: readonly (readonly Cell[])[]): Cell[][] =>
    rows.map((row) => row.filter((_, c) => c !== column - 1));
  return { ...tab, values: less(tab.values), formulas: less(tab.formulas) };
}

function firstCell(tab: TabContent, { column, columns }: BlockInfo, row: number): string {
  const across = Array.from({ length: columns }, (_, c) => column + c);
  return cellOnTab(tab.name, row, across.find((at) => isFilled(tab, row - 1, at - 1)) ?? column);
}

/** The first filled cell right of the block in its rows, which is no part of it and of nothing else that is known. */
export function filledBeside(book: Book, { area }: Standing): string | undefined {
  const { name, tab, row: top, column: left, rows, columns } = area;
  const content = tabNamed(book, tab);
  if (!content) return undefined;
  const width = Math.max(0, ...content.values.map((cells) => cells.length));
  const isOther = (row: number, column: number): boolean =>
    areasBeside(book, name).some((other) => other.tab === tab && isInArea(other, row, column));
  for (let column = left + columns; column <= width; column++)
    for (let row = top; row < top + rows; row++)
      if (isFilled(content, row - 1, column - 1) && !isOther(row, column)) return cellOnTab(tab, row, column);
  return undefined;
}
