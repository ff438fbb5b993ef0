import { dateWords } from '../block/date-words';
import type { WireCell } from '../contract';
import { plainNumber } from '../refusals';

/** A value in a sentence: dates and numbers plain, texts in quotes. */
export function shownCell(value: WireCell): string {
  if (typeof value === 'object') return dateWords(value.d);
  return typeof value === 'number' ? plainNumber(value) : `“${value}”`;
}
