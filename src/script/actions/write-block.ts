/**
 * Writes a block of ours: onto a new tab, into an empty area, or over our own block of that name.
 *
 * What it touches is the new rectangle and the rest of the old one, nothing else. Everything is checked before the
 * first write; the values go in as one batch, sent off at once, so that a failure leaves the old table or the new one,
 * never half of each. Whether they are in, the block's own stamp says, never a comparison of values.
 */

import { areaA1, cellA1 } from '../../../shared/block/a1';
import { firstFew } from '../../../shared/block/first-few';
import { ANSWER_MARK, markOfCell, markOfStanding } from '../../../shared/block/memory';
import type { WriteBlock, WriteDone } from '../../../shared/contract';
import { failureSentence } from '../failure-sentence';
import { type Area, type SheetPort, Told } from '../port';
import { blockContent, grid, originOf } from './block-content';
import { isEmptyArea, targetArea } from './target-area';

export function writeBlock(port: SheetPort, request: WriteBlock): WriteDone {
  return port.locked(() => {
    const named = port.namedAreas().find((area) => area.name === request.name);
    const standing = standingArea(port, request, named);
    const area = targetArea(port, request, standing);
    const old = request.place.at === 'own' ? standing : undefined;
    writeCells(port, request, area, old);
    // The name goes last: until then it says how far the old block reached, so that the next write can clear the rest.
    const left = old ? clearLeftovers(port, area, old) : '';
    const notes = [
      left || nameIt(port, request, area),
      finish(port, request, area, old),
      old ? noteOfNotes(port, old) : '',
    ];
    const note = notes.filter((text) => text !== '').join(' ');
    return { block: { name: request.name, ...area }, a1: areaA1(area), note };
  });
}

/**
 * The block that stands: as far as the page has read it, which its memory says; else as far as its name says. An area
 * of ours that is empty counts as none.
 */
function standingArea(port: SheetPort, { place }: WriteBlock, named: Area | undefined): Area | undefined {
  if (place.at === 'own') return place.area ?? named;
  return named && !isEmptyArea(port, named) ? named : undefined;
}

/** All or nothing: where the cells cannot be written, the new tab and the formats are taken back. */
function writeCells(port: SheetPort, request: WriteBlock, area: Area, old: Area | undefined): void {
  const undo: (() => void)[] = [];
  try {
    const isNewTab =
      request.place.at === 'new-tab' && port.tabs().every(({ name }) => !isSameName(name, area.tab));
    if (isNewTab) {
      port.addTab(area.tab);
      undo.push(() => port.removeTab(area.tab));
    }
    port.makeRoom(area);
    const formats = port.readFormats(old ? around(area, old) : area);
    undo.push(() => port.setFormats(old ? around(area, old) : area, formats));
    port.write(area, blockContent(request, area, formats));
  } catch (error) {
    if (isWritten(port, request, area)) return;
    for (const step of undo.reverse()) attempt(step);
    throw new Told(
      `${failureSentence(error)} ${old ? 'The table was left as it was.' : 'No table was written.'}`,
    );
  }
}

function isSameName(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}

/** The smallest rectangle over both: where the looks of the old block are read. */
function around(area: Area, old: Area): Area {
  return { ...area, rows: Math.max(area.rows, old.rows), columns: Math.max(area.columns, old.columns) };
}

/**
 * True where the block's stamp stands in its first row: whatever the service said, the batch went in. A block without
 * one is in where every cell of it is.
 */
function isWritten(port: SheetPort, { stamp, cells }: WriteBlock, area: Area): boolean {
  try {
    if (stamp === undefined) {
      const { values, formulas } = port.read(area);
      return cells.every((row, r) =>
        row.every((cell, c) => {
          const mark = markOfCell(cell);
          return (
            mark === ANSWER_MARK || mark === markOfStanding(values[r]?.[c] ?? '', formulas[r]?.[c] ?? '')
          );
        }),
      );
    }
    const last = cells[0]?.[area.columns - 1];
    const corner = { ...area, rows: 1, columns: 1, column: area.column + area.columns - 1 };
    return last?.k === 't' && port.read(corner).values[0]?.[0] === last.v;
  } catch {
    return false;
  }
}

/** The name is an anchor: a table whose name did not move is still found by its memory, and named at the next write. */
function nameIt(port: SheetPort, { name }: WriteBlock, area: Area): string {
  const failure = attempt(() => port.nameArea(name, area));
  if (!failure) return '';
  const isNamed = attempt(() => {
    if (!port.namedAreas().some((one) => one.name === name && one.tab === area.tab)) throw new Error();
  });
  return isNamed === undefined
    ? ''
    : `The table is written, but its name could not be set, so it cannot be rebuilt: delete it and write it once more. ${failure}`;
}

function clearLeftovers(port: SheetPort, area: Area, old: Area): string {
  const failure = attempt(() => {
    for (const rest of leftovers(area, old)) port.clearAll(rest);
  });
  return failure
    ? `The table is written, but rows or columns of the old one are left beside it: write it once more. ${failure}`
    : '';
}

/** Colours, widths and the view: where they fail the table stands, and the reply says so. */
function finish(port: SheetPort, request: WriteBlock, area: Area, old: Area | undefined): string {
  const failure = attempt(() => {
    const looks = old ? around(area, old) : area;
    port.style(
      area,
      looks,
      grid(area, (r, c) => request.styles[r]?.[c] ?? 'plain'),
      grid(area, (r, c) => originOf(request.cells[r]?.[c])),
    );
    port.setRules(area, old, request.rules);
    setView(port, request, area, old);
    port.showTab(area.tab);
  });
  return failure ? `The table is written, but not all of its colours and widths. ${failure}` : '';
}

/** The view of a tab is set where the block begins the tab; the memory is hidden where we made the tab. */
function setView(
  port: SheetPort,
  { place, ...request }: WriteBlock,
  area: Area,
  old: Area | undefined,
): void {
  const memory = area.column + area.columns - 1;
  if (place.at === 'new-tab') {
    port.setLook(area.tab, area.column, request.widths, request.freezeRows);
    if (request.stamp !== undefined) port.hideColumn(area.tab, memory);
  }
  if (place.at !== 'own' || !old || old.row !== 1 || old.column !== 1) return;
  if (request.freezeRows > 0) port.moveFrozenRows(area.tab, request.freezeRows);
  if (place.memoryColumn === undefined || place.memoryColumn === memory) return;
  port.showColumn(area.tab, place.memoryColumn);
  port.hideColumn(area.tab, memory);
}

/** The parts of the old rectangle that the new one leaves: below it and right of it. */
function leftovers(area: Area, old: Area): Area[] {
  const below = { ...old, row: area.row + area.rows, rows: old.rows - area.rows };
  const right = {
    ...old,
    column: area.column + area.columns,
    columns: old.columns - area.columns,
    rows: Math.min(old.rows, area.rows),
  };
  return [below, right].filter(({ rows, columns }) => rows > 0 && columns > 0);
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
