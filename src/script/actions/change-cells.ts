import { areaA1 } from '../../../shared/block/a1';
import { firstFew } from '../../../shared/block/first-few';
import { markOfCell, markOfStanding } from '../../../shared/block/memory';
import type { BlockCell, Request } from '../../../shared/contract';
import { type Area, type SheetPort, Told } from '../port';
import * as words from '../words';
import { blockContent } from './block-content';
import { takeBack } from './take-back';
import { tried } from './write-block';

type Change = Request<'changeCells'>['cells'][number] & { readonly area: Area };

/**
 * Writes single cells, each only where it still holds what the page has read there: all of them, or none. Sent with
 * `before` and `after` exchanged, it takes that back.
 */
export function changeCells(port: SheetPort, { cells }: Request<'changeCells'>): { cells: number } {
  return port.locked(() => {
    const changes = cells.map((cell): Change => ({ ...cell, area: { ...cell, rows: 1, columns: 1 } }));
    for (const { area } of changes) port.makeRoom(area);
    const other = others(port, changes, 'before');
    if (other) {
      throw new Told(words.noLongerHolds(other));
    }
    const formats = changes.map(({ area }) => port.readFormats(area));
    try {
      for (const [i, { area, after }] of changes.entries()) putCell(port, area, after, formats[i]!);
      // The reading sends the cells off: a refusal comes here.
      const lost = others(port, changes, 'after');
      if (lost) throw new Told(words.didNotKeep(lost));
    } catch (error) {
      takeBack(error, () => putBack(port, changes, formats), changes.map(named));
    }
    return { cells: changes.length };
  });
}

/** Puts back what stood there; throws where something else still does. */
function putBack(port: SheetPort, changes: readonly Change[], formats: readonly string[][][]): void {
  for (const [i, { area, before }] of changes.entries()) {
    // A cell that refuses was never changed.
    tried(() => {
      putCell(port, area, before, formats[i]!);
      port.setFormats(area, formats[i]!);
      port.flush();
    });
  }
  if (others(port, changes, 'before')) throw new Error();
}

/** Names of cells that hold something else. */
function others(port: SheetPort, changes: readonly Change[], key: 'before' | 'after'): string {
  const isOther = ({ area, [key]: cell }: Change): boolean => {
    const { values, formulas } = port.read(area);
    return markOfStanding(values[0]?.[0] ?? '', formulas[0]?.[0] ?? '') !== markOfCell(cell);
  };
  return firstFew(changes.filter(isOther).map(named));
}

function named({ area }: Change): string {
  return `${areaA1(area)} on "${area.tab}"`;
}

/** Puts something into one cell. `formats`: as they stand; a format is set only where another is needed. */
function putCell(port: SheetPort, area: Area, cell: BlockCell, formats: string[][]): void {
  const content = blockContent([[{ ...cell, from: [0, 0] }]], area, formats);
  if (content.formats[0]![0] !== formats[0]![0]) port.setFormats(area, content.formats);
  port.putValue(area, content.values[0]![0]!);
}
