/** SpreadsheetApp.Spreadsheet: the open workbook. */
import { NEW_TAB_SIZE } from '../engine/book';
import { areaOfA1, splitTabName } from './area';
import { type CallGate, GATE, guardService } from './call-gate';
import type { HostState } from './host-state';
import { type NamedRange, namedArea, namedRanges, removeName, setNamedArea } from './named-range';
import { activeCellRange, Range, selectedRange } from './range';
import { RangePlace } from './range-place';
import { wrongSignature } from './refusals';
import { Sheet } from './sheet';

export class Spreadsheet {
  readonly [GATE]: CallGate;
  readonly #state: HostState;

  constructor(state: HostState) {
    this[GATE] = state.gate;
    this.#state = state;
  }

  getId(): string {
    return this.#state.id;
  }
  getName(): string {
    return this.#state.title;
  }
  getSpreadsheetLocale(): string {
    return this.#state.book.locale.code;
  }
  getSpreadsheetTimeZone(): string {
    return this.#state.timeZone;
  }

  getSheets(): Sheet[] {
    return this.#state.book.sheetIds().map((id) => new Sheet(this.#state, id));
  }
  getSheetByName(name: string): Sheet | null {
    const id = this.#state.book.sheetIds().find((one) => this.#state.book.nameOf(one) === name);
    return id === undefined ? null : new Sheet(this.#state, id);
  }
  insertSheet(name?: string, index?: number): Sheet {
    const { book } = this.#state;
    if (name !== undefined && typeof name !== 'string')
      throw wrongSignature('Spreadsheet.insertSheet', [name]);
    const wanted = name ?? book.model.getters.getNextSheetName();
    if (book.idOf(wanted)) {
      throw new Error(`A sheet with the name "${wanted}" already exists. Please enter another name.`);
    }
    const sheetId = book.freshId('tab');
    // Where no place is given Sheets puts the new tab after the active one.
    const position = index ?? book.sheetIds().indexOf(book.activeSheetId()) + 1;
    const size = { rows: NEW_TAB_SIZE.rows, cols: NEW_TAB_SIZE.columns };
    book.must({ type: 'CREATE_SHEET', sheetId, name: wanted, position, ...size });
    book.activate(sheetId);
    return new Sheet(this.#state, sheetId);
  }
  deleteSheet(sheet: Sheet): void {
    if (this.#state.book.sheetIds().length === 1)
      throw new Error("You can't remove all the sheets in a document.");
    this.#state.book.must({ type: 'DELETE_SHEET', sheetId: Sheet.id(sheet), sheetName: sheet.getName() });
  }
  setActiveSheet(sheet: Sheet): Sheet {
    return sheet.activate();
  }
  getActiveSheet(): Sheet {
    return new Sheet(this.#state, this.#state.book.activeSheetId());
  }
  getActiveRange(): Range | null {
    if (this.#state.chartTabs.has(this.#state.book.activeSheetId())) return null;
    return selectedRange(this.#state);
  }
  getCurrentCell(): Range {
    return activeCellRange(this.#state);
  }
  getRange(a1: string): Range {
    const named = namedArea(this.#state, a1);
    if (named) return new Range(this.#state, named);
    const { tab, rest } = splitTabName(a1);
    const { book } = this.#state;
    const sheetId = tab === undefined ? book.activeSheetId() : book.idOf(tab);
    const area = sheetId && areaOfA1(rest, sheetId, book.size(sheetId));
    if (!area) throw new Error('Range not found');
    return new Range(this.#state, area);
  }

  getNamedRanges(): NamedRange[] {
    return namedRanges(this.#state);
  }
  getRangeByName(name: string): Range | null {
    const area = namedArea(this.#state, name);
    return area ? new Range(this.#state, area) : null;
  }
  setNamedRange(name: string, range: Range): void {
    setNamedArea(this.#state, name, RangePlace.area(range));
  }
  removeNamedRange(name: string): void {
    removeName(this.#state, name);
  }
}

guardService(Spreadsheet, 'Spreadsheet', ['rename', 'toast']);
