import type { BlockContent } from '../../block/read-block';
import { ownTable, withoutOwn } from '../without-own';
import { LEVELS_TITLE, LINE_HEADINGS } from './bite-block';
import { WIRE_HEADINGS } from './wire-rows';

/**
 * What of the volts must not get lost: all but the lines, which the sidebar has read and may change, and the answers
 * that spill down from the cell functions.
 */
export function biteMustKeep(old: BlockContent): BlockContent {
  const answers = WIRE_HEADINGS.filter((heading) => /^Ohms, (first|second)$/.test(heading));
  return withoutOwn(old, [
    ownTable(old, LINE_HEADINGS, LINE_HEADINGS, 'Settings'),
    ownTable(old, WIRE_HEADINGS, answers, LEVELS_TITLE),
  ]);
}
