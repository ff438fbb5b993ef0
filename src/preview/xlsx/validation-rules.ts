/** Data validation between .xlsx files and the engine. What one of them cannot say is left out. */
import type { DataValidation, Workbook, Worksheet } from 'exceljs';
import type { Book, Size } from '../engine/book';
import { toEngineFormula, toSheetsFormula } from '../engine/formula-text';
import { DAY_MS, UNIX_EPOCH_SERIAL } from '../engine/zone-time';
import { a1Of, areaOf, areaOfA1, splitTabName } from '../service/area';
import { engineTabName } from './engine-tab-name';
import { zonesOfCells } from './zones-of-cells';

/** isWhole: the engine knows no rule for whole numbers, and keeps what it does not know for the saved file. */
type Criterion = {
  type: string;
  values: string[];
  displayStyle?: string;
  dateValue?: string;
  isWhole?: boolean;
};

const NUMBER_TYPES: Readonly<Record<string, string>> = {
  between: 'isBetween',
  notBetween: 'isNotBetween',
  equal: 'isEqual',
  notEqual: 'isNotEqual',
  greaterThan: 'isGreaterThan',
  greaterThanOrEqual: 'isGreaterOrEqualTo',
  lessThan: 'isLessThan',
  lessThanOrEqual: 'isLessOrEqualTo',
};
const DATE_TYPES: Readonly<Record<string, string>> = {
  between: 'dateIsBetween',
  notBetween: 'dateIsNotBetween',
  equal: 'dateIs',
  greaterThan: 'dateIsAfter',
  greaterThanOrEqual: 'dateIsOnOrAfter',
  lessThan: 'dateIsBefore',
  lessThanOrEqual: 'dateIsOnOrBefore',
};
const TICKED_OR_NOT = ['TRUE', 'FALSE'];
/** Longest list that Excel takes when the values stand in the rule itself, from Microsoft's limits. */
const LONGEST_LIST = 255;
/** The first day that Excel knows: any valid date is on it or after. */
const FIRST_DAY = new Date(Date.UTC(1900, 0, 1));

/** The rules of a tab for an engine snapshot, cut to the tab's size. */
export function readValidations(file: Workbook, sheet: Worksheet, size: Size): unknown[] {
  const { model } = (sheet as unknown as { dataValidations: { model: Record<string, DataValidation> } })
    .dataValidations;
  const cellsOf = new Map<DataValidation, { row: number; column: number }[]>();
  // The file library gives each cell of a rule the same object.
  for (const [address, rule] of Object.entries(model)) {
    const cell = areaOfA1(address, '', size);
    if (!cell || cell.row >= size.rows || cell.column >= size.columns) continue;
    const cells = cellsOf.get(rule) ?? [];
    cells.push(cell);
    cellsOf.set(rule, cells);
  }
  return [...cellsOf].flatMap(([rule, cells], index) => {
    const zones = zonesOfCells(cells);
    const criterion = engineCriterion(file, rule);
    // A formula counts from the first cell of its range: with several ranges that cell is not known any more.
    if (!criterion || (criterion.type === 'customFormula' && zones.length > 1)) return [];
    const isBlocking = rule.showErrorMessage === true && (rule.errorStyle ?? 'stop') === 'stop';
    const ranges = zones.map((zone) => a1Of(areaOf('', zone)));
    return [{ id: `validation-${sheet.id}-${index}`, criterion, isBlocking, ranges }];
  });
}

function engineCriterion(file: Workbook, rule: DataValidation): Criterion | undefined {
  const formulae: unknown[] = rule.formulae ?? [];
  const operator = rule.operator ?? 'between';
  switch (rule.type) {
    case 'list':
      return listCriterion(file, String(formulae[0] ?? ''));
    case 'whole':
    case 'decimal': {
      const criterion = criterionOf(NUMBER_TYPES[operator], formulae.map(numberText));
      return criterion && rule.type === 'whole' ? { ...criterion, isWhole: true } : criterion;
    }
    case 'date':
      return criterionOf(DATE_TYPES[operator], formulae.map(dayText), 'exactDate');
    case 'custom': {
      const formula = toEngineFormula(`=${String(formulae[0] ?? '')}`, false);
      return criterionOf('customFormula', [formula]);
    }
    default:
      return undefined;
  }
}

function criterionOf(
  type: string | undefined,
  values: (string | undefined)[],
  dateValue?: string,
): Criterion | undefined {
  const known = values.filter((value) => value !== undefined);
  if (type === undefined || known.length === 0 || known.length < values.length) return undefined;
  return { type, values: known, ...(dateValue ? { dateValue } : {}) };
}

