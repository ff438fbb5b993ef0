/** The rotation table that stands in the file already, if any. */
import { cutBlock } from '../../../../shared/block/read-block';
import type { BlockInfo } from '../../../../shared/contract';
import { cellOnTab } from '../../../../shared/lists/cell-on-tab';
import { blockFingerprint } from '../../../../shared/table/block-fingerprint';
import type { OldRotation } from '../../../../shared/table/model';
import { readRotation } from '../../../../shared/table/read-rotation';
import { widenedBlock } from '../../../../shared/table/widened-block';
import { areasBeside } from '../../parts/found-lists';
import { standingBlock } from '../../parts/standing-block';
import type { Book } from '../../parts/use-book';

/** The named range of the rotation table. */
export const ROTATION_NAME = 'SOUNDER_ROTATION';

export interface OldTable {
  /** The block and the columns that the grower began right beside it. */
  readonly info: BlockInfo;
  /** How many columns those are. */
  readonly adopted: number;
  /** A filled cell further right, which does not move along. */
  readonly apart: string | undefined;
  readonly rotation: OldRotation;
  /** Texts of its first column from the top. */
  readonly firstColumn: readonly string[];
  /** What the script must still find there when it writes over it. */
  readonly fingerprint: string;
}

export function oldTable(book: Book): OldTable | undefined {
  const block = standingBlock(book, ROTATION_NAME);
  const tab = book.tabs.find(({ name }) => name === block?.info.tab);
  if (!block || !tab) return undefined;
  const { info, apart } = widenedBlock(tab, block.info, areasBeside(book, ROTATION_NAME));
  const { values, formulas } = cutBlock(tab, info);
  return {
    info,
    adopted: info.columns - block.info.columns,
    apart: apart && cellOnTab(tab.name, apart.row, apart.column),
    rotation: readRotation(tab, info),
    firstColumn: values.map(([first = '']) => (typeof first === 'string' ? first : '')),
    fingerprint: blockFingerprint(values, formulas),
  };
}
