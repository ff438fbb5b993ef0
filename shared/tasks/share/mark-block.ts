/** The mark of the original as a small block of its own, with how to copy. Nothing in it names the original. */

import { text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import type { ComposedBlock } from '../../block/composed-block';
import { TITLES } from '../../block/own-words';
import { inLines } from '../look-out';
import { markRow } from './original-mark';
import { COPY_STEPS } from './words';

export function composeMarkBlock(mark: string): ComposedBlock {
  const { cells, styles, ids } = composeBlock([
    { cells: [text(TITLES.mark)], style: 'title' },
    { cells: markRow(mark).map(text), style: 'muted' },
    ...COPY_STEPS.flatMap((step, s) => inLines(`${s + 1}. ${step}`)).map((line) => ({ cells: [text(line)] })),
  ]);
  return { cells, styles, ids, rules: [], widths: [240, 240] };
}
