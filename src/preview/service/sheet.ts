/** SpreadsheetApp.Sheet: one tab. */
import { type Area, areaOfA1, splitTabName } from './area';
import { type CallGate, GATE, guardService } from './call-gate';
import {
  type ConditionalFormatRule,
  conditionalFormatRules,
  setConditionalFormatRules,
} from './conditional-format';
import type { HostState } from './host-state';
import { type Protection, protect, protectionsOf } from './protection';
import { Range } from './range';
import { refuseProtected } from './range-place';
import { wrongSignature } from './refusals';
import { Spreadsheet } from './spreadsheet';

export class Sheet {
  readonly [GATE]: CallGate;
  readonly #state: HostState;
  readonly #id: string;

  constructor(state: HostState, sheetId: string) {
    this[GATE] = state.gate;
    this.#state = state;
    this.#id = sheetId;
  }

  static id(sheet: Sheet): string {
    return sheet.#id;
  }

  /** The tab's id, or the refusal that a deleted tab gives. */
  #sheetId(): string {
    if (!this.#state.book.exists(this.#id)) throw new Error('Sheet was deleted or does not exist.');
    return this.#id;
  }
  #whole(): Area {
    const { rows, columns } = this.#state.book.size(this.#sheetId());
    return { sheetId: this.#id, row: 0, column: 0, rows, columns };
  }
  #mustBeOpen(): void {
    refuseProtected(this.#state, this.#whole());
  }

