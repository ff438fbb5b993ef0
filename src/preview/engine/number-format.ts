/** Number formats as scripts write them and as the engine wants them. */
import type { Engine } from './engine';
import { outsideTexts } from './outside-texts';

const AUTOMATIC = new Set(['', 'General', 'general']);

/**
 * Plain text "@" under the engine's name. With "@" itself the engine shows the apostrophe of "'=1+1", and without
 * the apostrophe it would take "=1+1" for a formula; a four-part format has neither trouble.
 */
const ENGINE_TEXT_FORMAT = '0;-0;0;@';

/** The Sheets pattern of an engine format. Elsewhere "hhhh" is the hour of the day and "a" nothing. */
export function sheetsFormat(format: string): string {
  if (format === ENGINE_TEXT_FORMAT) return '@';
  return outsideTexts(format, (part) => part.replace(/hhhh/g, '[h]').replace(/a+/g, 'AM/PM'));
}

/**
 * Engine format for a Sheets pattern; '' is automatic. Undefined where the engine cannot show it.
 * The engine has no one-letter hour, minute or second, and of durations only hours.
 */
export function engineFormat(engine: Engine, pattern: string): string | undefined {
  if (AUTOMATIC.has(pattern)) return '';
  if (pattern === '@') return ENGINE_TEXT_FORMAT;
  const known = outsideTexts(pattern, engineTimes);
  try {
    engine.helpers.formatValue(1, { format: known, locale: engine.DEFAULT_LOCALE });
    return known;
  } catch {
    return undefined;
  }
}

function engineTimes(part: string): string {
  return part
    .replace(/\[h+\](?=:)/gi, 'hhhh')
    .replace(/(^|[^h])h(?!h)/g, '$1hh')
    .replace(/:m(?!m)/g, ':mm')
    .replace(/:s(?!s)/g, ':ss')
    .replace(/AM\/PM/gi, 'a');
}
