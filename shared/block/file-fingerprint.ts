import type { TabContent } from '../contract';
import { fingerprint } from './hash-text';

/**
 * A short text that changes when anything in the file does, values of formulas and the day among it; in what order the
 * tabs stand does not count. What the page makes of the file it has read holds while the text is the same.
 */
export function fileFingerprint(today: string, tabs: readonly TabContent[]): string {
  const texts = tabs.map(({ name, values, formulas }) => JSON.stringify([name, values, formulas])).sort();
  return fingerprint([today, ...texts].join('\n'));
}
