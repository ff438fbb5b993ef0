import type { TabContent } from '../../../shared/contract';
import { type SheetPort, Told } from '../port';
import * as words from '../words';

/** Used part of each tab asked for, from A1. A constant number of calls for each tab. */
export function readTabs(port: SheetPort, names: readonly string[]): TabContent[] {
  return names.map((name) => {
    if (port.passedOver().includes(name)) throw new Told(words.readAgain(name, 'holds no cells'));
    if (!port.tabNames().includes(name))
      throw new Told(words.readAgain(name, 'is not in this file any more'));
    return port.readTab(name);
  });
}
