/**
 * Empties cells before a copy is given away: what is private, or all tables of ours and the rows of the lists. Never in
 * the original: where the mark of the original is missing or is this file's own, nothing is cleared.
 */
import { areaA1 } from '../../../shared/block/a1';
import { isOurs } from '../../../shared/block/is-ours';
import type { ClearInCopy } from '../../../shared/contract';
import { blockFingerprint } from '../../../shared/table/block-fingerprint';
import { isMark, originalMark } from '../../../shared/tasks/share/original-mark';
import { failureSentence } from '../failure-sentence';
import { isWithin } from '../is-within';
import { type Area, type SheetPort, Told } from '../port';
import * as words from '../words';
import { grid } from './block-content';

export function clearInCopy(port: SheetPort, request: ClearInCopy): { cells: number } {
  const { areas, rows, tables } = request;
  return port.locked(() => {
    const blocks = port.namedAreas();
    refuseOriginal(port, blocks.filter(isMark));
    for (const { name, expects } of request.blocks) {
      refuseChanged(
        port,
        blocks.find((block) => block.name === name),
        expects,
        `The table ${name}`,
      );
    }
    for (const area of areas) if (!isInBlock(area, blocks)) refuseForeign(area);
    for (const { expects, ...area } of [...rows, ...tables]) {
      refuseChanged(port, area, expects, `${areaA1(area)} on "${area.tab}"`);
    }
    for (const table of tables) if (!isOurs(port.read(table).values)) refuseForeign(table);
    try {
      port.clear([...areas, ...rows]);
      for (const table of tables) clearTable(port, table);
      port.flush();
    } catch (error) {
      throw new Told(words.maybeCleared(failureSentence(error)));
    }
    return { cells: [...areas, ...rows, ...tables].reduce((sum, one) => sum + one.rows * one.columns, 0) };
  });
}

/** As if it had never been written; a name that is left over cells without a table counts for nothing. */
function clearTable(port: SheetPort, table: Area): void {
  port.clearAll(table);
  port.setBoxes(
    table,
    grid(table, () => false),
  );
  port.showColumns(table.tab, table.column, table.columns);
}

function refuseOriginal(port: SheetPort, named: ReturnType<SheetPort['namedAreas']>): void {
  const marks = named.filter((area) => isOurs(port.read(area).values));
  if (marks.length === 0) throw new Told(words.NO_MARK);
  const own = originalMark(port.fileId());
  if (marks.some(({ name }) => name === own)) throw new Told(words.IS_ORIGINAL);
}

function refuseChanged(port: SheetPort, area: Area | undefined, expects: string, what: string): void {
  const now = area && port.read(area);
  if (!now || blockFingerprint(now.values, now.formulas) !== expects) {
    throw new Told(words.changedSince(what));
  }
}

function isInBlock(area: Area, blocks: readonly Area[]): boolean {
  return blocks.some((block) => block.tab === area.tab && isWithin(area, block));
}

function refuseForeign(area: Area): never {
  throw new Told(words.notOurs(areaA1(area), area.tab));
}
