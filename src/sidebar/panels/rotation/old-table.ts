/** The rotation table that stands in the file already, if any. */
import type { BlockInfo } from '../../../../shared/contract';
import { blockFingerprint } from '../../../../shared/table/block-fingerprint';
import type { OldRotation } from '../../../../shared/table/model';
import { readRotation } from '../../../../shared/table/read-rotation';
import { standingBlock } from '../../parts/standing-block';
import type { Book } from '../../parts/use-book';

/** The named range of the rotation table. */
export const ROTATION_NAME = 'SOUNDER_ROTATION';

export interface OldTable {
  readonly info: BlockInfo;
  readonly rotation: OldRotation;
  /** What the script must still find there when it writes over it. */
  readonly fingerprint: string;
}

export function oldTable(book: Book): OldTable | undefined {
  const block = standingBlock(book, ROTATION_NAME);
  const tab = book.tabs.find(({ name }) => name === block?.info.tab);
  if (!block || !tab) return undefined;
  const { info, values, formulas } = block;
  return { info, rotation: readRotation(tab, info), fingerprint: blockFingerprint(values, formulas) };
}
