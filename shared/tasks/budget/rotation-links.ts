import { columnLetters } from '../../block/a1';
import type { BlockContent } from '../../block/read-block';
import { columnOfHeading } from '../../table/columns';
import type { LinkedColumn, StaySource } from './stay-columns';

const LINKED: readonly LinkedColumn[] = [
  'group',
  'paddock',
  'inDay',
  'stayDays',
  'head',
  'startWeight',
  'growthDays',
  'dailyGain',
  'area',
];

/**
 * Where the columns of the rotation table stand, for links to its cells; undefined where they are not all found, or
 * where the tab's name holds an apostrophe, which not every engine can refer to.
 */
export function rotationLinks({ info, values }: BlockContent): StaySource['rotation'] {
  if (info.tab.includes("'")) return undefined;
  for (const row of values) {
    const columns: Partial<Record<LinkedColumn, string>> = {};
    row.forEach((cell, at) => {
      const key = typeof cell === 'string' ? columnOfHeading(cell) : undefined;
      const linked = LINKED.find((one) => one === key);
      if (linked && columns[linked] === undefined) columns[linked] = columnLetters(info.column + at);
    });
    if (LINKED.every((key) => columns[key] !== undefined)) return { tab: info.tab, columns };
  }
  return undefined;
}
