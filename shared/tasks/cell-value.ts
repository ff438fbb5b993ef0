import { dateWords } from '../block/date-words';
import type { BlockCell, WireCell } from '../contract';
import { plainNumber } from '../refusals';

/** The value of a cell to be written, alike for the same value of a cell that was read (as JSON); none for formulas. */
export function valueKey(cell: BlockCell): string | undefined {
  if (cell.k === 'blank' || cell.k === 'f') return undefined;
  return JSON.stringify(cell.k === 'd' ? { d: cell.v } : cell.v);
}

/** A value in a sentence: dates and numbers plain, texts in quotes. */
export function shownCell(value: WireCell): string {
  if (typeof value === 'object') return dateWords(value.d);
  return typeof value === 'number' ? plainNumber(value) : `“${value}”`;
}
