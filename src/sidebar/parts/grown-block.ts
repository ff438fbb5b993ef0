import { cellOnTab } from '../../../shared/block/cell-on-tab';
import { isFilled } from '../../../shared/block/is-filled';
import { type BlockContent, cutBlock } from '../../../shared/block/read-block';
import type { BlockInfo, TabContent } from '../../../shared/contract';
import { areasBeside } from '../../../shared/lists/found-lists';
import { grownBlock } from '../../../shared/tasks/grown-block';
import { asWritten } from '../../../shared/tasks/merge-block';
import { OUR_WORDS } from '../../../shared/tasks/our-words';
import type { Book } from './use-book';

export interface GrownBlock {
  /** The block and the rows that were filled right below it. */
  readonly content: BlockContent;
  /** How many rows those are. */
  readonly adoptRows: number;
  /** Empty rows below them. */
  readonly below: number;
  /** A filled cell further down that is no part of the block. */
  readonly apart: string | undefined;
}

/** A table to type into as it stood when the file was read, with the rows right below it. */
export function standingAndBelow(book: Book, name: string): GrownBlock | undefined {
  const { overview, tabs } = book;
  const named = overview.blocks.find((block) => block.name === name);
  const tab = tabs.find((one) => one.name === named?.tab);
  if (!named || !tab) return undefined;
  const alone = cutBlock(tab, named).info;
  const { info, below, apart } = grownBlock(tab, alone, areasBeside(book, name));
  const adoptRows = info.rows - alone.rows;
  return {
    content: asWritten(cutBlock(tab, named, adoptRows), OUR_WORDS),
    adoptRows,
    below,
    apart: apart === undefined ? undefined : firstCell(tab, info, apart),
  };
}

function firstCell(tab: TabContent, { column, columns }: BlockInfo, row: number): string {
  const across = Array.from({ length: columns }, (_, c) => column + c);
  return cellOnTab(tab.name, row, across.find((at) => isFilled(tab, row - 1, at - 1)) ?? column);
}
