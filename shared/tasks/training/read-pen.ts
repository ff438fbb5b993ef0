import type { BlockContent } from '../../block/read-block';
import type { BlockCell } from '../../contract';
import { rowsBetween } from '../rows-between';
import { readSettings, type SettingsRead } from '../settings';
import { PEN_HEADINGS, PEN_SETTINGS, type PenKey } from './pen-block';

export interface PenRead {
  readonly settings: SettingsRead<PenKey>;
  /** Typed "on hand" cells by the item's place in the list. */
  readonly onHand: readonly BlockCell[];
}

/** What was typed in a pen list that stands already. */
export function readPen(block: BlockContent): PenRead {
  return {
    settings: readSettings(block, PEN_SETTINGS),
    onHand: rowsBetween(block, PEN_HEADINGS).map((row) => row.kept('On hand')),
  };
}
