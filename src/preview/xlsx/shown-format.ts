/** How a file's number format is shown here. */
import type { Engine } from '../engine/engine';
import { engineFormat } from '../engine/number-format';
import { outsideTexts } from '../engine/outside-texts';

const FRACTION = /[?#0]\s*\/\s*[?#\d]/;
const COLOR = /\[(?:black|blue|cyan|green|magenta|red|white|yellow|color ?\d+)\]/gi;

/** The engine's format nearest to the file's: without colours and gaps. '' (automatic) where there is none like it. */
export function shownFormat(engine: Engine, pattern: string): string {
  // A currency stands in the file with its place: [$€-407]. Some dates have the place alone.
  const plain = pattern.replace(/\[\$([^\]-]*)-[^\]]*\]/g, (_, sign: string) => (sign ? `[$${sign}]` : ''));
  return engineFormat(engine, outsideTexts(plain, nearest)) ?? '';
}

function nearest(part: string): string {
  if (FRACTION.test(part)) return part;
  return part
    .replace(COLOR, '')
    .replace(/_./g, '')
    .replace(/E[+-]/g, 'e')
    .replace(/e0+/g, 'e')
    .replace(/\?/g, '#')
    .replace(/[DMYHS]/g, (letter) => letter.toLowerCase());
}
