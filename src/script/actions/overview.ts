import type { Overview, TabInfo, WholeFile } from '../../../shared/contract';
import type { SheetPort } from '../port';

/** The file as the page needs to know it: tabs, our blocks, locale and where the grower stands. */
export function overview(port: SheetPort): Overview {
  return {
    ...factsOf(port, port.tabs(), port.passedOver()),
    title: port.title(),
    activeTab: port.activeTab(),
  };
}

function factsOf(port: SheetPort, tabs: TabInfo[], passedOver: string[]): WholeFile['overview'] {
  return { locale: port.locale(), today: port.today(), tabs, blocks: port.namedAreas(), passedOver };
}

/** All that stands on the tabs, and what decides how it is read: Google is waited for three times a tab. */
export function readFile(port: SheetPort, { tabs, passedOver } = port.readAll()): WholeFile {
  const infos = tabs.map(({ name, values }) => ({
    name,
    rows: values.length,
    columns: values[0]?.length ?? 0,
  }));
  return {
    overview: factsOf(port, infos, passedOver),
    tabs: tabs.filter(({ values }) => values.length > 0),
  };
}