function numberText(value: unknown): string | undefined {
  return typeof value === 'number' && Number.isFinite(value) ? String(value) : undefined;
}

function dayText(value: unknown): string | undefined {
  if (!(value instanceof Date) || Number.isNaN(value.getTime())) return undefined;
  return `${value.getUTCMonth() + 1}/${value.getUTCDate()}/${value.getUTCFullYear()}`;
}

/** A list of values in double quotes, a range, or the name of a range. */
function listCriterion(file: Workbook, formula: string): Criterion | undefined {
  if (formula.startsWith('"')) {
    const values = formula
      .slice(1, -1)
      .split(',')
      .map((value) => value.trim().replace(/""/g, '"'));
    // A file has no tick boxes: this is how ours are written.
    if (values.join() === TICKED_OR_NOT.join()) return { type: 'isBoolean', values: [] };
    return { type: 'isValueInList', values, displayStyle: 'arrow' };
  }
  const named = file.definedNames.model.find(({ name }) => name.toLowerCase() === formula.toLowerCase());
  const place = named?.ranges.length === 1 ? (named.ranges[0] ?? '') : formula;
  const { tab, rest } = splitTabName(place);
  if (!/^\$?[A-Z]{1,3}\$?\d+(:\$?[A-Z]{1,3}\$?\d+)?$/.test(rest)) return undefined;
  const prefix = tab === undefined ? '' : `'${engineTabName(tab)}'!`;
  return { type: 'isValueInRange', values: [`${prefix}${rest}`], displayStyle: 'arrow' };
}

export function writeValidations(book: Book, sheetId: string, sheet: Worksheet): void {
  const target = (sheet as unknown as { dataValidations: { add(place: string, rule: DataValidation): void } })
    .dataValidations;
  for (const { criterion, ranges, isBlocking } of book.model.getters.getDataValidationRules(sheetId)) {
    const rule = fileRule(book, sheetId, criterion as Criterion);
    if (!rule) continue;
    const errorStyle = isBlocking ? 'stop' : 'warning';
    for (const range of ranges) {
      const place = a1Of(areaOf(sheetId, range.zone));
      target.add(place, { ...rule, allowBlank: true, showErrorMessage: true, errorStyle });
    }
  }
}

type FileRule = Pick<DataValidation, 'type' | 'formulae' | 'operator'>;

function fileRule(book: Book, sheetId: string, criterion: Criterion): FileRule | undefined {
  const { type, values, dateValue, isWhole } = criterion;
  const numberOperator = operatorOf(NUMBER_TYPES, type);
  if (numberOperator) {
    return { type: isWhole ? 'whole' : 'decimal', operator: numberOperator, formulae: values.map(Number) };
  }
  const dateOperator = operatorOf(DATE_TYPES, type);
  if (dateOperator && (dateValue ?? 'exactDate') === 'exactDate') {
    return { type: 'date', operator: dateOperator, formulae: values.map(dayOfText) };
  }
  switch (type) {
    case 'isValueInList':
      return literalList(values);
    case 'isValueInRange':
      return { type: 'list', formulae: [fixedRange(book, sheetId, values[0] ?? '')] };
    case 'isBoolean':
      return literalList(TICKED_OR_NOT);
    case 'dateIsValid':
      return { type: 'date', operator: 'greaterThanOrEqual', formulae: [FIRST_DAY] };
    case 'customFormula':
      return { type: 'custom', formulae: [toSheetsFormula(values[0] ?? '', false).replace(/^=/, '')] };
    default:
      return undefined;
  }
}

function operatorOf(types: Readonly<Record<string, string>>, type: string): DataValidation['operator'] {
  return Object.keys(types).find((operator) => types[operator] === type) as DataValidation['operator'];
}

function literalList(values: string[]): FileRule | undefined {
  const list = values.map((value) => value.replace(/"/g, '""')).join(',');
  if (values.some((value) => value.includes(',')) || list.length > LONGEST_LIST) return undefined;
  return { type: 'list', formulae: [`"${list}"`] };
}

/** Day of an engine criterion: "4/21/2026" or a serial number. */
function dayOfText(text: string): Date {
  const [month, day, year] = text.split('/').map(Number);
  if (year === undefined) return new Date((Number(text) - UNIX_EPOCH_SERIAL) * DAY_MS);
  return new Date(Date.UTC(year, (month ?? 1) - 1, day ?? 1));
}

function fixedRange(book: Book, sheetId: string, place: string): string {
  const range = book.model.getters.getRangeFromSheetXC(sheetId, place);
  const fixed = a1Of(areaOf(range.sheetId, range.zone)).replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
  return range.sheetId === sheetId ? fixed : `'${book.nameOf(range.sheetId)}'!${fixed}`;
}
