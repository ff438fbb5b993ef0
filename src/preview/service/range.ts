/** SpreadsheetApp.Range: what the classes below it give, and notes, validation, merges, protection. */
import { type Area, areaOf, zoneOf } from './area';
import { guardService } from './call-gate';
import { type DataValidation, setValidation, validationAt } from './data-validation';
import type { HostState } from './host-state';
import { type Protection, protect } from './protection';
import {
  filled,
  fittingMatrix,
  frozen,
  isClosed,
  isCut,
  mergesIn,
  RangePlace,
  refuseProtected,
} from './range-place';
import { RangeValues, readCells } from './range-values';
import { Sheet } from './sheet';

const state = RangePlace.state;
const area = RangePlace.area;

export class Range extends RangeValues {
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
    return readCells(
      this,
      (sheetId, row, column) => state(this).notes.get(sheetId)?.get(`${row},${column}`) ?? '',
    );
  }
  getNote(): string {
    return this.getNotes()[0]![0]!;
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
  getDataValidations(): (DataValidation | null)[][] {
    return readCells(this, (sheetId, row, column) =>
      validationAt(state(this), { sheetId, row, column, rows: 1, columns: 1 }),
    );
  }
  clearDataValidations(): this {
    return this.setDataValidation(null);
  }

  merge(): this {
    refuseProtected(state(this), area(this));
    const { sheetId } = area(this);
    if (isCut(area(this), frozen(state(this), sheetId))) {
      throw new Error("You can't merge frozen and non-frozen cells.");
    }
    state(this).book.must({ type: 'ADD_MERGE', sheetId, target: [zoneOf(area(this))], force: true });
    return this;
  }
  getMergedRanges(): Range[] {
    return mergesIn(state(this), area(this)).map((merge) => new Range(state(this), merge));
  }
  canEdit(): boolean {
    return !isClosed(state(this), area(this));
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
