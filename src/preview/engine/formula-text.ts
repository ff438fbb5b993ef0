/**
 * Formulas as Google Sheets writes them and as the engine stores them.
 *
 * The engine stores US notation: `,` between arguments, `.` in numbers, `\"` for a quote inside a text. In Sheets a
 * quote inside a text is doubled, `;` separates arguments in every locale, and in locales with a decimal comma a
 * `,` is only ever a decimal sign.
 */

/** Hidden engine function that keeps a formula which Sheets would not have been able to read. */
export const PARSE_ERROR_FUNCTION = 'FORMULA.PARSE.ERROR';

type Piece = { text: string; kind: 'text' | 'name' | 'code' };

/** Splits a formula into texts in double quotes, names in single quotes, and the rest. */
function piecesOf(formula: string, quoteInText: RegExp): Piece[] {
  const pieces: Piece[] = [];
  let rest = formula;
  while (rest !== '') {
    const text = quoteInText.exec(rest)?.[0];
    const name = /^'(?:[^']|'')*'/.exec(rest)?.[0];
    const found = text ?? name ?? /^[^"']+/.exec(rest)?.[0] ?? rest;
    pieces.push({ text: found, kind: text ? 'text' : name ? 'name' : 'code' });
    rest = rest.slice(found.length);
  }
  return pieces;
}

const SHEETS_TEXT = /^"(?:[^"]|"")*"/;
const ENGINE_TEXT = /^"(?:[^"\\]|\\.)*"/;

/** Text that a formula gave, without the backslash that the engine keeps before each quote in it. */
export function plainQuotes(text: string): string {
  return text.replace(/\\"/g, '"');
}

function toEngineText(text: string): string {
  return `"${text.slice(1, -1).replace(/""/g, '\\"')}"`;
}

function toSheetsText(text: string): string {
  return `"${text.slice(1, -1).replace(/\\"/g, '""')}"`;
}

/** Formula for the engine, or undefined where Sheets would say "Formula parse error". */
export function toEngineFormula(formula: string, decimalComma: boolean): string | undefined {
  if (hasOpenText(formula)) return undefined;
  let braces = 0;
  let readable = true;
  const translateCode = (code: string): string =>
    code.replace(/[{}]|\d+[.,]\d+|[;,\\]/g, (sign, at: number) => {
      if (sign === '{') braces += 1;
      if (sign === '}') braces -= 1;
      if (sign === '{' || sign === '}') return sign;
      if (/\d/.test(sign)) {
        const isReference = /[A-Za-z_$]/.test(code[at - 1] ?? '');
        if (decimalComma && (sign.includes('.') || isReference)) readable = false;
        return decimalComma ? sign.replace(',', '.') : sign;
      }
      if (braces > 0) return decimalComma && sign === '\\' ? ',' : sign;
      if (sign === '\\' || (sign === ',' && decimalComma)) readable = false;
      return ',';
    });
  const translated = piecesOf(formula, SHEETS_TEXT)
    .map(({ text, kind }) =>
      kind === 'text' ? toEngineText(text) : kind === 'name' ? text : translateCode(text),
    )
    .join('');
  return readable ? translated : undefined;
}

function hasOpenText(formula: string): boolean {
  return piecesOf(formula, SHEETS_TEXT).some(({ text, kind }) => kind === 'code' && /["']/.test(text));
}

/** Formula as Sheets shows it in that locale. */
export function toSheetsFormula(formula: string, decimalComma: boolean): string {
  const kept = keptFormula(formula);
  if (kept !== undefined) return kept;
  let braces = 0;
  const translateCode = (code: string): string =>
    code.replace(/[{}]|\d+\.\d+|[;,]/g, (sign) => {
      if (sign === '{') braces += 1;
      if (sign === '}') braces -= 1;
      if (!decimalComma || sign === '{' || sign === '}') return sign;
      if (/\d/.test(sign)) return sign.replace('.', ',');
      if (sign === ',') return braces > 0 ? '\\' : ';';
      return sign;
    });
  return piecesOf(formula, ENGINE_TEXT)
    .map(({ text, kind }) =>
      kind === 'text' ? toSheetsText(text) : kind === 'name' ? text : translateCode(text),
    )
    .join('');
}

/** An engine formula that shows the parse error and remembers the text. */
export function parseErrorFormula(formula: string): string {
  return `=${PARSE_ERROR_FUNCTION}("${encodeURIComponent(formula)}")`;
}

function keptFormula(formula: string): string | undefined {
  const start = `=${PARSE_ERROR_FUNCTION}("`;
  return formula.startsWith(start) ? decodeURIComponent(formula.slice(start.length, -2)) : undefined;
}
