/** Spreadsheet locales such as "de_DE", as the engine wants them; separators and date order come from Intl. */
import type { EngineLocale } from './engine';

const SAMPLE_DAY = new Date(Date.UTC(2006, 0, 2));
const SUNDAY = 7;
const MONDAY = 1;

function dateFormatOf(tag: string): string {
  const parts = new Intl.DateTimeFormat(tag, {
    timeZone: 'UTC',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    calendar: 'gregory',
    numberingSystem: 'latn',
  }).formatToParts(SAMPLE_DAY);
  const separator = parts.find((part) => part.type === 'literal' && /[-./]/.test(part.value));
  const sign = /[-./]/.exec(separator?.value ?? '/')?.[0] ?? '/';
  const letters = parts.flatMap((part) => {
    if (part.type === 'year') return ['yyyy'];
    if (part.type === 'month') return [part.value.length > 1 ? 'mm' : 'm'];
    return part.type === 'day' ? [part.value.length > 1 ? 'dd' : 'd'] : [];
  });
  return letters.join(sign);
}

function separatorOf(tag: string, type: 'decimal' | 'group'): string | undefined {
  const parts = new Intl.NumberFormat(tag, { numberingSystem: 'latn', useGrouping: true }).formatToParts(
    1234567.8,
  );
  return parts.find((part) => part.type === type)?.value.replace(/[\u00a0\u202f]/g, ' ');
}

const known = new Map<string, EngineLocale>();

/** The engine's locale for a spreadsheet locale code. Throws on a code that Intl does not know. */
export function localeOf(code: string): EngineLocale {
  const locale = known.get(code) ?? makeLocale(code);
  known.set(code, locale);
  return locale;
}

function makeLocale(code: string): EngineLocale {
  const tag = code.replace(/_/g, '-');
  const decimalSeparator = separatorOf(tag, 'decimal') ?? '.';
  const thousandsSeparator = separatorOf(tag, 'group');
  return {
    name: new Intl.DisplayNames('en', { type: 'language' }).of(tag) ?? code,
    code,
    decimalSeparator,
    ...(thousandsSeparator ? { thousandsSeparator } : {}),
    weekStart: /[-_](US|CA|MX|BR|JP|IL|IN|ZA)$/.test(code) ? SUNDAY : MONDAY,
    dateFormat: dateFormatOf(tag),
    timeFormat: code === 'en_US' ? 'hh:mm:ss a' : 'hh:mm:ss',
    formulaArgSeparator: decimalSeparator === ',' ? ';' : ',',
  };
}
