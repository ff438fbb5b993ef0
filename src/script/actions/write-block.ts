/**
 * Writes a block of ours: onto a new tab, into an empty area, or over our own block of that name.
 *
 * It never writes over anything else. Everything is checked before the first write; the values go in as one
 * batch, so that a failure leaves the old table or the new one, never half of each.
 */

import { areaA1, cellA1 } from '../../../shared/block/a1';
import { firstFew } from '../../../shared/block/first-few';
import type { WriteBlock, WriteDone } from '../../../shared/contract';
import { blockFingerprint } from '../../../shared/table/block-fingerprint';
import { failureSentence } from '../failure-sentence';
import { type Area, type SheetPort, Told } from '../port';
import { blockContent, grid, originOf, union } from './block-content';
import { isEmpty, targetArea } from './target-area';

export function writeBlock(port: SheetPort, request: WriteBlock): WriteDone {
  return port.locked(() => {
    const named = port.namedAreas().find((area) => area.name === request.name);
    const { place } = request;
    const standing = named && withAdopted(named, place);
    const area = targetArea(port, request, standing);
    const old = place.at === 'own' ? standing : undefined;
    writeCells(port, request, area, old, named);
    const failure = finish(port, request, area, old);
    const note = [failure, old ? noteOfNotes(port, old) : ''].filter((text) => text !== '').join(' ');
    return { block: { name: request.name, ...area }, a1: areaA1(area), note };
  });
}

/** The block with the columns beside it and the rows below it that the page has read as part of it; the fingerprint covers them too. */
function withAdopted(named: Area, place: WriteBlock['place']): Area {
  if (place.at !== 'own') return named;
  const { adopt = 0, adoptRows = 0 } = place;
  return { ...named, columns: named.columns + adopt, rows: named.rows + adoptRows };
}

/**
 * All or nothing: where the cells cannot be written, the new tab, the name and the formats are taken back.
 * A service may also fail after the cells are in; then the table stands, and what is in the sheet decides.
 */
function writeCells(
  port: SheetPort,
  request: WriteBlock,
  area: Area,
  old: Area | undefined,
  named: Area | undefined,
): void {
  const all = union(area, old);
  const undo: (() => void)[] = [];
  try {
    if (request.place.at === 'new-tab') {
      port.addTab(area.tab);
      undo.push(() => port.removeTab(area.tab));
    }
    port.makeRoom(area);
    // The name goes first: a table without its name could never be found again.
    port.nameArea(request.name, area);
    undo.push(() => (named ? port.nameArea(request.name, named) : port.forgetName(request.name)));
    const formats = port.readFormats(all);
    undo.push(() => port.setFormats(all, formats));
    port.write(all, blockContent(request, area, old, formats));
  } catch (error) {
    if (isWritten(port, request, all, old)) return;
    for (const step of undo.reverse()) attempt(step);
    throw new Told(
      `${failureSentence(error)} ${old ? 'The table was left as it was.' : 'No table was written.'}`,
    );
  }
}

/** True where the sheet holds something else now than before the write. */
function isWritten(port: SheetPort, request: WriteBlock, all: Area, old: Area | undefined): boolean {
  try {
    if (!old) return !isEmpty(port.read(all));
    const { values, formulas } = port.read(old);
    return blockFingerprint(values, formulas) !== request.expects;
  } catch {
    return false;
  }
}

/** Colours, widths and the view: where they fail the table stands all the same, and the reply says so. */
function finish(port: SheetPort, request: WriteBlock, area: Area, old: Area | undefined): string {
  const all = union(area, old);
  const failure = attempt(() => {
    port.style(
      all,
      grid(all, (r, c) => request.styles[r]?.[c] ?? 'plain'),
      grid(all, (r, c) => originOf(request.cells[r]?.[c])),
    );
    port.setRules(area, old, request.rules);
    if (request.place.at === 'new-tab') {
      port.setLook(area.tab, area.column, request.widths, request.freezeRows);
    } else if (old && request.freezeRows > 0) port.moveFrozenRows(area.tab, request.freezeRows);
    port.showTab(area.tab);
  });
  return failure ? `The table is written, but not all of its colours and widths. ${failure}` : '';
}

/** Notes hang on cells, not on what stands there: where rows have moved they belong to something else now. */
function noteOfNotes(port: SheetPort, old: Area): string {
  const cells: string[] = [];
  const failure = attempt(() => {
    for (const [r, c] of port.notedCells(old)) cells.push(cellA1(old.row + r, old.column + c));
  });
  if (failure || cells.length === 0) return '';
  return `Notes attached to cells stay in their cells (${firstFew(cells)}): where rows of the table have moved, see that they still fit.`;
}

/** Runs a step whose failure must not stop the rest; gives the sentence of what went wrong. */
function attempt(step: () => void): string | undefined {
  try {
    step();
    return undefined;
  } catch (error) {
    return failureSentence(error);
  }
}
