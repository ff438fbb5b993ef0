/** Short ways for tests that write a block through the real script and read it back. */
import { type BlockContent, cutBlock } from '../../shared/block/read-block';
import type { BlockInfo, TabContent } from '../../shared/contract';
import type { ComposedBlock } from '../../shared/tasks/composed-block';
import type { Workbook } from '../../src/preview/headless';
import { writeInSheet } from './sheet-block';

type Block = ComposedBlock & { readonly name: string; readonly freezeRows?: number };

export function writeNew(book: Workbook, block: Block, tab: string): BlockInfo {
  return writeInSheet(book, block.name, block, { at: 'new-tab', tab });
}

export function writeOver(book: Workbook, block: Block, adoptRows = 0): BlockInfo {
  return writeInSheet(book, block.name, block, { at: 'own', adoptRows });
}

export function readBack(book: Workbook, info: BlockInfo): BlockContent {
  return cutBlock(readTab(book, info.tab), info);
}

export function readTab(book: Workbook, tab: string): TabContent {
  const reply = book.ask('readTabs', { tabs: [tab] });
  if (!reply.ok) throw new Error(reply.error);
  return (reply.data as TabContent[])[0]!;
}
