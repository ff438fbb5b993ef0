/** A workbook without a browser: the script over the engine, and what a person does, as methods. */
import type { Envelope } from '../../../shared/contract';
import { scriptValue } from '../engine/cell-values';
import { formulaEntry, typedIntoCell } from '../engine/typed-text';
import type { Host } from '../host';
import { type Area, areaOfA1, zoneOf } from '../service/area';
import type { CallGate, FailurePlan } from '../service/call-gate';
import type { HostState } from '../service/host-state';
import { type Range, rangeOf } from '../service/range';
import { Spreadsheet } from '../service/spreadsheet';
import { loadExcelJs } from '../xlsx/load-exceljs';
import { writeXlsx } from '../xlsx/write-xlsx';
import { makeHost, type WorkbookOptions } from './make-host';
import { NotingUi, type Shown } from './noting-ui';
import { startEntry } from './start-cells';

export class Workbook {
  /** The engine's grid and everything else below, for tests that need more than what is here. */
  readonly host: Host;
  readonly ui: NotingUi;
  /** Read and write as a script would; counted like the script's own calls, see counts(). */
  readonly spreadsheet: Spreadsheet;

  private constructor(
    private readonly options: WorkbookOptions,
    host: Host,
    ui: NotingUi,
  ) {
    this.host = host;
    this.ui = ui;
    this.spreadsheet = new Spreadsheet(host.state);
  }

  static async open(options: WorkbookOptions, snapshot?: unknown): Promise<Workbook> {
    const ui = new NotingUi();
    const workbook = new Workbook(options, await makeHost(options, ui, snapshot), ui);
    if (snapshot === undefined) workbook.fill();
    return workbook;
  }

  get state(): HostState {
    return this.host.state;
  }
  get gate(): CallGate {
    return this.host.state.gate;
  }
  get shown(): Shown {
    return this.ui.shown;
  }
  get callCounts(): Record<string, number> {
    return this.gate.callCounts;
  }
  get callTotal(): number {
    return this.gate.callTotal;
  }
  /** Calls that had to wait for Google; the others were queued or needed no answer. */
  get waits(): number {
    return this.gate.waits;
  }
  /** Cell-function calls by name since the workbook was opened or the counts were reset. */
  get cellCalls(): Record<string, number> {
    this.state.book.calculate();
    return Object.fromEntries(this.host.cellCalls);
  }
  resetCounts(): void {
    this.state.book.calculate();
    this.gate.resetCounts();
    this.host.cellCalls.clear();
  }

  /** Runs a function of the script as a menu item does. */
  call(functionName: string, ...values: unknown[]): unknown {
    return this.host.call(functionName, ...values);
  }

  /** One call of the sidebar, JSON text both ways. Gives the envelope. */
  ask(callName: string, request: unknown = {}): Envelope {
    const reply = this.host.callFromPage('answerSidebar', [callName, JSON.stringify(request)]);
    if (typeof reply !== 'string')
      throw new Error(`answerSidebar must return JSON text, got ${String(reply)}`);
    return JSON.parse(reply) as Envelope;
  }

  /** Value of a formula as it would show in a cell of that tab (the first one unless named), a matrix if it spills. */
  evaluate(formula: string, tab?: string): unknown {
    const { book } = this.state;
    const sheetId = tab === undefined ? book.sheetIds()[0]! : this.sheetId(tab);
    const { content } = formulaEntry(formula, book.locale);
    const result = book.model.getters.evaluateFormulaResult(sheetId, content);
    const plain = (cell: { value: unknown }): unknown =>
      scriptValue(book.engine, cell as never, this.state.timeZone);
    if (!Array.isArray(result)) return plain(result);
    const height = result[0]?.length ?? 0;
    return Array.from({ length: height }, (_, row) => result.map((column) => plain(column[row]!)));
  }

  /** Values of the used part of a tab, as Range.getValues gives them. Not counted as service calls. */
  values(tab: string): unknown[][] {
    return this.uncounted(() => this.dataRange(tab).getValues());
  }
  formulas(tab: string): string[][] {
    return this.uncounted(() => this.dataRange(tab).getFormulas());
  }
  shownValues(tab: string): string[][] {
    return this.uncounted(() => this.dataRange(tab).getDisplayValues());
  }
  value(tab: string, a1: string): unknown {
    return this.uncounted(() => rangeOf(this.state, this.area(tab, a1)).getValue());
  }
  formula(tab: string, a1: string): string {
    return this.uncounted(() => rangeOf(this.state, this.area(tab, a1)).getFormula());
  }
  /** A range to look at; what is called on it counts like a call of the script. */
  range(tab: string, a1: string): Range {
    return rangeOf(this.state, this.area(tab, a1));
  }
  /** The message that hovering over an error cell shows, or ''. */
  message(tab: string, a1: string): string {
    const { sheetId, row, column } = this.area(tab, a1);
    const cell = this.state.book.cell(sheetId, row, column);
    return cell.type === 'error' ? (cell.message ?? '') : '';
  }

