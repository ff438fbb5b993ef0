/** Short ways for tests that write a block through the real script and read it back. */
import { type BlockContent, cutBlock } from '../../shared/block/read-block';
import type { BlockInfo, TabContent, WriteBlock } from '../../shared/contract';
import { blockFingerprint } from '../../shared/table/block-fingerprint';
import type { Workbook } from '../../src/preview/headless';

type Block = Omit<WriteBlock, 'place' | 'expects'>;

export function writeNew(book: Workbook, block: Block, tab: string): BlockInfo {
  return written(book, { ...block, place: { at: 'new-tab', tab } });
}

export function writeOver(book: Workbook, block: Block, old: BlockContent, adoptRows = 0): BlockInfo {
  return written(book, {
    ...block,
    place: { at: 'own', adoptRows },
    expects: blockFingerprint(old.values, old.formulas),
  });
}

function written(book: Workbook, request: WriteBlock): BlockInfo {
  const reply = book.ask('writeBlock', request);
  if (!reply.ok) throw new Error(reply.error);
  return (reply.data as { block: BlockInfo }).block;
}

export function readBack(book: Workbook, info: BlockInfo): BlockContent {
  return cutBlock(readTab(book, info.tab), info);
}

export function readTab(book: Workbook, tab: string): TabContent {
  const reply = book.ask('readTabs', { tabs: [tab] });
  if (!reply.ok) throw new Error(reply.error);
  return (reply.data as TabContent[])[0]!;
}
