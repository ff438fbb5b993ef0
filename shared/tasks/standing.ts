import { type Book, tabNamed } from '../block/book';
import { cellOnTab } from '../block/cell-on-tab';
import { isFilled } from '../block/is-filled';
import { isInArea } from '../block/is-in-area';
import { type BlockContent, cutBlock, wholeOf } from '../block/read-block';
import type { BlockInfo, TabContent } from '../contract';
import { areasBeside } from '../lists/found-lists';
import { grownBlock } from './grown-block';
import { asWritten } from './merge-block';
import { OUR_WORDS } from './our-words';
import type { TableRoom } from './room-to-type';

/** A block that stands in the file. */
export interface Standing {
  /** As it stands, with the filled rows right below it that it takes in. */
  readonly block: BlockContent;
  /** For those who read what was typed in it: our own words stand where the grower typed over them. */
  readonly reading: BlockContent;
  /** How many rows below it are taken in. */
  readonly adoptRows: number;
  /** Empty lines below those. */
  readonly below: TableRoom['below'];
  /** A filled cell further down that is no part of the block, though near it. */
  readonly apart: string | undefined;
}

/** The block of that name. `grows`: it is typed into, and takes in the rows that were filled right below it. */
export function standingOf(book: Book, name: string, grows = false): Standing | undefined {
  const named = book.overview.blocks.find((block) => block.name === name);
  const tab = tabNamed(book, named?.tab);
  if (!named || !tab) return undefined;
  const alone = cutBlock(tab, named);
  if (!grows) return standing(alone, 0, Number.POSITIVE_INFINITY);
  const { info, below, apart } = grownBlock(tab, alone.info, () => areasBeside(book, name));
  const adoptRows = info.rows - alone.info.rows;
  const block = adoptRows > 0 ? cutBlock(tab, named, adoptRows) : alone;
  return standing(block, adoptRows, below, apart === undefined ? undefined : firstCell(tab, info, apart));
}

function standing(block: BlockContent, adoptRows: number, below: number, apart?: string): Standing {
  return { block, reading: asWritten(block, OUR_WORDS), adoptRows, below, apart };
}

function firstCell(tab: TabContent, { column, columns }: BlockInfo, row: number): string {
  const across = Array.from({ length: columns }, (_, c) => column + c);
  return cellOnTab(tab.name, row, across.find((at) => isFilled(tab, row - 1, at - 1)) ?? column);
}

/** The first filled cell right of the block in its rows, which is no part of it and of nothing else that is known. */
export function filledBeside(book: Book, block: BlockContent): string | undefined {
  const { name, tab, row: top, column: left, rows, columns } = wholeOf(block);
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
