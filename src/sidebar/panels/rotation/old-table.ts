/** The rotation table that stands in the file already, if any. */
import { cutBlock } from '../../../../shared/block/read-block';
import type { BlockInfo } from '../../../../shared/contract';
import { blockFingerprint } from '../../../../shared/table/block-fingerprint';
import type { OldRotation } from '../../../../shared/table/model';
import { readRotation } from '../../../../shared/table/read-rotation';
import type { Book } from './use-book';

/** The named range of the rotation table. */
export const ROTATION_NAME = 'SOUNDER_ROTATION';

export interface OldTable {
  readonly info: BlockInfo;
  readonly rotation: OldRotation;
  /** What the script must still find there when it writes over it. */
  readonly fingerprint: string;
}

export function oldTable({ overview, tabs }: Book): OldTable | undefined {
  const info = overview.blocks.find(({ name }) => name === ROTATION_NAME);
  const tab = tabs.find(({ name }) => name === info?.tab);
  if (!info || !tab) return undefined;
  const { values, formulas } = cutBlock(tab, info);
  return { info, rotation: readRotation(tab, info), fingerprint: blockFingerprint(values, formulas) };
}
