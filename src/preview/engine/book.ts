/** One workbook in the engine: the few readings and changes that the service stand-ins need. Indexes start at 0. */
import { CALL_END, CALL_START } from './call-history';
import type { Engine, EngineCell, EngineCommand, EngineLocale, EngineModel, EngineZone } from './engine';
import { plainQuotes } from './formula-text';
import { HOOKS_KEY, type HostHooks } from './host-hooks';
import { localeOf } from './locale';
import { sheetsFormat } from './number-format';
import { BATCH_COMMAND } from './prepare-engine';

export type Size = { rows: number; columns: number };
export type Refusal = { isSuccessful: boolean; reasons: readonly string[] };

/** Size of a new tab in Google Sheets. */
export const NEW_TAB_SIZE: Size = { rows: 1000, columns: 26 };

export class Book {
  readonly model: EngineModel;
  private nextId = 1;

  constructor(
    readonly engine: Engine,
    snapshot: unknown,
    hooks: HostHooks,
  ) {
    this.model = new engine.Model(snapshot, { custom: { [HOOKS_KEY]: hooks } });
  }

  get locale(): EngineLocale {
    return this.model.getters.getLocale();
  }

  get usesDecimalComma(): boolean {
    return this.locale.decimalSeparator === ',';
  }

  run(command: EngineCommand | Record<string, unknown>): Refusal {
    const { type, ...payload } = command as { type: string };
    const dispatch = this.model.dispatch as unknown as (type: string, payload: object) => Refusal;
    return dispatch(type, payload);
  }

  /** Runs a command that must be possible; the caller has checked what Sheets would check. */
  must(command: EngineCommand | Record<string, unknown>): void {
    const result = this.run(command);
    const reasons = result.reasons.filter((reason) => reason !== 'NoChanges');
    if (reasons.length > 0) {
      throw new Error(`The preview's engine refused ${String(command.type)}: ${reasons.join(', ')}`);
    }
  }

  /** One change for the engine, one recalculation. */
  batch(commands: (EngineCommand | Record<string, unknown>)[]): void {
    if (commands.length > 0) this.must({ type: BATCH_COMMAND, commands });
  }

  /** All that the work changes is one undo step. */
  asOneStep<Result>(work: () => Result): Result {
    this.run({ type: CALL_START });
    try {
      return work();
    } finally {
      this.run({ type: CALL_END });
    }
  }

  setLocale(code: string): void {
    if (code !== this.locale.code) this.must({ type: 'UPDATE_LOCALE', locale: localeOf(code) });
  }

  freshId(kind: string): string {
    let id: string;
    do id = `${kind}-${this.nextId++}`;
    while (this.model.getters.tryGetSheet(id));
    return id;
  }

  sheetIds(): readonly string[] {
    return this.model.getters.getSheetIds();
  }

  exists(sheetId: string): boolean {
    return this.model.getters.tryGetSheet(sheetId) !== undefined;
  }

  nameOf(sheetId: string): string {
    return this.model.getters.getSheetName(sheetId);
  }

  /** Tab names are told apart without regard to letter case, as in Sheets. */
  idOf(name: string): string | undefined {
    return this.sheetIds().find((id) => this.nameOf(id).toLowerCase() === name.toLowerCase());
  }

  size(sheetId: string): Size {
    const { numberOfRows, numberOfCols } = this.model.getters.getSheetSize(sheetId);
    return { rows: numberOfRows, columns: numberOfCols };
  }

  /** Rows and columns from A1 that hold anything: values, formulas, results that spilled there. */
  usedSize(sheetId: string): Size {
    const used: Size = { rows: 0, columns: 0 };
    for (const { row, col } of this.model.getters.getEvaluatedCellsPositions(sheetId)) {
      if (row < used.rows && col < used.columns) continue;
      if (this.cell(sheetId, row, col).type === 'empty' && !this.formula(sheetId, row, col)) continue;
      used.rows = Math.max(used.rows, row + 1);
      used.columns = Math.max(used.columns, col + 1);
    }
    return used;
  }

  cell(sheetId: string, row: number, column: number): EngineCell {
    const cell = this.model.getters.getEvaluatedCell({ sheetId, row, col: column });
    if (cell.type !== 'text') return cell;
    const stored = this.model.getters.getCell({ sheetId, row, col: column });
    // A cell that only carries a format may show what spills into it.
    const isOwn = stored !== undefined && !stored.isFormula && stored.content !== '';
    if (!isOwn) return { ...cell, value: plainQuotes(cell.value) };
    if (cell.link && !stored.content.startsWith("'") && stored.content !== cell.link.url) return cell;
    // The engine reads "'[label](address)" as a link and shows the label; Sheets keeps the text.
    return { ...cell, value: stored.content.replace(/^'/, '') };
  }

  /** Calculates what is due, as whoever looks at a cell does. */
  calculate(): void {
    this.cell(this.sheetIds()[0]!, 0, 0);
  }

  /** The engine's own text of the formula, or ''. */
  formula(sheetId: string, row: number, column: number): string {
    const cell = this.model.getters.getCell({ sheetId, row, col: column });
    return cell?.isFormula ? cell.compiledFormula.toFormulaString(this.model.getters) : '';
  }

  /** The format the cell itself carries, '' where it has none. */
  ownFormat(sheetId: string, row: number, column: number): string {
    return sheetsFormat(this.engineFormat(sheetId, row, column));
  }

  /** The same as the engine writes it. */
  engineFormat(sheetId: string, row: number, column: number): string {
    return this.model.getters.getCell({ sheetId, row, col: column })?.format ?? '';
  }

  style(sheetId: string, row: number, column: number) {
    return this.model.getters.getCellStyle({ sheetId, row, col: column });
  }

  rangeData(sheetId: string, zone: EngineZone) {
    return this.model.getters.getRangeDataFromZone(sheetId, zone);
  }

  activeSheetId(): string {
    return this.model.getters.getActiveSheetId();
  }

  activate(sheetId: string): void {
    const from = this.activeSheetId();
    if (from !== sheetId) this.must({ type: 'ACTIVATE_SHEET', sheetIdFrom: from, sheetIdTo: sheetId });
  }

  select(sheetId: string, zone: EngineZone): void {
    this.activate(sheetId);
    this.model.selection.selectZone({ cell: { col: zone.left, row: zone.top }, zone });
  }

  /** The engine's own exportData writes formulas in short and makes a second model to see whether that can be read. */
  snapshot(): unknown {
    return (this.model as unknown as { _exportData(isShort: boolean): unknown })._exportData(false);
  }
}
