/** The values and formulas of a range. */
import { isDate, scriptValue } from '../engine/cell-values';
import { sheetsErrorName } from '../engine/error-names';
import { toSheetsFormula } from '../engine/formula-text';
import { type Entry, formulaEntry, literalText, PLAIN_TEXT_FORMAT, typedEntry } from '../engine/typed-text';
import { serialOfDate } from '../engine/zone-time';
import { zoneOf } from './area';
import { guardService } from './call-gate';
import { breaksValidation } from './data-validation';
import type { HostState } from './host-state';
import { RangeLook } from './range-look';
import { filled, fittingMatrix, mergesIn, RangePlace, refuseProtected } from './range-place';
import { invalidData, wrongSignature } from './refusals';

const state = RangePlace.state;
const area = RangePlace.area;

/** What a value written by a script puts into a cell that carries the given number format. */
export function writtenEntry(host: HostState, value: unknown, ownFormat: string): Entry {
  const { locale } = host.book;
  const formulaLocale = host.modes.decimalsByCountry ? locale : { ...locale, decimalSeparator: '.' };
  if (value === null || value === undefined || value === '') return { content: '' };
  if (ownFormat === PLAIN_TEXT_FORMAT && !isDate(value)) return literalText(String(value));
  if (typeof value === 'boolean') return { content: value ? 'TRUE' : 'FALSE' };
  if (typeof value === 'number') return { content: Number.isFinite(value) ? String(value) : '#NUM!' };
  if (isDate(value)) {
    const serial = serialOfDate(value, host.timeZone);
    if (Number.isNaN(serial)) return { content: '#NUM!' };
    const format = serial % 1 === 0 ? locale.dateFormat : `${locale.dateFormat} hh:mm:ss`;
    return ownFormat === '' ? { content: String(serial), format } : { content: String(serial) };
  }
  const text = String(value);
  const entry = typedEntry(
    text,
    text.startsWith('=') ? formulaLocale : locale,
    Number(new Date(host.now()).getUTCFullYear()),
  );
  return ownFormat === '' ? entry : { content: entry.content };
}

/** Writes entries made from a matrix; cells hidden under a merge keep nothing. */
function write(
  range: RangePlace,
  matrix: unknown[][],
  entryOf: (value: unknown, ownFormat: string) => Entry,
): void {
  const host = state(range);
  const { book } = host;
  const place = area(range);
  refuseProtected(host, place);
  if (breaksValidation(host, place, matrix)) throw invalidData(place);
  const hidden = mergesIn(host, place);
  const isHidden = (row: number, column: number): boolean =>
    hidden.some(
      (merge) =>
        (row !== merge.row || column !== merge.column) &&
        row >= merge.row &&
        row < merge.row + merge.rows &&
        column >= merge.column &&
        column < merge.column + merge.columns,
    );
  const commands = matrix.flatMap((line, rowOffset) =>
    line.flatMap((value, columnOffset) => {
      const row = place.row + rowOffset;
      const col = place.column + columnOffset;
      if (isHidden(row, col)) return [];
      const entry = entryOf(value, book.ownFormat(place.sheetId, row, col));
      return [{ type: 'UPDATE_CELL', sheetId: place.sheetId, row, col, ...entry }];
    }),
  );
  book.batch(commands);
  host.loading.written(place.sheetId, commands);
}

export function readCells<Result>(
  range: RangePlace,
  one: (sheetId: string, row: number, column: number) => Result,
): Result[][] {
  const { sheetId, row, column, rows, columns } = area(range);
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (__, c) => one(sheetId, row + r, column + c)),
  );
}

export class RangeValues extends RangeLook {
  getValues(): unknown[][] {
    const { book, timeZone, loading } = state(this);
    const insteadOf = loading.reading();
    return readCells(
      this,
      (sheetId, row, column) =>
        insteadOf(sheetId, row, column) ??
        scriptValue(book.engine, book.cell(sheetId, row, column), timeZone),
    );
  }
  getValue(): unknown {
    return this.getValues()[0]![0];
  }
  getDisplayValues(): string[][] {
    const { book } = state(this);
    return readCells(this, (sheetId, row, column) => {
      const cell = book.cell(sheetId, row, column);
      if (cell.type === 'error') return sheetsErrorName(cell.value);
      return cell.type === 'text' ? cell.value : cell.formattedValue;
    });
  }
  getDisplayValue(): string {
    return this.getDisplayValues()[0]![0]!;
  }
  getFormulas(): string[][] {
    const { book, modes } = state(this);
    return readCells(this, (sheetId, row, column) => {
      const formula = book.formula(sheetId, row, column);
      const shown = formula && toSheetsFormula(formula, book.usesDecimalComma);
      return shown.replace(/\w+(?=\()/g, (name) => modes.namesReadBack[name] ?? name);
    });
  }
  getFormula(): string {
    return this.getFormulas()[0]![0]!;
  }

  setValues(values: unknown): this {
    const matrix = fittingMatrix('setValues', area(this), values);
    write(this, matrix, (value, ownFormat) => writtenEntry(state(this), value, ownFormat));
    return this;
  }
  setValue(value: unknown): this {
    if (Array.isArray(value)) throw wrongSignature('Range.setValue', [value]);
    return this.setValues(filled(area(this), value));
  }
  setFormulas(formulas: unknown): this {
    const matrix = fittingMatrix<unknown>('setFormulas', area(this), formulas);
    write(this, matrix, (formula, ownFormat) => {
      const text = String(formula ?? '');
      if (text === '') return { content: '' };
      if (ownFormat === PLAIN_TEXT_FORMAT) return literalText(text);
      return formulaEntry(text.startsWith('=') ? text : `=${text}`, state(this).book.locale);
    });
    return this;
  }
  setFormula(formula: string): this {
    return this.setFormulas(filled(area(this), formula));
  }
  clearContent(): this {
    const place = area(this);
    refuseProtected(state(this), place);
    state(this).book.must({ type: 'DELETE_CONTENT', sheetId: place.sheetId, target: [zoneOf(place)] });
    return this;
  }
  clear(): this {
    return this.clearContent().clearFormat();
  }
}

guardService(RangeValues, 'Range');
