/** SpreadsheetApp.newDataValidation: the rules a script of ours may set, shown by the engine. */
import type { EngineZone } from '../engine/engine';
import { type Area, zonesByEntry } from './area';
import { type CallGate, GATE, guardService } from './call-gate';
import type { HostState } from './host-state';

type Criterion = { type: string; values: string[]; displayStyle?: string };
type Rule = { criterion: Criterion; allowInvalid: boolean; helpText: string };

/** Names of the engine's rules among the criteria of Sheets. */
const CRITERIA: Readonly<Record<string, string>> = { isBoolean: 'CHECKBOX', isBetween: 'NUMBER_BETWEEN' };

export class DataValidation {
  readonly [GATE]: CallGate;
  readonly #rule: Rule;

  constructor(gate: CallGate, rule: Rule) {
    this[GATE] = gate;
    this.#rule = rule;
  }
  static rule(validation: DataValidation): Rule {
    return validation.#rule;
  }
  getCriteriaType(): string {
    return CRITERIA[this.#rule.criterion.type] ?? 'CUSTOM_FORMULA';
  }
  getCriteriaValues(): unknown[] {
    return [...this.#rule.criterion.values];
  }
}

export class DataValidationBuilder {
  readonly [GATE]: CallGate;
  #rule: Rule = { criterion: { type: '', values: [] }, allowInvalid: true, helpText: '' };

  constructor(gate: CallGate) {
    this[GATE] = gate;
  }
  requireNumberBetween(low: number, high: number): this {
    this.#rule.criterion = { type: 'isBetween', values: [String(low), String(high)] };
    return this;
  }
  requireCheckbox(): this {
    this.#rule.criterion = { type: 'isBoolean', values: [] };
    return this;
  }
  setAllowInvalid(allowInvalid: boolean): this {
    this.#rule.allowInvalid = allowInvalid;
    return this;
  }
  build(): DataValidation {
    if (this.#rule.criterion.type === '') throw new Error('A data validation needs a criterion.');
    return new DataValidation(this[GATE], { ...this.#rule });
  }
}

guardService(DataValidation, 'DataValidation');
guardService(DataValidationBuilder, 'DataValidationBuilder');

export function setValidation(state: HostState, area: Area, matrix: (DataValidation | null)[][]): void {
  const { book } = state;
  for (const [validation, zones] of zonesByEntry(area, matrix)) {
    const ranges = zones.map((zone) => book.rangeData(area.sheetId, zone));
    if (validation) {
      const { criterion, allowInvalid } = DataValidation.rule(validation);
      const rule = { id: book.freshId('validation'), criterion, isBlocking: !allowInvalid };
      book.must({ type: 'ADD_DATA_VALIDATION_RULE', sheetId: area.sheetId, ranges, rule });
    } else {
      clearValidation(state, area.sheetId, zones);
    }
  }
}

/** Takes the zones out of every rule, the way a clearing in Sheets does. */
function clearValidation(state: HostState, sheetId: string, zones: EngineZone[]): void {
  const { book } = state;
  const temporary = book.freshId('validation');
  const ranges = zones.map((zone) => book.rangeData(sheetId, zone));
  const rule = { id: temporary, criterion: { type: 'isEqual', values: ['0'] }, isBlocking: false };
  // A new rule takes its cells away from the older ones; then the new one goes.
  book.must({ type: 'ADD_DATA_VALIDATION_RULE', sheetId, ranges, rule });
  book.must({ type: 'REMOVE_DATA_VALIDATION_RULE', sheetId, id: temporary });
}

/** A value that a blocking rule turns down: scripts may not write it either. */
export function breaksValidation(
  { book }: HostState,
  { sheetId, row, column }: Area,
  matrix: readonly (readonly unknown[])[],
): boolean {
  const { getters } = book.model;
  return matrix.some((line, r) =>
    line.some((value, c) => {
      if (value === '' || (typeof value === 'string' && value.startsWith('='))) return false;
      const found = getters.getValidationResultForCellValue(value as number, {
        sheetId,
        row: row + r,
        col: column + c,
      });
      return !found.isValid && found.rule.isBlocking === true;
    }),
  );
}

export function validationAt(state: HostState, cell: Area): DataValidation | null {
  const position = { sheetId: cell.sheetId, row: cell.row, col: cell.column };
  const rule = state.book.model.getters.getValidationRuleForCell(position);
  if (!rule) return null;
  const criterion = { ...rule.criterion, values: [...rule.criterion.values] };
  return new DataValidation(state.gate, { criterion, allowInvalid: rule.isBlocking !== true, helpText: '' });
}
