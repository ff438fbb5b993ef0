/**
 * Empties cells of our own blocks before a copy is given away. Never in the original: where the mark of the
 * original is missing or is this file's own, nothing is cleared.
 */
import { areaA1 } from '../../../shared/block/a1';
import type { ClearPrivate } from '../../../shared/contract';
import { blockFingerprint } from '../../../shared/table/block-fingerprint';
import { MARK_BLOCK, originalMark, readMark } from '../../../shared/tasks/share/original-mark';
import { failureSentence } from '../failure-sentence';
import { isWithin } from '../is-within';
import { type Area, type SheetPort, Told } from '../port';

export function clearPrivate(port: SheetPort, request: ClearPrivate): { cells: number } {
  return port.locked(() => {
    const blocks = port.namedAreas();
    refuseOriginal(
      port,
      blocks.find(({ name }) => name === MARK_BLOCK),
    );
    for (const { name, expects } of request.blocks) refuseChanged(port, blocks, name, expects);
    for (const area of request.areas) refuseForeign(area, blocks);
    try {
      port.clear(request.areas);
    } catch (error) {
      throw new Told(`${failureSentence(error)} Look at the cells: some of them may be cleared.`);
    }
    return { cells: request.areas.reduce((sum, { rows, columns }) => sum + rows * columns, 0) };
  });
}

function refuseOriginal(port: SheetPort, marked: Area | undefined): void {
  const mark = marked && readMark(port.read(marked).values);
  if (mark === undefined) {
    throw new Told(
      'This file carries no mark of an original, so it cannot be told from one. Mark the original first, copy it, and clear the copy. Nothing was cleared.',
    );
  }
  if (mark === originalMark(port.fileId())) {
    throw new Told('This is the original, not a copy. Nothing was cleared.');
  }
}

function refuseChanged(
  port: SheetPort,
  blocks: readonly (Area & { name: string })[],
  name: string,
  expects: string,
): void {
  const block = blocks.find((one) => one.name === name);
  const now = block && port.read(block);
  if (!now || blockFingerprint(now.values, now.formulas) !== expects) {
    throw new Told(
      `The table ${name} changed after it was read here. Read the file again and look at the list once more. Nothing was cleared.`,
    );
  }
}

function refuseForeign(area: Area, blocks: readonly Area[]): void {
  const isOurs = blocks.some((block) => block.tab === area.tab && isWithin(area, block));
  if (isOurs) return;
  throw new Told(`${areaA1(area)} on "${area.tab}" is not in a table of ours. Nothing was cleared.`);
}
