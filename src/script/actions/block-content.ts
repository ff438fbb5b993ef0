/** Turns cells into what the sheet takes: values and number formats. */
import { DAY_FORMAT } from '../../../shared/block/day-format';
import type { BlockCell } from '../../../shared/contract';
import { serialFromIso } from '../../../shared/core/calendar/serial-from-iso';
import { type Area, type AreaWrite, Told } from '../port';

/** Keeps text as text, whatever it begins with. */
const TEXT_FORMAT = '@';
const GENERAL_FORMAT = 'General';

/** `formats`: number formats that stand in the area now; cells with an origin take theirs from there. */
export function blockContent(
  cells: readonly (readonly BlockCell[])[],
  area: Area,
  formats: readonly (readonly string[])[],
): AreaWrite {
  const cellAt = (r: number, c: number): BlockCell => cells[r]?.[c] ?? { k: 'blank' };
  return {
    values: grid(area, (r, c) => sheetValue(cellAt(r, c))),
    formats: grid(area, (r, c) => numberFormat(cellAt(r, c), formats)),
  };
}

export function grid<T>({ rows, columns }: Area, of: (row: number, column: number) => T): T[][] {
  return Array.from({ length: rows }, (_, r) => Array.from({ length: columns }, (__, c) => of(r, c)));
}

export function sheetValue(cell: BlockCell): string | number | boolean {
  if (cell.k === 'blank') return '';
  if (cell.k === 'd') return dateSerial(cell.v);
  return cell.v;
}

function dateSerial(iso: string): number {
  const serial = serialFromIso(iso);
  if (serial === undefined) throw new Told(`"${iso}" is not a date. Nothing was written.`);
  return serial;
}

export function hasBox(cell: BlockCell | undefined): boolean {
  return cell?.k === 'b' && cell.box === true;
}

/** The cell of the old block whose look and format a cell keeps. */
export function originOf(cell: BlockCell | undefined): readonly [number, number] | undefined {
  return cell?.from;
}

function numberFormat(cell: BlockCell, formats: readonly (readonly string[])[]): string {
  const [row, column] = originOf(cell) ?? [];
  const kept = row === undefined || column === undefined ? undefined : formats[row]?.[column];
  // Text keeps its own format: with any other, "1/2" would become a date.
  if (kept !== undefined && cell.k !== 't' && kept !== TEXT_FORMAT && fits(kept, cell)) return kept;
  switch (cell.k) {
    case 't':
      return TEXT_FORMAT;
    case 'd':
      return DAY_FORMAT;
    case 'n':
    case 'f':
    case 'blank':
      return cell.format && cell.format !== TEXT_FORMAT ? cell.format : GENERAL_FORMAT;
    default:
      return GENERAL_FORMAT;
  }
}

/** What automatic cells say of themselves. */
const AUTOMATIC = [GENERAL_FORMAT, '', '0.###############'];

/** A format that says nothing gives way to the cell's own, and so does one of days over a number, or the reverse. */
function fits(format: string, cell: BlockCell): boolean {
  const own = cell.k === 'd' ? DAY_FORMAT : 'format' in cell ? cell.format : undefined;
  if (own === undefined) return true;
  return !AUTOMATIC.includes(format) && isOfDays(format) === isOfDays(own);
}

function isOfDays(format: string): boolean {
  return /[dmy]/i.test(format);
}
