import type { TabContent } from '../../../shared/contract';
import { type SheetPort, Told } from '../port';
import * as words from '../words';

/** Used part of each tab asked for, from A1. A constant number of calls for each tab. */
export function readTabs(port: SheetPort, names: readonly string[]): TabContent[] {
  const tabs = port.tabs();
  return names.map((name) => {
    const tab = tabs.find((info) => info.name === name);
    if (!tab) {
      const why = port.passedOver().includes(name) ? 'holds no cells' : 'is not in this file any more';
      throw new Told(words.readAgain(name, why));
    }
    if (tab.rows === 0 || tab.columns === 0) return { name, values: [], formulas: [] };
    return { name, ...port.read({ tab: name, row: 1, column: 1, rows: tab.rows, columns: tab.columns }) };
  });
}
