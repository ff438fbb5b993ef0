import { type ListUnit, unitOfText } from './list-units';

export type TextNumber =
  | { readonly value: number; readonly unit: ListUnit | undefined }
  /** Two numbers that the text may mean, as the grower writes them. */
  | { readonly either: readonly [string, string] };

const POINT = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*(\D.*)?$/i;
const COMMA = /^([+-]?(?:\d+,\d*|,\d+)(?:e[+-]?\d+)?)\s*(\D.*)?$/i;
/** "1.234": a thousand, or a little more than one. "0.125" can only be a fraction. */
const GROUP_OF_THREE = /^([+-]?[1-9]\d{0,2})([.,])(\d{3})$/;

/**
 * The number in a text, perhaps with a unit behind it; undefined where it is none.
 *
 * The locale's own decimal sign is read as such: "1,500" is 1.5 where people write a decimal comma, as when it is
 * typed into the sheet. The other sign before exactly three digits may part thousands and is never guessed. A point
 * before another count of digits is a decimal point everywhere; a comma is none where people write a point.
 */
export function textNumber(text: string, comma: boolean): TextNumber | undefined {
  const parts = COMMA.exec(text.trim()) ?? POINT.exec(text.trim());
  const [, digits = '', behind] = parts ?? [];
  const unit = behind === undefined ? undefined : unitOfText(behind, true);
  if (!parts || (behind !== undefined && !unit)) return undefined;
  const [, whole, sign, three] = GROUP_OF_THREE.exec(digits) ?? [];
  const own = comma ? ',' : '.';
  if (sign !== undefined && sign !== own) return { either: [`${whole}${three}`, `${whole}${own}${three}`] };
  if (digits.includes(',') && !comma) return undefined;
  return { value: Number(digits.replace(',', '.')), unit };
}
