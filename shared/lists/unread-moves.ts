import { cellOnTab } from '../block/cell-on-tab';
import type { TabContent } from '../contract';
import type { FoundList } from './model';
import { isAbout } from './weighings';
import * as words from './words';

/** Says where moves of the groups seem to be written down, which are not read, where their list does not say where they stand. */
export function unreadMoves(
  groups: { readonly tab: TabContent; readonly list: FoundList },
  all: readonly FoundList[],
  tabOf: (list: FoundList) => TabContent | undefined,
): readonly string[] {
  if ('paddock' in groups.list.columns) return [];
  const logs = all.filter((list) => {
    const tab = tabOf(list);
    return list.kind === 'groups' && 'paddock' in list.columns && tab && isAbout(groups, { tab, list });
  });
  return logs.map(({ tab, headingRow, columns }) => {
    const cell = cellOnTab(tab, headingRow, columns.name ?? 1);
    return words.movesNotRead(cell);
  });
}
