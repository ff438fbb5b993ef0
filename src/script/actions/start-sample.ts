import type { BlockStyle } from '../../../shared/contract';
import { dayFromIso } from '../../../shared/core/calendar/day';
import { serialFromDay } from '../../../shared/core/calendar/serial';
import type { SampleCell, SampleFarm } from '../../../shared/samples/sample-farm';
import { type SheetPort, Told } from '../port';
import * as words from '../words';
import { takeBack } from './take-back';

/** Adds the tabs of a sample farm to the file, in the season of today. Refuses where a tab of that name exists; never overwrites. */
export function startSample(port: SheetPort, farm: SampleFarm): { tabs: string[] } {
  return port.locked(() => {
    const tabs = farm.tabs(dayFromIso(port.today()) ?? 0);
    const present = new Set(port.tabNames().map((name) => name.toLowerCase()));
    const taken = tabs.filter((tab) => present.has(tab.name.toLowerCase()));
    if (taken.length > 0) {
      const names = taken.map((tab) => `"${tab.name}"`).join(' and ');
      throw new Told(words.tabsThere(names));
    }
    const added: string[] = [];
    try {
      for (const tab of tabs) {
        port.addTab(tab.name);
        added.push(tab.name);
        writeTab(port, tab.name, tab.rows);
      }
    } catch (error) {
      const remove = () => {
        for (const name of added) port.removeTab(name);
      };
      takeBack(
        error,
        remove,
        added.map((name) => `"${name}"`),
      );
    }
    port.showTab(added[added.length - 1] ?? '');
    port.flush();
    return { tabs: added };
  });
}

function writeTab(port: SheetPort, name: string, rows: readonly (readonly SampleCell[])[]): void {
  const columns = Math.max(...rows.map((row) => row.length));
  const cells = rows.map((row) => Array.from({ length: columns }, (_, c) => row[c] ?? ''));
  const area = { tab: name, row: 1, column: 1, rows: rows.length, columns };
  port.makeRoom(area);
  port.write(area, {
    values: cells.map((row) => row.map(sampleValue)),
    formats: cells.map((row) => row.map(sampleFormat)),
  });
  const styles = cells.map((row, r) => row.map((): BlockStyle => (r === 0 ? 'title' : 'plain')));
  port.style(area, area, styles, [], false);
}

function sampleValue(cell: SampleCell): string | number | boolean {
  if (typeof cell !== 'object') return cell;
  return 'day' in cell ? serialFromDay(cell.day) : cell.f;
}

function sampleFormat(cell: SampleCell): string {
  if (typeof cell === 'object') return 'day' in cell ? 'yyyy-mm-dd' : 'General';
  return typeof cell === 'string' && cell !== '' ? '@' : 'General';
}