  getName(): string {
    return this.#state.book.nameOf(this.#sheetId());
  }
  getSheetName(): string {
    return this.getName();
  }
  setName(name: string): this {
    const { book } = this.#state;
    const other = book.idOf(name);
    if (other && other !== this.#id) {
      throw new Error(`A sheet with the name "${name}" already exists. Please enter another name.`);
    }
    book.must({
      type: 'RENAME_SHEET',
      sheetId: this.#sheetId(),
      oldName: this.getName(),
      newName: String(name),
    });
    return this;
  }
  /** A number, as in Sheets; the same for as long as the tab lives. */
  getSheetId(): number {
    return [...this.#sheetId()].reduce(
      (hash, letter) => (hash * 31 + letter.charCodeAt(0)) % 2_147_483_647,
      7,
    );
  }
  getIndex(): number {
    return this.#state.book.sheetIds().indexOf(this.#sheetId()) + 1;
  }
  getParent(): Spreadsheet {
    return new Spreadsheet(this.#state);
  }
  activate(): this {
    this.#state.book.activate(this.#sheetId());
    return this;
  }
  isSheetHidden(): boolean {
    return !this.#state.book.model.getters.isSheetVisible(this.#sheetId());
  }
  hideSheet(): this {
    this.#state.book.must({ type: 'HIDE_SHEET', sheetId: this.#sheetId() });
    return this;
  }
  showSheet(): this {
    this.#state.book.must({ type: 'SHOW_SHEET', sheetId: this.#sheetId() });
    return this;
  }

  getLastRow(): number {
    return this.#state.book.usedSize(this.#sheetId()).rows;
  }
  getLastColumn(): number {
    return this.#state.book.usedSize(this.#sheetId()).columns;
  }
  getMaxRows(): number {
    return this.#whole().rows;
  }
  getMaxColumns(): number {
    return this.#whole().columns;
  }
  getDataRange(): Range {
    const { rows, columns } = this.#state.book.usedSize(this.#sheetId());
    const size = { rows: Math.max(rows, 1), columns: Math.max(columns, 1) };
    return new Range(this.#state, { sheetId: this.#id, row: 0, column: 0, ...size });
  }
  getRange(rowOrA1: number | string, column?: number, rows?: number, columns?: number): Range {
    if (typeof rowOrA1 === 'string' && column === undefined) return this.#rangeOfA1(rowOrA1);
    const sizes = [rowOrA1, column, rows ?? 1, columns ?? 1];
    if (!sizes.every((size) => typeof size === 'number' && Number.isInteger(size))) {
      throw wrongSignature('Sheet.getRange', [rowOrA1, column, rows, columns]);
    }
    const [row, col, height, width] = sizes as [number, number, number, number];
    if (row < 1) throw new Error('The starting row of the range is too small.');
    if (col < 1) throw new Error('The starting column of the range is too small.');
    if (height < 1) throw new Error('The number of rows in the range must be at least 1.');
    if (width < 1) throw new Error('The number of columns in the range must be at least 1.');
    return new Range(this.#state, {
      sheetId: this.#sheetId(),
      row: row - 1,
      column: col - 1,
      rows: height,
      columns: width,
    });
  }
  #rangeOfA1(text: string): Range {
    const { tab, rest } = splitTabName(text);
    const { book } = this.#state;
    const sheetId = tab === undefined ? this.#sheetId() : book.idOf(tab);
    const area = sheetId && areaOfA1(rest, sheetId, book.size(sheetId));
    if (!area) throw new Error('Range not found');
    return new Range(this.#state, area);
  }

  insertRowsAfter(row: number, count: number): this {
    return this.#insert('ROW', row - 1, count, 'after');
  }
  insertRowsBefore(row: number, count: number): this {
    return this.#insert('ROW', row - 1, count, 'before');
  }
  insertColumnsAfter(column: number, count: number): this {
    return this.#insert('COL', column - 1, count, 'after');
  }
  insertColumnsBefore(column: number, count: number): this {
    return this.#insert('COL', column - 1, count, 'before');
  }
  #insert(dimension: 'ROW' | 'COL', base: number, quantity: number, position: 'before' | 'after'): this {
    const size = dimension === 'ROW' ? this.#whole().rows : this.#whole().columns;
    if (base < 0 || base >= size || quantity < 1) throw new Error('Those rows or columns are out of bounds.');
    this.#mustBeOpen();
    const place = { sheetId: this.#id, sheetName: this.getName(), dimension, base, quantity, position };
    this.#state.book.must({ type: 'ADD_COLUMNS_ROWS', ...place });
    return this;
  }
  deleteRows(row: number, count: number): this {
    return this.#delete('ROW', row - 1, count, this.#whole().rows);
  }
  deleteColumns(column: number, count: number): this {
    return this.#delete('COL', column - 1, count, this.#whole().columns);
  }
  #delete(dimension: 'ROW' | 'COL', first: number, count: number, size: number): this {
    if (first < 0 || count < 1 || first + count > size)
      throw new Error('Those rows or columns are out of bounds.');
    if (count === size) throw new Error("You can't delete all the rows or columns of a sheet.");
    this.#mustBeOpen();
    const elements = Array.from({ length: count }, (_, index) => first + index);
    const place = { sheetId: this.#id, sheetName: this.getName(), dimension, elements };
    this.#state.book.must({ type: 'REMOVE_COLUMNS_ROWS', ...place });
    return this;
  }

  setFrozenRows(rows: number): this {
    if (rows < 0 || rows >= this.#whole().rows) throw new Error("You can't freeze all rows.");
    const command = rows === 0 ? { type: 'UNFREEZE_ROWS' } : { type: 'FREEZE_ROWS', quantity: rows };
    this.#state.book.must({ ...command, sheetId: this.#id });
    return this;
  }
  getFrozenRows(): number {
    return this.#state.book.model.getters.getPaneDivisions(this.#sheetId()).ySplit;
  }
  setFrozenColumns(columns: number): this {
    if (columns < 0 || columns >= this.#whole().columns) throw new Error("You can't freeze all columns.");
    const command =
      columns === 0 ? { type: 'UNFREEZE_COLUMNS' } : { type: 'FREEZE_COLUMNS', quantity: columns };
    this.#state.book.must({ ...command, sheetId: this.#id });
    return this;
  }
  getFrozenColumns(): number {
    return this.#state.book.model.getters.getPaneDivisions(this.#sheetId()).xSplit;
  }
  setColumnWidth(column: number, width: number): this {
    return this.setColumnWidths(column, 1, width);
  }
  setColumnWidths(column: number, count: number, width: number): this {
    return this.#resize('COL', column - 1, count, width, this.#whole().columns);
  }
  getColumnWidth(column: number): number {
    return this.#state.book.model.getters.getColSize(this.#sheetId(), column - 1);
  }
  setRowHeight(row: number, height: number): this {
    return this.setRowHeights(row, 1, height);
  }
  setRowHeights(row: number, count: number, height: number): this {
    return this.#resize('ROW', row - 1, count, height, this.#whole().rows);
  }
  #resize(dimension: 'ROW' | 'COL', first: number, count: number, size: number, limit: number): this {
    if (first < 0 || count < 1 || first + count > limit)
      throw new Error('Those rows or columns are out of bounds.');
    if (!(size > 0)) throw new Error('The size must be more than 0 pixels.');
    const elements = Array.from({ length: count }, (_, index) => first + index);
    this.#state.book.must({ type: 'RESIZE_COLUMNS_ROWS', sheetId: this.#id, dimension, elements, size });
    return this;
  }
  hideRows(row: number, count = 1): this {
    const elements = Array.from({ length: count }, (_, index) => row - 1 + index);
    this.#state.book.must({
      type: 'HIDE_COLUMNS_ROWS',
      sheetId: this.#sheetId(),
      dimension: 'ROW',
      elements,
    });
    return this;
  }
  isRowHiddenByUser(row: number): boolean {
    return this.#state.book.model.getters.isRowHiddenByUser(this.#sheetId(), row - 1);
  }
  setTabColor(color: string | null): this {
    const command = { type: 'COLOR_SHEET', sheetId: this.#sheetId(), ...(color ? { color } : {}) };
    this.#state.book.must(command);
    return this;
  }

  getConditionalFormatRules(): ConditionalFormatRule[] {
    return conditionalFormatRules(this.#state, this.#sheetId());
  }
  setConditionalFormatRules(rules: unknown): void {
    this.#mustBeOpen();
    setConditionalFormatRules(this.#state, this.#sheetId(), rules);
  }
  getProtections(type: string): Protection[] {
    return protectionsOf(this.#state, this.#sheetId(), type === 'SHEET');
  }
  protect(): Protection {
    return protect(this.#state, this.#whole(), true);
  }
  clear(): this {
    new Range(this.#state, this.#whole()).clear();
    return this;
  }
  clearContents(): this {
    new Range(this.#state, this.#whole()).clearContent();
    return this;
  }
}

guardService(Sheet, 'Sheet', ['activate', 'hideSheet', 'hideRows', 'protect']);
