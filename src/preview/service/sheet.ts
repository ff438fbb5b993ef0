/** SpreadsheetApp.Sheet: one tab. */
import { areaOfA1, splitTabName } from './area';
import { guardService } from './call-gate';
import {
  type ConditionalFormatRule,
  conditionalFormatRules,
  setConditionalFormatRules,
} from './conditional-format';
import { type Protection, protect } from './protection';
import { Range } from './range';
import { chartTab, wrongSignature } from './refusals';
import { refuseClosed, SheetGrid, whole } from './sheet-grid';

const state = SheetGrid.state;
const tabId = SheetGrid.id;

export class Sheet extends SheetGrid {
  getName(): string {
    return state(this).book.nameOf(tabId(this));
  }
  getSheetName(): string {
    return this.getName();
  }
  setName(name: string): this {
    const { book } = state(this);
    const other = book.idOf(name);
    if (other && other !== tabId(this)) {
      throw new Error(`A sheet with the name "${name}" already exists. Please enter another name.`);
    }
    book.must({
      type: 'RENAME_SHEET',
      sheetId: tabId(this),
      oldName: this.getName(),
      newName: String(name),
    });
    return this;
  }
  activate(): this {
    state(this).book.activate(tabId(this));
    return this;
  }

  getType(): 'GRID' | 'OBJECT' {
    return isChart(this) && state(this).modes.chartTabsTell ? 'OBJECT' : 'GRID';
  }
  getLastRow(): number {
    refuseChart(this, 'getLastRow');
    return state(this).book.usedSize(tabId(this)).rows;
  }
  getLastColumn(): number {
    refuseChart(this, 'getLastColumn');
    return state(this).book.usedSize(tabId(this)).columns;
  }
  getDataRange(): Range {
    refuseChart(this, 'getDataRange');
    const { rows, columns } = state(this).book.usedSize(tabId(this));
    const size = { rows: Math.max(rows, 1), columns: Math.max(columns, 1) };
    return new Range(state(this), { sheetId: tabId(this), row: 0, column: 0, ...size });
  }
  getRange(rowOrA1: number | string, column?: number, rows?: number, columns?: number): Range {
    refuseChart(this, 'getRange');
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
    return new Range(state(this), {
      sheetId: tabId(this),
      row: row - 1,
      column: col - 1,
      rows: height,
      columns: width,
    });
  }
  #rangeOfA1(text: string): Range {
    const { tab, rest } = splitTabName(text);
    const { book } = state(this);
    const sheetId = tab === undefined ? tabId(this) : book.idOf(tab);
    const area = sheetId && areaOfA1(rest, sheetId, book.size(sheetId));
    if (!area) throw new Error('Range not found');
    return new Range(state(this), area);
  }

  getConditionalFormatRules(): ConditionalFormatRule[] {
    return conditionalFormatRules(state(this), tabId(this));
  }
  setConditionalFormatRules(rules: unknown): void {
    refuseClosed(this);
    setConditionalFormatRules(state(this), tabId(this), rules);
  }
  protect(): Protection {
    return protect(state(this), whole(this), true);
  }
  clear(): this {
    new Range(state(this), whole(this)).clear();
    return this;
  }
}

function isChart(sheet: Sheet): boolean {
  return state(sheet).chartTabs.has(tabId(sheet));
}

function refuseChart(sheet: Sheet, method: string): void {
  if (isChart(sheet)) throw chartTab(method);
}

guardService(Sheet, 'Sheet', ['activate', 'hideSheet', 'protect']);