  /** Types into a cell as a person does. */
  type(tab: string, a1: string, text: string): void {
    const { sheetId, row, column } = this.area(tab, a1);
    const { book } = this.state;
    const ownFormat = book.ownFormat(sheetId, row, column);
    const entry = typedIntoCell(text, ownFormat, book.locale, this.thisYear());
    const oldValue = this.value(tab, a1);
    book.must({ type: 'UPDATE_CELL', sheetId, row, col: column, ...entry });
    this.host.edited({ sheetId, row, column, rows: 1, columns: 1 }, text, oldValue);
  }
  select(tab: string, a1: string): void {
    const area = this.area(tab, a1);
    this.state.book.select(area.sheetId, zoneOf(area));
  }
  insertRows(tab: string, beforeRow: number, count: number): void {
    this.uncounted(() => this.spreadsheet.getSheetByName(tab)!.insertRowsBefore(beforeRow, count));
  }

  failOn(on: FailurePlan['on'], error?: Error | string, how?: Pick<FailurePlan, 'after' | 'forGood'>): void {
    this.gate.failOn(on, error, how);
  }
  clearFailures(): void {
    this.gate.clearFailures();
  }
  /** Somebody else protects a range (or, without a1, the tab): the person at the keyboard may not edit there. */
  protectByOther(tab: string, a1?: string): void {
    const sheetId = this.sheetId(tab);
    const size = this.state.book.size(sheetId);
    const area = a1 === undefined ? { sheetId, row: 0, column: 0, ...size } : this.area(tab, a1);
    const shared = { description: 'by somebody else', warningOnly: false, byOther: true };
    this.state.protections.push({
      id: this.state.protections.length + 1,
      area,
      wholeSheet: a1 === undefined,
      ...shared,
    });
  }
  /** The script's call number `call` (from 0) fails: before or after it took effect, or with every later one. */
  killAt(call: number, how: 'before' | 'after' | 'for good'): void {
    this.failOn(call, undefined, { after: how === 'after', forGood: how === 'for good' });
  }
  /** The tab becomes one that holds a chart and no cells. */
  makeChartTab(tab: string): void {
    this.state.chartTabs.add(this.sheetId(tab));
  }
  /** The grower turns cells into a table and gives its columns types. */
  typeColumns(tab: string, a1: string): void {
    this.state.typedColumns.push(this.area(tab, a1));
  }
  holdLockElsewhere(isHeld = true): void {
    this.state.lockHeldElsewhere = isHeld;
  }

  /** File > Make a copy: values, formulas, names, formats in a fresh workbook with the same (or another) script. */
  async copy(options: Partial<WorkbookOptions> = {}): Promise<Workbook> {
    const { timeZone, title } = this.state;
    const copied = await Workbook.open(
      { ...this.options, timeZone, title: `Copy of ${title}`, ...options },
      this.state.book.snapshot(),
    );
    for (const [sheetId, notes] of this.state.notes) copied.state.notes.set(sheetId, new Map(notes));
    return copied;
  }

  /** The workbook as an .xlsx file, as the page's "Save .xlsx" gives it. */
  async toXlsx(): Promise<Uint8Array> {
    const { Workbook: File } = await loadExcelJs();
    const file = new File();
    writeXlsx(this.state.book, file);
    return new Uint8Array(await file.xlsx.writeBuffer());
  }

  private sheetId(tab: string): string {
    const id = this.state.book.idOf(tab);
    if (!id) throw new Error(`There is no tab "${tab}"`);
    return id;
  }
  private area(tab: string, a1: string): Area {
    const sheetId = this.sheetId(tab);
    const area = areaOfA1(a1, sheetId, this.state.book.size(sheetId));
    if (!area) throw new Error(`"${a1}" is not a range`);
    return area;
  }
  private dataRange(tab: string): Range {
    const sheetId = this.sheetId(tab);
    const { rows, columns } = this.state.book.usedSize(sheetId);
    return rangeOf(this.state, {
      sheetId,
      row: 0,
      column: 0,
      rows: Math.max(rows, 1),
      columns: Math.max(columns, 1),
    });
  }
  private uncounted<Result>(work: () => Result): Result {
    return this.gate.uncounted(work);
  }
  private thisYear(): number {
    return this.state.now().getUTCFullYear();
  }

  private fill(): void {
    const { book } = this.state;
    const commands = Object.entries(this.options.tabs ?? {}).flatMap(([tab, rows]) => {
      const sheetId = this.sheetId(tab);
      return rows.flatMap((cells, row) =>
        cells.flatMap((cell, col) => {
          const entry = startEntry(this.state, cell);
          return entry.content === '' ? [] : [{ type: 'UPDATE_CELL', sheetId, row, col, ...entry }];
        }),
      );
    });
    book.batch(commands);
    for (const [tab, merges] of Object.entries(this.options.merges ?? {})) {
      this.uncounted(() => merges.map((a1) => this.range(tab, a1).merge()));
    }
    for (const [name, place] of Object.entries(this.options.names ?? {})) {
      this.uncounted(() => this.spreadsheet.setNamedRange(name, this.spreadsheet.getRange(place)));
    }
  }
}
