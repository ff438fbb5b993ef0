import type { Overview, WholeFile } from '../../../shared/contract';
import type { SheetPort } from '../port';

export function overview(port: SheetPort): Overview {
  return { activeTab: port.activeTab(), blocks: port.namedAreas() };
}

/** All that stands on the tabs, and what decides how it is read: Google is waited for three times a tab. */
export function readFile(port: SheetPort, tabs = port.readAll()): WholeFile {
  return {
    overview: {
      locale: port.locale(),
      timeZone: port.timeZone(),
      today: port.today(),
      tabs: tabs.map(({ name, values }) => ({ name, rows: values.length, columns: values[0]?.length ?? 0 })),
      blocks: port.namedAreas(),
      passedOver: port.passedOver(),
    },
    tabs: tabs.filter(({ values }) => values.length > 0),
  };
}
