/** Which paddock is meant where a group is said to stand: by its name, its number in the list, or a shortened name. */
import type { TabContent } from '../contract';
import { meantName } from './meant-name';
import type { PaddockList, ReadPaddock } from './model';
import { nameKey } from './read-list-cell';

/** The name of the paddock; the text itself where it is the name, or where no paddock is known; undefined: none is meant. */
export type PaddockNamed = (text: string) => string | undefined;

export function paddockNamed(
  tab: TabContent | undefined,
  list: PaddockList | undefined,
  paddocks: readonly ReadPaddock[],
): PaddockNamed {
  const names = new Map(paddocks.map(({ name }) => [nameKey(name), name]));
  const codes = tab && list ? codesOf(tab, list, paddocks) : new Map<string, string>();
  return (text) => {
    const key = nameKey(text);
    if (names.size === 0 || names.has(key)) return text;
    const short = codes.has(key) ? undefined : meantName(key, [...names.keys()]);
    return codes.get(key) ?? (short === undefined ? undefined : names.get(short));
  };
}

/** Numbers before the names that are used for nothing else: most paddocks have one, each its own. */
function codesOf(tab: TabContent, list: PaddockList, paddocks: readonly ReadPaddock[]): Map<string, string> {
  const taken = new Set(Object.values(list.columns));
  const before = Array.from({ length: (list.columns.name ?? 1) - 1 }, (_, c) => c + 1);
  for (const column of before.filter((one) => !taken.has(one))) {
    const codes = paddocks.map(({ name, cells }): [string, string] => {
      const cell = cells.name ? tab.values[cells.name.row - 1]?.[column - 1] : '';
      return [typeof cell === 'object' ? '' : nameKey(String(cell ?? '')), name];
    });
    const given = codes.filter(([code]) => code !== '');
    const distinct = new Map(given);
    if (distinct.size === given.length && given.length > paddocks.length / 2) return distinct;
  }
  return new Map();
}
