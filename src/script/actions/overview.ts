import type { Overview, TabInfo, WholeFile } from '../../../shared/contract';
import type { SheetPort } from '../port';

/** The file as the page needs to know it: tabs, our blocks, locale and where the grower stands. */
export function overview(port: SheetPort): Overview {
  return overviewOf(port, port.tabs(), port.passedOver());
}

function overviewOf(port: SheetPort, tabs: TabInfo[], passedOver: string[]): Overview {
  return {
    title: port.title(),
    locale: port.locale(),
    timeZone: port.timeZone(),
    today: port.today(),
    tabs,
    blocks: port.namedAreas(),
    activeTab: port.activeTab(),
    activeCell: port.active()?.a1 ?? '',
    passedOver,
  };
}

/** The overview with all that stands on the tabs: Google is waited for three times a tab. */
export function readFile(port: SheetPort): WholeFile {
  const { tabs, passedOver } = port.readAll();
  const infos = tabs.map(({ name, values }) => ({
    name,
    rows: values.length,
    columns: values[0]?.length ?? 0,
  }));
  return {
    overview: overviewOf(port, infos, passedOver),
    tabs: tabs.filter(({ values }) => values.length > 0),
  };
}
