import { areaA1 } from '../../../shared/block/a1';
import { firstFew } from '../../../shared/block/first-few';
import { markOfCell, markOfStanding } from '../../../shared/block/memory';
import type { BlockCell, Request } from '../../../shared/contract';
import { failureSentence } from '../failure-sentence';
import { type Area, type SheetPort, Told } from '../port';
import { blockContent } from './block-content';

type Change = Request<'changeCells'>['cells'][number] & { readonly area: Area };

/**
 * Writes single cells, each only where it still holds what the page has read there: all of them, or none. Sent with
 * `before` and `after` exchanged, it takes that back.
 */
export function changeCells(port: SheetPort, { cells }: Request<'changeCells'>): { cells: number } {
  return port.locked(() => {
    const changes = cells.map((cell): Change => ({ ...cell, area: { ...cell, rows: 1, columns: 1 } }));
    for (const { area } of changes) port.makeRoom(area);
    const other = changes.filter(({ area, before }) => !holds(port, area, before)).map(named);
    if (other.length > 0) {
      throw new Told(
        `${firstFew(other)} no longer holds what the page has read there. Read the spreadsheet again. Nothing was written.`,
      );
    }
    const formats = changes.map(({ area }) => port.readFormats(area));
    try {
      for (const [i, { area, after }] of changes.entries()) put(port, area, after, formats[i]!);
      // The reading sends the cells off: a refusal comes here.
      const lost = changes.filter(({ area, after }) => !holds(port, area, after)).map(named);
      if (lost.length > 0) throw new Told(`${firstFew(lost)} did not keep what was written.`);
    } catch (error) {
      throw new Told(`${failureSentence(error)} ${takenBack(port, changes, formats)}`);
    }
    return { cells: changes.length };
  });
}

/** Puts back what stood there, and says whether it stands there. */
function takenBack(port: SheetPort, changes: readonly Change[], formats: readonly string[][][]): string {
  for (const [i, { area, before }] of changes.entries()) {
    // A cell that refuses was never changed.
    attempt(() => {
      put(port, area, before, formats[i]!);
      port.setFormats(area, formats[i]!);
      port.flush();
    });
  }
  const isBack = attempt(() => changes.every(({ area, before }) => holds(port, area, before)));
  if (isBack) return 'Nothing was written.';
  return `Whether anything was written could not be seen. Look at ${firstFew(changes.map(named))}.`;
}

/** What a step gives; undefined where it fails. */
function attempt<T>(step: () => T): T | undefined {
  try {
    return step();
  } catch {
    return undefined;
  }
}

function holds(port: SheetPort, area: Area, cell: BlockCell): boolean {
  const { values, formulas } = port.read(area);
  return markOfStanding(values[0]?.[0] ?? '', formulas[0]?.[0] ?? '') === markOfCell(cell);
}

function put(port: SheetPort, area: Area, cell: BlockCell, formats: string[][]): void {
  port.write(area, blockContent([[{ ...cell, from: [0, 0] }]], area, formats));
}

function named({ area }: Change): string {
  return `${areaA1(area)} on "${area.tab}"`;
}
