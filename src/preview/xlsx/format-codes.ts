/** The number format of each cell style of an .xlsx file, written in one way, so that two files can be compared. */
import { attribute, elements } from './xml-elements';

/** ECMA-376 part 1, 18.8.30; 39 and 40 with the blank of 37 and 38, as the file library has them. */
const BUILT_IN: Readonly<Record<string, string>> = {
  0: 'General',
  1: '0',
  2: '0.00',
  3: '#,##0',
  4: '#,##0.00',
  9: '0%',
  10: '0.00%',
  11: '0.00E+00',
  12: '# ?/?',
  13: '# ??/??',
  14: 'mm-dd-yy',
  15: 'd-mmm-yy',
  16: 'd-mmm',
  17: 'mmm-yy',
  18: 'h:mm AM/PM',
  19: 'h:mm:ss AM/PM',
  20: 'h:mm',
  21: 'h:mm:ss',
  22: 'm/d/yy h:mm',
  37: '#,##0 ;(#,##0)',
  38: '#,##0 ;[Red](#,##0)',
  39: '#,##0.00 ;(#,##0.00)',
  40: '#,##0.00 ;[Red](#,##0.00)',
  45: 'mm:ss',
  46: '[h]:mm:ss',
  47: 'mmss.0',
  48: '##0.0E+0',
  49: '@',
};

/** By the numbers that cell styles refer to; '' is automatic. A number that stands for nothing here is its own code. */
export function formatCodeOf(styles: string): (id: string) => string {
  const own = new Map(
    elements(elements(styles, 'numFmts')[0]?.inner ?? '', 'numFmt').map(({ attributes }) => [
      attribute(attributes, 'numFmtId'),
      attribute(attributes, 'formatCode'),
    ]),
  );
  return (id) => sameCode(own.get(id) ?? BUILT_IN[id || '0'] ?? `built-in ${id}`);
}

/** A text in quotes, an escaped sign, something in brackets, a gap or filler with its sign, any other sign. */
const PART = /"([^"]*)"|\\(.)|\[[^\]]*\]|[_*]\\?.|./gsu;
const MEANS_ITSELF = /[^\p{L}\d#?.,%@*_;[\]"\\]/u;
const DATE_PART = /[ymdhs]/;

/** Signs that mean themselves with and without a backslash or quotes are the same; so are small and capital letters. */
function sameCode(code: string): string {
  if (/^general$/i.test(code)) return '';
  const plain = code.replace(PART, (part, quoted?: string, escaped?: string) => {
    const text = quoted ?? escaped;
    if (text === undefined) return part.toLowerCase().replace('\\', '');
    return [...text].map((sign) => (MEANS_ITSELF.test(sign) ? sign : `\\${sign}`)).join('');
  });
  // A point between the parts of a date is no decimal point.
  return DATE_PART.test(plain.replace(/\\.|\[\$[^\]]*\]/gu, '')) ? plain.replace(/\\([.,])/g, '$1') : plain;
}
