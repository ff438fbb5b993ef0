/** Tells formulas that add up, count or average the cells above them, whatever their row is called. */
import { columnNumber } from '../block/column-number';
import type { TabContent } from '../contract';

/** Where a formula stands and below which headings. */
interface Place {
  readonly tab: TabContent;
  readonly row: number;
  readonly column: number;
  readonly headingRow: number;
}

const SUM = /^(SUM|SUBTOTAL|AGGREGATE|SUMPRODUCT|AVERAGE|MEDIAN|MIN|MAX|COUNT|COUNTA)\(([^()]*)\)$/;
const SUM_WHERE = /^(SUMIFS?|AVERAGEIFS?|COUNTIFS?)\(([^()]*)\)$/;
const AROUND = /^(?:ROUND|ROUNDUP|ROUNDDOWN|ARRAYFORMULA)\((.*?)(?:[;,]-?\d+)?\)$/;
/** A total in another unit: "=C12/10000". */
const CONVERTED = /^([A-Z]{1,3}(\d+))[*/]\d+(?:\.\d+)?$/;
const REFERENCE = /^(?:(.+)!)?([A-Z]{1,3})(\d+)(?::([A-Z]{1,3})(\d*))?$/;

/**
 * Whether the cell's formula is nothing but a sum, count or average of cells of its own column, above it and below the
 * headings, or right below it, or such a one in another unit. "=5-SUM(B4:B6)", what is left of a field, is none, nor is
 * the sum of another list.
 */
export function addsUpColumn(place: Place): boolean {
  const typed = place.tab.formulas[place.row - 1]?.[place.column - 1] ?? '';
  if (!typed.startsWith('=')) return false;
  let formula = typed.replace(/^=\+?|[\s$]/g, '').toUpperCase();
  for (let inner = AROUND.exec(formula); inner; inner = AROUND.exec(formula)) formula = inner[1] ?? '';
  const [, total = '', row] = CONVERTED.exec(formula) ?? [];
  if (isReference(total, place)) return addsUpColumn({ ...place, row: Number(row) });
  const terms = formula.split('+');
  return (terms.length > 1 || !isReference(formula, place)) && terms.every((term) => isTerm(term, place));
}

function isTerm(term: string, place: Place): boolean {
  if (isReference(term, place)) return true;
  const parts = (found: RegExpExecArray | null) => found?.[2]?.split(/[;,]/);
  const summed = parts(SUM.exec(term))?.filter((part) => !/^\d+$/.test(part));
  if (summed) return summed.length > 0 && summed.every((part) => isReference(part, place));
  return parts(SUM_WHERE.exec(term))?.some((part) => isReference(part, place)) ?? false;
}

/** Whether a reference is to cells of this column, this list and not of this row. */
function isReference(text: string, { tab, row, column, headingRow }: Place): boolean {
  const [, sheet, letters = '', first = '', lastLetters = letters, last = first] = REFERENCE.exec(text) ?? [];
  const isOwnTab =
    sheet === undefined || sheet.replace(/'/g, '') === tab.name.replace(/[\s$']/g, '').toUpperCase();
  if (letters === '' || !isOwnTab) return false;
  if (columnNumber(letters) !== column || columnNumber(lastLetters) !== column) return false;
  const [from, to] = [Number(first), last === '' ? Infinity : Number(last)];
  return (to < row && to > headingRow) || from === row + 1;
}
