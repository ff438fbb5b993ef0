/** What a typed argument means: its value for the answer in the page and its text in the formula. */
import { numberLiteral } from './number-literal';

export type Typed =
  | { readonly value: number | string | boolean; readonly literal: string }
  | { readonly problem: string };

const PLAIN = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;
const FRACTION = /^(\d+)\s*\/\s*(\d+)$/;

/**
 * Reads numbers (5, 5.5, or 5,5 where the spreadsheet writes a comma), fractions (16/3), percents (75%),
 * TRUE and FALSE; anything else is text. A number that may mean a thousand or a thousandth is a problem.
 */
export function readTyped(typed: string, comma: boolean): Typed {
  const text = typed.trim();
  if (text === '') return { value: '', literal: '' };
  if (/^(true|false)$/i.test(text))
    return { value: text.toLowerCase() === 'true', literal: text.toUpperCase() };
  const grouped = comma ? /^\d{1,3}(\.\d{3})+(,\d+)?$/ : /^\d{1,3}(,\d{3})+(\.\d+)?$/;
  if (grouped.test(text)) {
    return { problem: `write ${text.replace(comma ? /\./g : /,/g, '')}, without a sign between thousands` };
  }
  const fraction = FRACTION.exec(text);
  if (fraction && Number(fraction[2]) !== 0) {
    const [, top = '', bottom = ''] = fraction;
    return { value: Number(top) / Number(bottom), literal: `${top}/${bottom}` };
  }
  const percent = text.endsWith('%');
  const number = readNumber(percent ? text.slice(0, -1).trim() : text, comma);
  if (number === undefined) return { value: text, literal: `"${text.replace(/"/g, '""')}"` };
  const value = percent ? Number((number / 100).toPrecision(15)) : number;
  return { value, literal: numberLiteral(value, comma) };
}

function readNumber(text: string, comma: boolean): number | undefined {
  const pointed = comma ? text.replace(',', '.') : text;
  return PLAIN.test(pointed) ? Number(pointed) : undefined;
}
