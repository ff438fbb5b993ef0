/** The rows and columns of a tab: inserting, deleting, freezing, sizes, hiding. */
import type { Area } from './area';
import { type CallGate, GATE, guardService } from './call-gate';
import type { HostState } from './host-state';
import { frozen, isCut, mergesIn, refuseProtected } from './range-place';

export class SheetGrid {
  readonly [GATE]: CallGate;
  readonly #state: HostState;
  readonly #id: string;

  constructor(state: HostState, sheetId: string) {
    this[GATE] = state.gate;
    this.#state = state;
    this.#id = sheetId;
  }

  /** For the other services; scripts have no use for these. */
  static state(sheet: SheetGrid): HostState {
    return sheet.#state;
  }
  /** The tab's id, or the refusal that a deleted tab gives. */
  static id(sheet: SheetGrid): string {
    if (!sheet.#state.book.exists(sheet.#id)) throw new Error('Sheet was deleted or does not exist.');
    return sheet.#id;
  }

  getMaxRows(): number {
    return whole(this).rows;
  }
  getMaxColumns(): number {
    return whole(this).columns;
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
    const size = dimension === 'ROW' ? whole(this).rows : whole(this).columns;
    if (base < 0 || base >= size || quantity < 1) throw new Error('Those rows or columns are out of bounds.');
    refuseClosed(this);
    const place = {
      sheetId: tabId(this),
      sheetName: state(this).book.nameOf(tabId(this)),
      dimension,
      base,
      quantity,
      position,
    };
    state(this).book.must({ type: 'ADD_COLUMNS_ROWS', ...place });
    return this;
  }
  /** As one drags them: `columns` from A1, `to` the column in front of which they come to stand, as it stands now. */
  moveColumns(columns: { getColumn(): number; getNumColumns(): number }, to: number): this {
    const [first, count] = [columns.getColumn() - 1, columns.getNumColumns()];
    if (to < 1 || to > whole(this).columns + 1) throw new Error('Those rows or columns are out of bounds.');
    if (to - 1 >= first && to - 1 <= first + count) return this;
    refuseClosed(this);
    const elements = Array.from({ length: count }, (_, index) => first + index);
    const isRight = to - 1 > first;
    const place = {
      sheetId: tabId(this),
      sheetName: state(this).book.nameOf(tabId(this)),
      dimension: 'COL',
      base: isRight ? to - 2 : to - 1,
      position: isRight ? 'after' : 'before',
      elements,
    };
    state(this).book.must({ type: 'MOVE_COLUMNS_ROWS', ...place });
    return this;
  }
  deleteRows(row: number, count: number): this {
    return this.#delete('ROW', row - 1, count, whole(this).rows);
  }
  deleteColumns(column: number, count: number): this {
    return this.#delete('COL', column - 1, count, whole(this).columns);
  }
  #delete(dimension: 'ROW' | 'COL', first: number, count: number, size: number): this {
    if (first < 0 || count < 1 || first + count > size)
      throw new Error('Those rows or columns are out of bounds.');
    if (count === size) throw new Error("You can't delete all the rows or columns of a sheet.");
    refuseClosed(this);
    const elements = Array.from({ length: count }, (_, index) => first + index);
    const place = {
      sheetId: tabId(this),
      sheetName: state(this).book.nameOf(tabId(this)),
      dimension,
      elements,
    };
    state(this).book.must({ type: 'REMOVE_COLUMNS_ROWS', ...place });
    return this;
  }

  setFrozenRows(rows: number): this {
    return this.#freeze('ROWS', rows);
  }
  getFrozenRows(): number {
    return frozen(state(this), tabId(this)).rows;
  }
  setFrozenColumns(columns: number): this {
    return this.#freeze('COLUMNS', columns);
  }
  getFrozenColumns(): number {
    return frozen(state(this), tabId(this)).columns;
  }
  #freeze(dimension: 'ROWS' | 'COLUMNS', quantity: number): this {
    const name = dimension.toLowerCase() as Lowercase<typeof dimension>;
    if (quantity < 0 || quantity >= whole(this)[name]) throw new Error(`You can't freeze all ${name}.`);
    const sides = { rows: 0, columns: 0, [name]: quantity };
    if (mergesIn(state(this), whole(this)).some((merge) => isCut(merge, sides))) {
      throw new Error(`You can't freeze ${name} which contain only part of a merged cell.`);
    }
    const command =
      quantity === 0 ? { type: `UNFREEZE_${dimension}` } : { type: `FREEZE_${dimension}`, quantity };
    state(this).book.must({ ...command, sheetId: tabId(this) });
    return this;
  }
  setColumnWidth(column: number, width: number): this {
    return this.#resize('COL', column - 1, 1, width, whole(this).columns);
  }
  #resize(dimension: 'ROW' | 'COL', first: number, count: number, size: number, limit: number): this {
    if (first < 0 || count < 1 || first + count > limit)
      throw new Error('Those rows or columns are out of bounds.');
    if (!(size > 0)) throw new Error('The size must be more than 0 pixels.');
    const elements = Array.from({ length: count }, (_, index) => first + index);
    state(this).book.must({ type: 'RESIZE_COLUMNS_ROWS', sheetId: tabId(this), dimension, elements, size });
    return this;
  }
  hideColumns(column: number, count = 1): this {
    const elements = Array.from({ length: count }, (_, index) => column - 1 + index);
    state(this).book.must({
      type: 'HIDE_COLUMNS_ROWS',
      sheetId: tabId(this),
      dimension: 'COL',
      elements,
    });
    return this;
  }
  showColumns(column: number, count = 1): this {
    const elements = Array.from({ length: count }, (_, index) => column - 1 + index);
    state(this).book.must({ type: 'UNHIDE_COLUMNS_ROWS', sheetId: tabId(this), dimension: 'COL', elements });
    return this;
  }
  isColumnHiddenByUser(column: number): boolean {
    return state(this).book.model.getters.isColHiddenByUser(tabId(this), column - 1);
  }
  isRowHiddenByUser(row: number): boolean {
    return state(this).book.model.getters.isRowHiddenByUser(tabId(this), row - 1);
  }
}

const state = SheetGrid.state;
const tabId = SheetGrid.id;

/** The whole tab as an area. */
export function whole(sheet: SheetGrid): Area {
  const sheetId = tabId(sheet);
  return { sheetId, row: 0, column: 0, ...state(sheet).book.size(sheetId) };
}

export function refuseClosed(sheet: SheetGrid): void {
  refuseProtected(state(sheet), whole(sheet));
}

guardService(SheetGrid, 'Sheet', ['hideRows', 'hideColumns', 'showColumns']);
