/** Number formats as scripts write them and as the engine wants them. */
import type { Engine } from './engine';

/** What Range.getNumberFormat gives for a cell without a format of its own (from memory). */
export const AUTOMATIC_FORMAT = '0.###############';

const AUTOMATIC = new Set(['', 'General', 'general', AUTOMATIC_FORMAT]);

/**
 * Engine format for a Sheets pattern; '' is automatic. Undefined where the engine cannot show it.
 * The engine has no one-letter hour, minute or second, and no durations.
 */
export function engineFormat(engine: Engine, pattern: string): string | undefined {
  if (AUTOMATIC.has(pattern)) return '';
  const known = pattern
    .replace(/\[h+\](?=:)/gi, 'hhhh')
    .replace(/(^|[^h])h(?!h)/g, '$1hh')
    .replace(/:m(?!m)/g, ':mm')
    .replace(/:s(?!s)/g, ':ss')
    .replace(/AM\/PM|am\/pm/g, 'a');
  try {
    engine.helpers.formatValue(1, { format: known, locale: engine.DEFAULT_LOCALE });
    return known;
  } catch {
    return undefined;
  }
}
