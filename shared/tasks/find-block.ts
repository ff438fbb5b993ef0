import type { Book } from '../block/book';
import { cellOnTab } from '../block/cell-on-tab';
import { type BlockContent, cutBlock, wholeOf } from '../block/read-block';
import { areasBeside } from '../lists/found-lists';
import { widenedBlock } from '../table/widened-block';

export interface StandingNow {
  readonly block: BlockContent;
  /** A filled cell right of it in its rows, which is no part of it and of nothing else that is known. */
  readonly beside: string | undefined;
}

/** The block of that name and some rows below it, with what stands beside it; undefined where there is none. */
export function findBlock(book: Book, name: string, rowsBelow = 0): StandingNow | undefined {
  const named = book.overview.blocks.find((block) => block.name === name);
  if (!named) return undefined;
  const tab = book.tabs.find((content) => content.name === named.tab);
  if (!tab) throw new Error(`There is no tab named “${named.tab}” any more. Read the file again.`);
  const block = cutBlock(tab, named, rowsBelow);
  const info = wholeOf(block);
  const others = areasBeside(book, name);
  const { info: wide, apart } = widenedBlock(tab, info, others);
  const isJoined = wide.columns > info.columns;
  const cell = isJoined ? { row: info.row, column: info.column + info.columns } : apart;
  return { block, beside: cell && cellOnTab(tab.name, cell.row, cell.column) };
}
