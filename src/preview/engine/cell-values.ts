/** Values between the engine's cells (columns of {value, format}) and scripts (rows of plain values and Dates). */
import type { Engine, EngineResult } from './engine';
import { SCRIPT_ERROR, sheetsErrorName } from './error-names';
import { plainQuotes } from './formula-text';
import { dateOfSerial, hasInstant, serialOfDate } from './zone-time';

type EngineArgument = EngineResult | EngineResult[][] | undefined | null;

/** A cell's value as a script sees it: '' for blank, a Date for dates, the error's name for errors. */
export function scriptValue(engine: Engine, cell: EngineResult, timeZone: string): unknown {
  const { value, format } = cell;
  if (value === null || value === undefined) return '';
  if (typeof value === 'number') {
    const isDay = format && engine.helpers.isDateTimeFormat(format) && hasInstant(value);
    return isDay ? dateOfSerial(value, timeZone) : value;
  }
  return typeof value === 'string' && engine.helpers.isEvaluationError(value)
    ? sheetsErrorName(value)
    : value;
}

/** One argument of a cell function. A range of one cell arrives as a single value. */
export function scriptArgument(engine: Engine, argument: EngineArgument, timeZone: string): unknown {
  if (argument === undefined || argument === null) return '';
  const one = (cell: EngineResult | undefined): unknown => {
    const value = scriptValue(engine, cell ?? { value: null }, timeZone);
    return typeof value === 'string' ? plainQuotes(value) : value;
  };
  if (!Array.isArray(argument)) return one(argument);
  const columns = argument;
  const height = columns[0]?.length ?? 0;
  if (columns.length === 1 && height === 1) return one(columns[0]?.[0]);
  return Array.from({ length: height }, (_, row) => columns.map((column) => one(column[row])));
}

/** The first error among what the engine hands to a function: cells, and columns of cells. */
export function firstError(engine: Engine, values: readonly unknown[]): EngineResult | undefined {
  const cells = values.flat(2) as (EngineResult | undefined)[];
  return cells.find((cell) => engine.helpers.isEvaluationError(cell?.value as never));
}

export function isDate(value: unknown): value is Date {
  return Object.prototype.toString.call(value) === '[object Date]';
}

function resultCell(value: unknown, timeZone: string, dateFormat: string): EngineResult {
  // The engine shows a null result as 0; Sheets shows nothing.
  if (value === undefined || value === null) return { value: '' };
  if (typeof value === 'string' || typeof value === 'boolean') return { value };
  if (typeof value === 'number') {
    return Number.isFinite(value) ? { value } : { value: '#NUM!', message: 'Result was not a number.' };
  }
  if (isDate(value)) {
    return Number.isNaN(value.getTime())
      ? { value: '#NUM!', message: 'Result was not a valid date.' }
      : { value: serialOfDate(value, timeZone), format: dateFormat };
  }
  return { value: SCRIPT_ERROR, message: 'The function returned something that a cell cannot hold.' };
}

/** What a cell function returned, for the engine. A flat array goes down a column; rows must be equally long. */
export function engineResult(
  returned: unknown,
  timeZone: string,
  dateFormat: string,
): EngineResult | EngineResult[][] {
  if (!Array.isArray(returned)) return resultCell(returned, timeZone, dateFormat);
  const rows: unknown[][] = returned.map((row: unknown) => (Array.isArray(row) ? row : [row]));
  const width = rows[0]?.length ?? 0;
  if (width === 0 || rows.some((row) => row.length !== width)) {
    return { value: SCRIPT_ERROR, message: 'The function returned rows of different lengths, or none.' };
  }
  return Array.from({ length: width }, (_, column) =>
    rows.map((row) => resultCell(row[column], timeZone, dateFormat)),
  );
}
