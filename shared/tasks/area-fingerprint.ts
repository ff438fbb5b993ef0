import type { Book } from '../block/book';
import { type BlockContent, cut } from '../block/read-block';
import { blockFingerprint } from '../table/block-fingerprint';
import * as words from './words';

/** What the script must still find in an area, else somebody typed there after the page had read it. */
export function areaFingerprint(book: Book, area: BlockContent['info']): string {
  const tab = book.tabs.find(({ name }) => name === area.tab);
  if (!tab) throw new Error(words.tabGone(area.tab));
  const { values, formulas } = cut(tab, area);
  return blockFingerprint(values, formulas);
}
