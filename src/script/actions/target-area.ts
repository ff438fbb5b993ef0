/** Where a block goes, and every reason not to put it there. */

import { areaA1, cellA1 } from '../../../shared/block/a1';
import { firstFew } from '../../../shared/block/first-few';
import type { WriteBlock } from '../../../shared/contract';
import { blockFingerprint } from '../../../shared/table/block-fingerprint';
import { isWithin } from '../is-within';
import { type Area, type AreaContent, type SheetPort, Told } from '../port';

/** Far above any season's table; a guard against a runaway request. Judgement. */
const MOST_CELLS = 200_000;
const LONGEST_TAB_NAME = 100;

/** The rectangle that the block will take; throws where it may not stand there. `old` is our block of that name. */
export function targetArea(port: SheetPort, request: WriteBlock, old: Area | undefined): Area {
  const { place } = request;
  const size = sizeOf(request);
  if (place.at === 'own') return overOwn(port, request, size, old);
  if (old && request.replaces !== true) {
    throw new Told(
      `A table of this kind already stands on "${old.tab}" at ${areaA1(old)}. Rebuild it there, or delete that tab first. Nothing was written.`,
    );
  }
  if (place.at === 'new-tab') return newTab(port, place.tab, size);
  const area: Area = { tab: place.tab, row: place.row, column: place.column, ...size };
  refuseTaken(port, area, undefined);
  return area;
}

/** Whether nothing stands there: a table that was emptied, or a tab that a failed first write left. */
export function isEmptyArea(port: SheetPort, area: Area): boolean {
  const used = usedPart(port, area);
  if (!used) return true;
  const { values, formulas } = port.read(used);
  return values.flat().every((value) => value === '') && formulas.flat().every((formula) => formula === '');
}

/** The part of an area within the used part of its tab; undefined where there is none. */
function usedPart(port: SheetPort, area: Area): Area | undefined {
  const tab = port.tabs().find(({ name }) => name === area.tab);
  const rows = Math.min(area.rows, (tab?.rows ?? 0) - area.row + 1);
  const columns = Math.min(area.columns, (tab?.columns ?? 0) - area.column + 1);
  return rows > 0 && columns > 0 ? { ...area, rows, columns } : undefined;
}

function newTab(port: SheetPort, name: string, size: { rows: number; columns: number }): Area {
  const tab = name.trim();
  if (tab === '' || tab.length > LONGEST_TAB_NAME) {
    throw new Told(`The new tab needs a name of 1 to ${LONGEST_TAB_NAME} letters. Nothing was written.`);
  }
  const taken = port.tabs().find((info) => info.name.toLowerCase() === tab.toLowerCase());
  if (taken && (taken.rows > 0 || taken.columns > 0))
    throw new Told(`There is already a tab named "${tab}". Choose another name. Nothing was written.`);
  return { tab: taken?.name ?? tab, row: 1, column: 1, ...size };
}

function overOwn(
  port: SheetPort,
  request: WriteBlock,
  size: { rows: number; columns: number },
  old: Area | undefined,
): Area {
  if (!old) {
    throw new Told(
      'The table to rebuild is no longer in this file. Build it on a new tab. Nothing was written.',
    );
  }
  const now = port.read(old);
  if (request.expects !== blockFingerprint(now.values, now.formulas)) {
    throw new Told(
      `Somebody changed the table on "${old.tab}" after it was read here. Read it again, look at the plan and write once more. Nothing was written.`,
    );
  }
  const area: Area = { tab: old.tab, row: old.row, column: old.column, ...size };
  refuseTaken(port, area, old);
  return area;
}

/** Refuses where a cell of the area that is not our own already holds something, or where cells are merged. */
function refuseTaken(port: SheetPort, area: Area, old: Area | undefined): void {
  if (port.tabs().every(({ name }) => name !== area.tab)) {
    throw new Told(`There is no tab named "${area.tab}" any more. Nothing was written.`);
  }
  const used = usedPart(port, area);
  const taken = used ? takenCells(port.read(used), area, old) : [];
  if (taken.length > 0) {
    throw new Told(
      `The table needs ${areaA1(area)} on "${area.tab}", but something stands in ${firstFew(taken)}. Choose an empty area or a new tab, or move those cells. Nothing was written.`,
    );
  }
  const merged = port.mergedAreas(area);
  if (merged.length > 0) {
    throw new Told(
      `The table needs ${areaA1(area)} on "${area.tab}", but cells are merged in ${firstFew(merged)}. Undo that with Format > Merge cells > Unmerge, or choose another place. Nothing was written.`,
    );
  }
}

function takenCells({ values, formulas }: AreaContent, area: Area, old: Area | undefined): string[] {
  const taken: string[] = [];
  values.forEach((row, r) => {
    row.forEach((value, c) => {
      const at = { row: area.row + r, column: area.column + c, rows: 1, columns: 1 };
      const empty = value === '' && (formulas[r]?.[c] ?? '') === '';
      if (!empty && !(old && isWithin(at, old))) taken.push(cellA1(at.row, at.column));
    });
  });
  return taken;
}

function sizeOf({ cells, styles }: WriteBlock): { rows: number; columns: number } {
  const rows = cells.length;
  const columns = cells[0]?.length ?? 0;
  const even = (grid: readonly (readonly unknown[])[]) =>
    grid.length === rows && grid.every((row) => row.length === columns);
  if (columns === 0 || !even(cells) || !even(styles)) {
    throw new Told(
      'The table came in uneven rows and was not written. Please report this; nothing was changed.',
    );
  }
  if (rows * columns > MOST_CELLS) {
    throw new Told(
      `The table would take ${rows} rows and ${columns} columns, more than a sheet bears. Plan a shorter season. Nothing was written.`,
    );
  }
  return { rows, columns };
}
