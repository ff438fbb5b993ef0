/** SpreadsheetApp.newConditionalFormatRule: colours by formula, shown by the engine. */
import type { EngineStyle } from '../engine/engine';
import { toSheetsFormula } from '../engine/formula-text';
import { formulaEntry } from '../engine/typed-text';
import { type Area, areaOfA1, zoneOf } from './area';
import { type CallGate, GATE, guardService } from './call-gate';
import { cssColor } from './colors';
import type { HostState } from './host-state';
import { Range } from './range';
import { RangePlace } from './range-place';

/** A rule by formula, or one of another kind that a person made in the sheet, kept as the engine has it. */
type Rule = { areas: Area[]; style: EngineStyle; formula?: string; other?: object };

class BooleanCondition {
  readonly [GATE]: CallGate;
  readonly #formula: string;
  readonly #background: string | null;

  constructor(gate: CallGate, formula: string, background: string | null) {
    this[GATE] = gate;
    this.#formula = formula;
    this.#background = background;
  }
  getCriteriaValues(): string[] {
    return [this.#formula];
  }
  getBackground(): string | null {
    return this.#background;
  }
}

export class ConditionalFormatRule {
  readonly [GATE]: CallGate;
  readonly #state: HostState;
  readonly #rule: Rule;

  constructor(state: HostState, rule: Rule) {
    this[GATE] = state.gate;
    this.#state = state;
    this.#rule = rule;
  }
  static rule(rule: ConditionalFormatRule): Rule {
    return rule.#rule;
  }
  getRanges(): Range[] {
    return this.#rule.areas.map((area) => new Range(this.#state, area));
  }
  getBooleanCondition(): BooleanCondition | null {
    const { formula, style } = this.#rule;
    return formula === undefined ? null : new BooleanCondition(this[GATE], formula, style.fillColor ?? null);
  }
  copy(): ConditionalFormatRuleBuilder {
    return new ConditionalFormatRuleBuilder(this.#state, this.#rule);
  }
}

export class ConditionalFormatRuleBuilder {
  readonly [GATE]: CallGate;
  readonly #state: HostState;
  #rule: Rule;

  constructor(state: HostState, rule: Rule = { areas: [], style: {} }) {
    this[GATE] = state.gate;
    this.#state = state;
    this.#rule = { ...rule, style: { ...rule.style } };
  }
  whenFormulaSatisfied(formula: string): this {
    this.#rule.formula = String(formula);
    return this;
  }
  setBackground(color: string | null): this {
    return this.#styled({ fillColor: cssColor(color) });
  }
  setRanges(ranges: Range[]): this {
    this.#rule.areas = ranges.map((range) => ({ ...RangePlace.area(range) }));
    return this;
  }
  build(): ConditionalFormatRule {
    const { areas, formula, other } = this.#rule;
    if (areas.length === 0) throw new Error('Conditional format rule must have at least one range.');
    if (formula === undefined && !other) throw new Error('Conditional format rule must have a condition.');
    return new ConditionalFormatRule(this.#state, { ...this.#rule });
  }
  #styled(patch: { [Key in keyof EngineStyle]?: EngineStyle[Key] | undefined }): this {
    this.#rule.style = { ...this.#rule.style, ...patch } as EngineStyle;
    return this;
  }
}

for (const [serviceClass, name] of [
  [BooleanCondition, 'BooleanCondition'],
  [ConditionalFormatRule, 'ConditionalFormatRule'],
  [ConditionalFormatRuleBuilder, 'ConditionalFormatRuleBuilder'],
] as const) {
  guardService(serviceClass, name);
}

export function conditionalFormatRules(state: HostState, sheetId: string): ConditionalFormatRule[] {
  const { book } = state;
  return book.model.getters.getConditionalFormats(sheetId).map(({ rule, ranges }) => {
    const areas = ranges.flatMap((text) => areaOfA1(text, sheetId, book.size(sheetId)) ?? []);
    if (rule.type !== 'CellIsRule' || rule.operator !== 'customFormula') {
      return new ConditionalFormatRule(state, { areas, style: {}, other: rule });
    }
    const formula = toSheetsFormula(rule.values[0] ?? '', book.usesDecimalComma);
    return new ConditionalFormatRule(state, { areas, style: rule.style, formula });
  });
}

/** Replaces all rules of the tab, as the real service does. The first rule wins where several apply. */
export function setConditionalFormatRules(state: HostState, sheetId: string, rules: unknown): void {
  if (!Array.isArray(rules) || !rules.every((rule) => rule instanceof ConditionalFormatRule)) {
    throw new Error(
      'The parameters do not match the method signature for SpreadsheetApp.Sheet.setConditionalFormatRules.',
    );
  }
  const { book } = state;
  for (const { id } of book.model.getters.getConditionalFormats(sheetId)) {
    book.must({ type: 'REMOVE_CONDITIONAL_FORMAT', sheetId, id });
  }
  for (const built of rules) {
    const { areas, style, formula, other } = ConditionalFormatRule.rule(built);
    if (areas.some((area) => area.sheetId !== sheetId)) {
      throw new Error('Conditional format rule cannot reference a different sheet.');
    }
    const rule = other ?? {
      type: 'CellIsRule',
      operator: 'customFormula',
      values: [formulaEntry(formula ?? '', book.locale).content],
      style,
    };
    const ranges = areas.map((area) => book.rangeData(sheetId, zoneOf(area)));
    book.must({ type: 'ADD_CONDITIONAL_FORMAT', sheetId, ranges, cf: { id: book.freshId('rule'), rule } });
  }
}
