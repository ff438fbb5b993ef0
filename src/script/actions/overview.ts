import type { Overview } from '../../../shared/contract';
import type { SheetPort } from '../port';

/** The file as the page needs to know it: tabs, our blocks, locale and where the grower stands. */
export function overview(port: SheetPort): Overview {
  const active = port.active();
  return {
    title: port.title(),
    locale: port.locale(),
    timeZone: port.timeZone(),
    today: port.today(),
    tabs: port.tabs(),
    blocks: port.namedAreas(),
    activeTab: active.tab,
    activeCell: active.a1,
  };
}
