import { headingRow } from '../../block/heading-row';
import type { BlockContent } from '../../block/read-block';
import type { BlockCell } from '../../contract';
import { rowsBetween } from '../rows-between';
import { readSettings, type SettingsRead } from '../settings';
import { HEIGHTS_LABEL, PEN_HEADINGS, PEN_LINES, PEN_SETTINGS, type PenKey } from './pen-block';

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

/** The same block without the cells that the two cell functions fill: nobody typed those. */
export function withoutAnswers(block: BlockContent): BlockContent {
  const head = headingRow(block.values, PEN_HEADINGS);
  const { strands = 0 } = readSettings(block, PEN_SETTINGS).values;
  // Where the function's own cell was typed over there are no answers.
  const hasAnswers = head >= 0 && (block.formulas[head + 1]?.[0] ?? '') !== '';
  const values = block.values.map((row, r) => {
    if (hasAnswers && r > head && r <= head + PEN_LINES) return row.map((value, c) => (c < 3 ? '' : value));
    const isHeights = String(row[0]).startsWith(HEIGHTS_LABEL);
    return isHeights ? row.map((value, c) => (c > 0 && c <= strands ? '' : value)) : row;
  });
  return { ...block, values };
}
