/** Turns the cells of a block into what the sheet takes: values and number formats. */
import type { BlockCell, WriteBlock } from '../../../shared/contract';
import { dayFromIso } from '../../../shared/core/calendar/day';
import { serialFromDay } from '../../../shared/core/calendar/serial';
import { type Area, type AreaWrite, Told } from '../port';

const DATE_FORMAT = 'yyyy-mm-dd';
/** Keeps text as text, whatever it begins with. */
const TEXT_FORMAT = '@';
const GENERAL_FORMAT = 'General';

/** The smallest rectangle over both: cells of the old block that the new one no longer needs are blanked. */
export function union(area: Area, old: Area | undefined): Area {
  if (!old) return area;
  return {
    ...area,
    rows: Math.max(area.rows, old.rows),
    columns: Math.max(area.columns, old.columns),
  };
}

/** `formats`: number formats that stand in the area now; cells with an origin take theirs from there. */
export function blockContent(
  request: WriteBlock,
  area: Area,
  old: Area | undefined,
  formats: readonly (readonly string[])[],
): AreaWrite {
  const all = union(area, old);
  const cellAt = (r: number, c: number): BlockCell => request.cells[r]?.[c] ?? { k: 'blank' };
  return {
    values: grid(all, (r, c) => sheetValue(cellAt(r, c))),
    formats: grid(all, (r, c) => numberFormat(cellAt(r, c), formats)),
  };
}

export function grid<T>({ rows, columns }: Area, of: (row: number, column: number) => T): T[][] {
  return Array.from({ length: rows }, (_, r) => Array.from({ length: columns }, (__, c) => of(r, c)));
}

function sheetValue(cell: BlockCell): string | number | boolean {
  if (cell.k === 'blank') return '';
  if (cell.k === 'd') return dateSerial(cell.v);
  return cell.v;
}

const SECONDS_A_DAY = 86_400;

function dateSerial(iso: string): number {
  const [date = '', time = '00:00:00'] = iso.split('T');
  const day = dayFromIso(date);
  if (day === undefined) throw new Told(`"${iso}" is not a date. Nothing was written.`);
  const [hours = 0, minutes = 0, seconds = 0] = time.split(':').map(Number);
  return serialFromDay(day) + (hours * 3600 + minutes * 60 + seconds) / SECONDS_A_DAY;
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
      return DATE_FORMAT;
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
  const own = cell.k === 'd' ? DATE_FORMAT : 'format' in cell ? cell.format : undefined;
  if (own === undefined) return true;
  return !AUTOMATIC.includes(format) && isOfDays(format) === isOfDays(own);
}

function isOfDays(format: string): boolean {
  return /[dmy]/i.test(format);
}
