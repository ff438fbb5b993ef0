/**
 * Cells of our own, read without regard to their number format: a day whose format was lost shows as 46113, and a count
 * under the format of a day as 1900-01-07. They mean the same as ever.
 */
import { dateWords } from '../block/date-words';
import type { WireCell } from '../contract';
import { type Day, dayFromIso } from '../core/calendar/day';
import { dayFromSerial, serialFromDay } from '../core/calendar/serial';
import { dayIn } from '../lists/read-list-cell';
import { onlyDay } from '../lists/text-day';
import { plainNumber } from '../refusals';

/** Judgement: a bare number is taken for a day only in these years. */
const FIRST = serialFromDay(dayFromIso('2000-01-01')!);
const LAST = serialFromDay(dayFromIso('2100-01-01')!);

/** Text that can only be one day is that day: the sheet took it for words because it writes days in another order. */
export function ownDay(cell: WireCell): Day | undefined {
  if (typeof cell === 'string') return dayIn(cell) ?? onlyDay(cell);
  if (typeof cell !== 'number') return dayIn(cell);
  return cell >= FIRST && cell < LAST ? dayFromSerial(Math.floor(cell)) : undefined;
}

export function ownNumber(cell: WireCell): number | undefined {
  if (typeof cell === 'number') return cell;
  const day = typeof cell === 'object' ? dayIn(cell) : undefined;
  const serial = day === undefined ? undefined : serialFromDay(day);
  return serial === undefined || serial >= FIRST ? undefined : serial;
}

/** Days of a stay: a whole number from 1 up. In the sheet: isStayDaysFormula. */
export function wholeDays(cell: WireCell, most = Infinity): number | undefined {
  const days = ownNumber(cell);
  return days !== undefined && Number.isInteger(days) && days >= 1 && days <= most ? days : undefined;
}

/** A cell's value as text. */
export function cellWords(value: WireCell): string {
  if (typeof value === 'object') return dateWords(value.d);
  if (typeof value === 'number') return plainNumber(value);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return value.trim();
}
