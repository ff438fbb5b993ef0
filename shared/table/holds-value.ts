import type { BlockCell, WireCell } from '../contract';

/** What a unit there and back may add to a number. */
const ROUNDING = 1e-9;

/** Whether a cell that is to be written is that value, and no formula. A name may be a number: it is written as text. */
export function holdsValue(cell: BlockCell, value: WireCell): boolean {
  if (cell.k === 'f' || cell.k === 'blank') return false;
  if (cell.k === 'd') return typeof value === 'object' && value.d === cell.v;
  if (cell.k === 't' && typeof value === 'number') return cell.v === String(value);
  if (cell.k !== 'n' || typeof value !== 'number') return cell.v === value;
  return Math.abs(cell.v - value) <= ROUNDING * Math.abs(value);
}
