/** Cautions in a table of ours, to be read without scrolling sideways and without merged cells. */
import { text } from '../block/cells';
import type { BlockStyle } from '../contract';
import type { Draft } from './draft-block';

export const LOOK_OUT_TITLE = 'Look out';
/** So many bold letters a phone 390 pixels wide shows beside the row numbers; seen in the preview. */
const LETTERS = 42;

/** A sentence in lines that a phone shows whole: a text runs over its empty neighbours and no further than the screen. */
export function inLines(sentence: string): readonly string[] {
  return sentence.match(new RegExp(`\\S.{0,${LETTERS - 1}}(?=\\s|$)`, 'g')) ?? [];
}

export function addLines(draft: Draft, sentence: string, style: BlockStyle): void {
  for (const line of inLines(sentence)) draft.add([text(line)], style);
}

/** Under the figures that they belong to: a heading, the cautions, a blank row. */
export function addLookOut(draft: Draft, cautions: readonly string[]): void {
  draft.add([text(LOOK_OUT_TITLE)], 'heading');
  for (const caution of cautions) addLines(draft, caution, 'warning');
  draft.add();
}

/** How many rows that makes. */
export function lookOutRows(cautions: readonly string[]): number {
  return 2 + cautions.flatMap(inLines).length;
}
