export type TextNumber =
  | {
      readonly value: number;
      /** What stands behind the number, as a unit does. */
      readonly behind: string;
      /** The locale decided that a comma parts thousands: "3,322" where people write a decimal point. */
      readonly byLocale?: true;
    }
  /** Two numbers that the text may mean, as the grower writes them. */
  | { readonly either: readonly [string, string]; readonly behind: string };

const NUMBER =
  /^(?:[~≈±]|(?:ca|circa|approx|about|around|etwa|environ|env|unos|ongeveer|ungefär|omkring)\b\.?)?\s*([+-]?)([\d.,][\d.,'’\u00a0\u202f ]*)(e[+-]?\d+)?\s*(\D.*)?$/i;
const FEET_AND_INCHES = /^(\d+)\s*(?:'|′|ft\.?|feet)\s*(\d+(?:\.\d+)?)\s*(?:"|″|''|in\.?)$/i;
/** "3/4 acre", "1 1/2 ac": without a unit it may be a day. */
const FRACTION = /^(?:(\d+)\s+)?(\d{1,2})\s*\/\s*([1-9]\d?)\s+(\p{L}.*)$/u;
const INCHES_PER_FOOT = 12;
/** Thousands parted by blanks or apostrophes, which nobody writes for a decimal sign. */
const PARTED = /^\d{1,3}([ '’\u00a0\u202f]\d{3})+(?=[.,]\d*$|$)/;
/** "1,234.5", "1.234,5", "1.234.567": the signs leave one reading. */
const PLAIN_BY_SIGNS = /^\d{1,3}(?:(?:,\d{3})+\.\d*|(?:\.\d{3})+,\d*|(?:,\d{3}){2,}|(?:\.\d{3}){2,})$/;
const ONE_SIGN = /^\d*[.,]?\d*$/;
/** "1.234": a thousand, or a little more than one. "0.125" can only be a fraction. */
const GROUP_OF_THREE = /^([1-9]\d{0,2})([.,])(\d{3})$/;

/**
 * The number in a text and what stands behind it; undefined where it is none.
 *
 * The locale's own decimal sign is read as such: "1,500" is 1.5 where people write a decimal comma, as when it is
 * typed into the sheet. A comma before exactly three digits parts thousands where people write a point; a point
 * there, where people write a comma, may be either and is never guessed. Any other single sign is a decimal one.
 */
export function textNumber(text: string, comma: boolean): TextNumber | undefined {
  const [, feet, inches] = FEET_AND_INCHES.exec(text.trim()) ?? [];
  if (feet !== undefined) return { value: Number(feet) + Number(inches) / INCHES_PER_FOOT, behind: 'ft' };
  const [, wholes = '0', part, of, quantity = ''] = FRACTION.exec(text.trim()) ?? [];
  if (of !== undefined) return { value: Number(wholes) + Number(part) / Number(of), behind: quantity };
  const [, minus = '', run = '', power = '', behind = ''] = NUMBER.exec(text.trim()) ?? [];
  // An apostrophe behind the digits is a foot mark.
  const [, typed = '', mark = ''] = /^(.*?)(['’]?)\s*$/.exec(run) ?? [];
  const joined = typed.replace(PARTED, (thousands) => thousands.replace(/\D/g, ''));
  const read = numberOf(joined, comma, joined !== typed);
  if (read === undefined) return undefined;
  const unit = `${mark}${behind}`.trim();
  if ('either' in read) {
    const [many, few] = read.either;
    return { either: [`${minus}${many}`, `${minus}${few}`], behind: unit };
  }
  return { ...read, value: Number(`${minus}${read.value}${power}`), behind: unit };
}

type Digits = { value: string; byLocale?: true } | { either: readonly [string, string] };

function numberOf(digits: string, comma: boolean, isParted: boolean): Digits | undefined {
  if (!/\d/.test(digits)) return undefined;
  if (PLAIN_BY_SIGNS.test(digits)) {
    const last = Math.max(digits.lastIndexOf(','), digits.lastIndexOf('.'));
    const isDecimal = digits.split(digits[last]!).length === 2;
    const whole = (isDecimal ? digits.slice(0, last) : digits).replace(/\D/g, '');
    return { value: isDecimal ? `${whole}.${digits.slice(last + 1)}` : whole };
  }
  if (!ONE_SIGN.test(digits)) return undefined;
  const [, whole, sign, three] = GROUP_OF_THREE.exec(digits) ?? [];
  if (sign === undefined || sign === (comma ? ',' : '.') || isParted)
    return { value: digits.replace(',', '.') };
  return comma
    ? { either: [`${whole}${three}`, `${whole},${three}`] }
    : { value: `${whole}${three}`, byLocale: true };
}
