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

export function blockContent(request: WriteBlock, area: Area, old: Area | undefined): AreaWrite {
  const all = union(area, old);
  const cellAt = (r: number, c: number): BlockCell => request.cells[r]?.[c] ?? { k: 'blank' };
  return {
    values: grid(all, (r, c) => sheetValue(cellAt(r, c))),
    formats: grid(all, (r, c) => numberFormat(cellAt(r, c))),
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

function dateSerial(iso: string): number {
  const day = dayFromIso(iso);
  if (day === undefined) throw new Told(`"${iso}" is not a date. Nothing was written.`);
  return serialFromDay(day);
}

function numberFormat(cell: BlockCell): string {
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
