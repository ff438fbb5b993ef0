/** The unit that a heading names for a field, and what in it looks like a unit but cannot be read. */

import { LIST_UNITS, type ListQuantity, type ListUnit, unitOfText } from '../units/unit-words';
import { FIELD_QUANTITIES } from './headings';
import type { GroupField, PaddockField } from './model';
import { UNREAD_UNITS } from './unread-units';

type Field = PaddockField | GroupField;

/**
 * The unit that a heading names for a field: in brackets, behind a comma or "in", or as the only fitting unit among
 * its words. Undefined where it names none or several.
 */
export function headingUnit(text: string, field: Field): ListUnit | undefined {
  const wanted = FIELD_QUANTITIES[field];
  if (!wanted) return undefined;
  for (const remark of remarksIn(text)) {
    const unit = fitting(unitOfText(remark, true), wanted, text);
    if (unit) return unit;
  }
  const units = unitsAmong(text, wanted);
  return units.length === 1 ? units[0] : units.length === 0 ? unitAtEnd(text, wanted) : undefined;
}

/** The units that the headings over the columns of a list name for their fields. */
export function headingUnits(
  columns: Readonly<Record<string, number>>,
  textOf: (column: number) => string,
): Record<string, ListUnit> {
  return Object.fromEntries(
    Object.entries(columns).flatMap(([field, column]) => {
      const unit = headingUnit(textOf(column), field as Field);
      return unit ? [[field, unit]] : [];
    }),
  );
}

/** "Size are", in two rows of headings: of an area the word means nothing else where nothing follows it. */
function unitAtEnd(text: string, wanted: ListQuantity): ListUnit | undefined {
  if (wanted !== 'area') return undefined;
  const last = (/\S+$/.exec(withoutBrackets(text).trim())?.[0] ?? '').replace(/\./g, '');
  const unit = /^\p{L}$/u.test(last) ? undefined : unitOfText(last, true);
  return unit && LIST_UNITS[unit].quantity === wanted ? unit : undefined;
}

export interface HeadingDoubt {
  /** unit: this is a unit, but none that can be read for the field. remark: it may be one or mean anything. */
  readonly kind: 'unit' | 'remark';
  readonly text: string;
}

/** What a heading says in the place of a unit where it names none that can be read for the field. */
export function headingDoubt(text: string, field: Field): HeadingDoubt | undefined {
  const wanted = FIELD_QUANTITIES[field];
  if (!wanted || headingUnit(text, field)) return undefined;
  const remarks = remarksIn(text);
  const unit = remarks.find((remark) => looksLikeUnit(remark, wanted)) ?? unitInWords(text, wanted);
  if (unit !== undefined) return { kind: 'unit', text: unit };
  const remark = remarks.find((one) => !(field === 'until' && DATES.test(one)));
  return remark === undefined ? undefined : { kind: 'remark', text: remark };
}

/** "Until" may hold a date, and "(date or weight)" says so. */
const DATES = /\b(date|day)\b/i;

/** What stands in brackets, then what stands behind a comma, colon, dash or "in". */
function remarksIn(text: string): string[] {
  const brackets = [...text.matchAll(/[([{]([^)\]}]*)/g)].map((found) => found[1] ?? '');
  const behind = withoutBrackets(text)
    .split(/[,;:]|\s[-–—]\s|\bin\s/i)
    .slice(1);
  return [...brackets, ...behind].map((remark) => remark.trim()).filter((remark) => remark !== '');
}

export function withoutBrackets(text: string): string {
  return text.replace(/[([{][^)\]}]*[)\]}]?/g, ' ');
}

/** A gain in "lb" or "kg" is meant a day, save under a heading such as "Weekly gain". */
export function fitting(
  unit: ListUnit | undefined,
  wanted: ListQuantity,
  heading: string,
): ListUnit | undefined {
  if (!unit || LIST_UNITS[unit].quantity === wanted) return unit;
  const isMass = unit === 'lb' || unit === 'oz' || unit === 'kg' || unit === 'g';
  if (wanted !== 'massPerDay' || !isMass) return undefined;
  return isWeekly(heading) ? `${unit}/week` : `${unit}/day`;
}

function isWeekly(heading: string): boolean {
  return /\b(weekly|week|wk)\b/i.test(heading) && !/\b(daily|day|adg)\b/i.test(heading);
}

/** Words in the longest unit: "kg per pig per day". */
const MOST_WORDS = 5;

/** Every fitting unit among the words of a heading; "ac per pig" is no area. */
function unitsAmong(text: string, wanted: ListQuantity): ListUnit[] {
  const words = text.split(/[\s,;:()[\]{}]+/).filter((word) => word !== '');
  const found = new Set<ListUnit>();
  for (let i = 0; i < words.length; ) {
    const { unit, count } = longestUnit(words.slice(i, i + MOST_WORDS), wanted, text);
    if (unit && !/^(per|a|\/.*)$/i.test(words[i + count] ?? '')) found.add(unit);
    i += count;
  }
  return [...found];
}

function longestUnit(words: readonly string[], wanted: ListQuantity, heading: string) {
  for (let count = words.length; count > 0; count--) {
    const unit = fitting(unitOfText(words.slice(0, count).join(' '), false), wanted, heading);
    if (unit) return { unit, count };
  }
  return { unit: undefined, count: 1 };
}

/** Letters that also number sides and rows. */
const ALSO_LETTERS = /^[adgt]$/i;

function looksLikeUnit(remark: string, wanted: ListQuantity): boolean {
  const plain = remark.replace(/^(in|approx|about|est|ca)\b\.?\s*|[.~]/gi, '').trim();
  const other = ALSO_LETTERS.test(plain) ? undefined : unitOfText(plain, true);
  const first = unitOfText(/^[^\s/]+/.exec(plain)?.[0] ?? '', true);
  const isRate = first !== undefined && /^\S+\s*(\/|per\s)/i.test(plain);
  const isPower = /^[a-zµ]{1,3}\s*([²³]|\^\d)$/i.test(plain);
  return (
    other !== undefined ||
    isRate ||
    isPower ||
    UNREAD_UNITS[wanted].includes(plain.toLowerCase()) ||
    unitsAmong(remark, wanted).length > 1
  );
}

/** A unit at the end of a heading without a mark before it, several units in one, or a week without a weight. */
function unitInWords(text: string, wanted: ListQuantity): string | undefined {
  const units = unitsAmong(text, wanted);
  if (units.length > 1) return units.join(', ');
  const words = withoutBrackets(text).trim().split(/\s+/);
  const last = words.length > 1 ? (words[words.length - 1] ?? '').replace(/\./g, '') : '';
  const marked = unitOfText(last, true);
  if (UNREAD_UNITS[wanted].includes(last.toLowerCase())) return last;
  if (marked && LIST_UNITS[marked].quantity === wanted) return last;
  return wanted === 'massPerDay' && isWeekly(text) ? 'week' : undefined;
}
