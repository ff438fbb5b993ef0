/** What the cells of a headless workbook hold at the start. */
import { type Entry, literalText } from '../engine/typed-text';
import { serialOfDay } from '../engine/zone-time';
import type { HostState } from '../service/host-state';
import { writtenEntry } from '../service/range-values';

/**
 * A cell to start with. A string is what a person would type ("2026-04-01" is a date, "=A1+1" a formula, "007" the
 * number 7); { text } stays text whatever it looks like; { d } is a date cell; null and '' are blank.
 */
export type StartCell = string | number | boolean | null | Date | { text: string } | { d: string };

/** Serial number of a day such as "2026-04-01". */
export function serialOfIsoDay(day: string): number {
  const [year = 0, month = 0, dayOfMonth = 0] = day.split('-').map(Number);
  const serial = serialOfDay(year, month, dayOfMonth);
  if (serial === undefined) throw new Error(`"${day}" is not a day such as "2026-04-01"`);
  return serial;
}

export function startEntry(state: HostState, cell: StartCell): Entry {
  if (cell === null) return { content: '' };
  if (typeof cell === 'object' && 'text' in cell) return literalText(cell.text);
  if (typeof cell === 'object' && 'd' in cell) {
    return { content: String(serialOfIsoDay(cell.d)), format: state.book.locale.dateFormat };
  }
  return writtenEntry(state, cell, '');
}
