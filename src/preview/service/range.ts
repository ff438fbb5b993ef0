/** SpreadsheetApp.Range: values and formulas, notes, validation, protection. */
import { isDate, scriptValue } from '../engine/cell-values';
import { sheetsErrorName } from '../engine/error-names';
import { toSheetsFormula } from '../engine/formula-text';
import { type Entry, formulaEntry, literalText, PLAIN_TEXT_FORMAT, typedEntry } from '../engine/typed-text';
import { serialOfDate } from '../engine/zone-time';
import { type Area, areaOf, zoneOf } from './area';
import { guardService } from './call-gate';
import { type DataValidation, setValidation, validationAt } from './data-validation';
import type { HostState } from './host-state';
import { type Protection, protect } from './protection';
import { RangeLook } from './range-look';
import { filled, fittingMatrix, mergesIn, RangePlace, refuseProtected } from './range-place';
import { wrongSignature } from './refusals';
import { isRichTextValue } from './rich-text';
import { Sheet } from './sheet';

const state = RangePlace.state;
const area = RangePlace.area;

/** What a value written by a script puts into a cell that carries the given number format. */
export function writtenEntry(host: HostState, value: unknown, ownFormat: string): Entry {
  const { locale } = host.book;
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
  const entry = typedEntry(text, locale, Number(new Date(host.now()).getUTCFullYear()));
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
}

function read<Result>(
  range: RangePlace,
  one: (sheetId: string, row: number, column: number) => Result,
): Result[][] {
  const { sheetId, row, column, rows, columns } = area(range);
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (__, c) => one(sheetId, row + r, column + c)),
  );
}

export class Range extends RangeLook {
  getSheet(): Sheet {
    return new Sheet(state(this), area(this).sheetId);
  }
  getCell(row: number, column: number): Range {
    const { sheetId, row: top, column: left, rows, columns } = area(this);
    if (row < 1 || row > rows || column < 1 || column > columns)
      throw new Error('Cell reference out of range');
    return new Range(state(this), {
      sheetId,
      row: top + row - 1,
      column: left + column - 1,
      rows: 1,
      columns: 1,
    });
  }
  offset(rowOffset: number, columnOffset: number, rows?: number, columns?: number): Range {
    const place = area(this);
    return new Range(state(this), {
      sheetId: place.sheetId,
      row: place.row + rowOffset,
      column: place.column + columnOffset,
      rows: rows ?? place.rows,
      columns: columns ?? place.columns,
    });
  }

  getValues(): unknown[][] {
    const { book, timeZone } = state(this);
    return read(this, (sheetId, row, column) =>
      scriptValue(book.engine, book.cell(sheetId, row, column), timeZone),
    );
  }
  getValue(): unknown {
    return this.getValues()[0]![0];
  }
  getDisplayValues(): string[][] {
    const { book } = state(this);
    return read(this, (sheetId, row, column) => {
      const cell = book.cell(sheetId, row, column);
      if (cell.type === 'error') return sheetsErrorName(cell.value);
      return cell.type === 'text' ? cell.value : cell.formattedValue;
    });
  }
  getDisplayValue(): string {
    return this.getDisplayValues()[0]![0]!;
  }
  getFormulas(): string[][] {
    const { book } = state(this);
    return read(this, (sheetId, row, column) => {
      const formula = book.formula(sheetId, row, column);
      return formula && toSheetsFormula(formula, book.usesDecimalComma);
    });
  }
  getFormula(): string {
    return this.getFormulas()[0]![0]!;
  }
  isBlank(): boolean {
    return read(this, (sheetId, row, column) => state(this).book.cell(sheetId, row, column).type === 'empty')
      .flat()
      .every(Boolean);
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
  setRichTextValues(values: unknown): this {
    const matrix = fittingMatrix('setRichTextValues', area(this), values);
    write(this, matrix, (value) => {
      if (!isRichTextValue(value)) throw wrongSignature('Range.setRichTextValues', [value]);
      return literalText(value.getText());
    });
    return this;
  }
  setRichTextValue(value: unknown): this {
    return this.setRichTextValues(filled(area(this), value));
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

  setNotes(notes: unknown): this {
    const { sheetId, row, column, ...size } = area(this);
    const matrix = fittingMatrix<string | null>('setNotes', { sheetId, row, column, ...size }, notes);
    refuseProtected(state(this), area(this));
    const kept = state(this).notes.get(sheetId) ?? new Map<string, string>();
    matrix.forEach((line, r) => {
      line.forEach((note, c) => {
        if (note) kept.set(`${row + r},${column + c}`, String(note));
        else kept.delete(`${row + r},${column + c}`);
      });
    });
    state(this).notes.set(sheetId, kept);
    return this;
  }
  setNote(note: string | null): this {
    return this.setNotes(filled(area(this), note));
  }
  getNotes(): string[][] {
    return read(
      this,
      (sheetId, row, column) => state(this).notes.get(sheetId)?.get(`${row},${column}`) ?? '',
    );
  }
  getNote(): string {
    return this.getNotes()[0]![0]!;
  }
  clearNote(): this {
    return this.setNote(null);
  }

  setDataValidations(rules: unknown): this {
    const matrix = fittingMatrix<DataValidation | null>('setDataValidations', area(this), rules);
    refuseProtected(state(this), area(this));
    setValidation(state(this), area(this), matrix);
    return this;
  }
  setDataValidation(rule: DataValidation | null): this {
    return this.setDataValidations(filled(area(this), rule));
  }
  clearDataValidations(): this {
    return this.setDataValidation(null);
  }
  getDataValidations(): (DataValidation | null)[][] {
    return read(this, (sheetId, row, column) =>
      validationAt(state(this), { sheetId, row, column, rows: 1, columns: 1 }),
    );
  }
  getDataValidation(): DataValidation | null {
    return this.getDataValidations()[0]![0]!;
  }

  merge(): this {
    refuseProtected(state(this), area(this));
    const { sheetId } = area(this);
    state(this).book.must({ type: 'ADD_MERGE', sheetId, target: [zoneOf(area(this))], force: true });
    return this;
  }
  breakApart(): this {
    refuseProtected(state(this), area(this));
    for (const merge of mergesIn(state(this), area(this))) {
      state(this).book.must({ type: 'REMOVE_MERGE', sheetId: merge.sheetId, target: [zoneOf(merge)] });
    }
    return this;
  }
  getMergedRanges(): Range[] {
    return mergesIn(state(this), area(this)).map((merge) => new Range(state(this), merge));
  }
  protect(): Protection {
    return protect(state(this), area(this), false);
  }
  activate(): this {
    state(this).book.select(area(this).sheetId, zoneOf(area(this)));
    return this;
  }
}

guardService(Range, 'Range', ['protect', 'merge', 'breakApart']);

export function rangeOf(host: HostState, place: Area): Range {
  return new Range(host, place);
}

export function selectedRange(host: HostState): Range {
  const { getters } = host.book.model;
  return new Range(host, areaOf(host.book.activeSheetId(), getters.getSelectedZone()));
}

export function activeCellRange(host: HostState): Range {
  const { sheetId, row, col } = host.book.model.getters.getActivePosition();
  return new Range(host, { sheetId, row, column: col, rows: 1, columns: 1 });
}
