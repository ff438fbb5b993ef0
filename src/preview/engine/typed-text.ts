/**
 * What a text becomes when it is typed into a cell, or written by setValues: formula, number, date, TRUE or text.
 *
 * The engine would guess by its own rules; here the guess follows Google Sheets and the workbook's locale, and
 * whatever stays text is stored with an apostrophe where the engine would otherwise take it for something else.
 */

import type { EngineLocale } from './engine';
import { parseErrorFormula, toEngineFormula } from './formula-text';
import { serialOfDay } from './zone-time';

export type Entry = { content: string; format?: string };

const MONTHS = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');

/** A cell whose number format is plain text keeps whatever is written as text. */
export const PLAIN_TEXT_FORMAT = '@';

/** Text as literal text. */
export function literalText(text: string): Entry {
  if (text === '') return { content: '' };
  const isSafe = /^[\p{L}_][^\n]*$/u.test(text) && !/^(true|false)$/i.test(text);
  return { content: isSafe ? text : `'${text}` };
}

export function formulaEntry(formula: string, locale: EngineLocale): Entry {
  return { content: toEngineFormula(formula, locale.decimalSeparator === ',') ?? parseErrorFormula(formula) };
}

export function typedEntry(text: string, locale: EngineLocale, thisYear: number): Entry {
  if (text.startsWith("'")) return literalText(text.slice(1));
  if (text.startsWith('=') && text.length > 1) return formulaEntry(text, locale);
  const trimmed = text.trim();
  if (/^(true|false)$/i.test(trimmed)) return { content: trimmed.toUpperCase() };
  const read = typedNumber(trimmed, locale) ?? typedMoment(trimmed, locale, thisYear);
  if (read) return read;
  // Sheets takes a leading + or - for the start of a formula.
  if (/^[+-]./.test(text)) return formulaEntry(`=${text}`, locale);
  if (/^#(N\/A|REF!|NAME\?|VALUE!|DIV\/0!|NUM!|NULL!|ERROR!)$/.test(trimmed)) return { content: trimmed };
  return literalText(text);
}

/** What a person's typing puts into a cell that carries the given number format: the cell keeps that format. */
export function typedIntoCell(
  text: string,
  ownFormat: string,
  locale: EngineLocale,
  thisYear: number,
): Entry {
  if (ownFormat === PLAIN_TEXT_FORMAT) return literalText(text);
  const entry = typedEntry(text, locale, thisYear);
  return ownFormat === '' ? entry : { content: entry.content };
}

function escaped(sign: string): string {
  return sign.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/ /g, '[ \\u00a0\\u202f]');
}

function typedNumber(text: string, locale: EngineLocale): Entry | undefined {
  const group = locale.thousandsSeparator ?? '';
  const decimal = escaped(locale.decimalSeparator);
  const whole = group ? `(?:\\d{1,3}(?:${escaped(group)}\\d{3})+|\\d+)` : '\\d+';
  const number = `(?:${whole}(?:${decimal}\\d*)?|${decimal}\\d+)`;
  const match = new RegExp(`^([+-]?)(\\$?)\\s?(${number})(e[+-]?\\d+)?\\s?(%?)$`, 'i').exec(text);
  if (!match) return undefined;
  const [, sign = '', dollar, digits = '', exponent = '', percent] = match;
  const plain = digits
    .replace(group ? new RegExp(escaped(group), 'g') : /$^/, '')
    .replace(locale.decimalSeparator, '.');
  const value = Number(`${sign}${plain}${exponent}`) / (percent ? 100 : 1);
  if (!Number.isFinite(value)) return undefined;
  if (percent) return { content: String(value), format: /\./.test(plain) ? '0.00%' : '0%' };
  return dollar ? { content: String(value), format: '"$"#,##0.00' } : { content: String(value) };
}

function typedMoment(text: string, locale: EngineLocale, thisYear: number): Entry | undefined {
  const match = /^(.*?)[ T]?(?:(\d{1,2}):(\d{2})(?::(\d{2}))?)?$/.exec(text);
  const [, dayText = '', hour, minute, second] = match ?? [];
  const time = hour === undefined ? 0 : timeFraction(Number(hour), Number(minute), Number(second ?? 0));
  if (time === undefined) return undefined;
  const timeFormat = second === undefined ? 'hh:mm' : 'hh:mm:ss';
  if (dayText === '') return hour === undefined ? undefined : { content: String(time), format: timeFormat };
  const day = typedDay(dayText, locale, thisYear);
  if (!day) return undefined;
  const format = hour === undefined ? day.format : `${day.format} ${timeFormat}`;
  return { content: String(day.serial + time), format };
}

function timeFraction(hour: number, minute: number, second: number): number | undefined {
  return hour < 24 && minute < 60 && second < 60 ? (hour * 3600 + minute * 60 + second) / 86_400 : undefined;
}

type Day = { serial: number; format: string };

function typedDay(text: string, locale: EngineLocale, thisYear: number): Day | undefined {
  const numeric = /^(\d{1,4})([-/.])(\d{1,2})(?:\2(\d{1,4}))?$/.exec(text);
  if (numeric) return numericDay(numeric, locale, thisYear);
  const named =
    /^([a-z]{3,9})\.? (\d{1,2})(?:,? (\d{4}))?$/i.exec(text) ??
    swapped(/^(\d{1,2})[ -]([a-z]{3,9})\.?(?:[ -](\d{4}))?$/i.exec(text));
  if (!named) return undefined;
  const month = MONTHS.indexOf((named[1] ?? '').slice(0, 3).toLowerCase()) + 1;
  if (month === 0 || !isMonthName(named[1] ?? '', month)) return undefined;
  return dayOf(Number(named[3] ?? thisYear), month, Number(named[2]), named[3] ? 'd mmm yyyy' : 'd mmm');
}

function isMonthName(word: string, month: number): boolean {
  const full = new Intl.DateTimeFormat('en', { month: 'long', timeZone: 'UTC' }).format(
    Date.UTC(2000, month - 1, 1),
  );
  return word.length === 3 || full.toLowerCase() === word.toLowerCase();
}

function swapped(match: RegExpExecArray | null): (string | undefined)[] | undefined {
  return match ? [match[0], match[2], match[1], match[3]] : undefined;
}

function numericDay(match: RegExpExecArray, locale: EngineLocale, thisYear: number): Day | undefined {
  const [, first = '', sign = '', second = '', third] = match;
  if (first.length === 4) {
    return third === undefined
      ? undefined
      : dayOf(Number(first), Number(second), Number(third), 'yyyy-mm-dd');
  }
  const isDotLocale = locale.dateFormat.includes('.');
  if (sign === '.' && !isDotLocale) return undefined;
  const dayFirst = locale.dateFormat.indexOf('d') < locale.dateFormat.indexOf('m');
  const [day, month] = dayFirst ? [first, second] : [second, first];
  const year = third === undefined ? thisYear : fullYear(third);
  const order = dayFirst ? ['d', 'm'] : ['m', 'd'];
  const format = [...order, ...(third === undefined ? [] : ['yyyy'])].join(sign);
  return dayOf(year, Number(month), Number(day), format);
}

/** Two-digit years as Sheets reads them: 00-29 are 20xx, 30-99 are 19xx (from memory). */
function fullYear(text: string): number {
  const year = Number(text);
  if (text.length > 2) return year;
  return year < 30 ? 2000 + year : 1900 + year;
}

function dayOf(year: number, month: number, day: number, format: string): Day | undefined {
  const serial = serialOfDay(year, month, day);
  return serial === undefined ? undefined : { serial, format };
}
