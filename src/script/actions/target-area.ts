/** Where a block goes, and every reason not to put it there. */

import { areaA1, cellA1 } from '../../../shared/block/a1';
import { firstFew } from '../../../shared/block/first-few';
import { isOurs } from '../../../shared/block/is-ours';
import type { TabContent, WriteBlock } from '../../../shared/contract';
import { blockFingerprint } from '../../../shared/table/block-fingerprint';
import { isWithin } from '../is-within';
import { type Area, type Ground, type SheetPort, Told } from '../port';

/** Far above any season's table; a guard against a runaway request. Judgement. */
const MOST_CELLS = 200_000;
const LONGEST_TAB_NAME = 100;

/** The rectangle that the block will take, and whether its tab is yet to be made. */
export interface Target {
  readonly area: Area;
  readonly needsTab: boolean;
}

/** Throws where the block may not stand there. `old` is our block of that name, `tabs` what has just been read. */
export function targetArea(
  port: SheetPort,
  request: WriteBlock,
  old: Area | undefined,
  tabs: readonly TabContent[],
): Target {
  const { place } = request;
  const size = sizeOf(request);
  if (place.at === 'own') return { area: overOwn(port, request, size, old, tabs), needsTab: false };
  if (old && request.replaces !== true) {
    throw new Told(
      `A table of this kind already stands on "${old.tab}" at ${areaA1(old)}. Rebuild it there, or delete that tab first. Nothing was written.`,
    );
  }
  if (place.at === 'new-tab') return newTab(port, place.tab, size);
  const area: Area = { tab: place.tab, row: place.row, column: place.column, ...size };
  refuseTaken(port.ground(area), area, undefined);
  return { area, needsTab: false };
}

/** Whether no table of ours stands where one is named: it was emptied, or the name lies over something else. */
export function isForeignArea(port: SheetPort, area: Area): boolean {
  return !isOurs(port.ground(area).values);
}

/** A blank tab of that name is used: a first write that was cut short has left it. */
function newTab(port: SheetPort, name: string, size: { rows: number; columns: number }): Target {
  const tab = name.trim();
  if (tab === '' || tab.length > LONGEST_TAB_NAME) {
    throw new Told(`The new tab needs a name of 1 to ${LONGEST_TAB_NAME} letters. Nothing was written.`);
  }
  const isThat = (other: string): boolean => other.toLowerCase() === tab.toLowerCase();
  const area = { tab, row: 1, column: 1, ...size };
  if (!port.tabNames().some(isThat)) return { area, needsTab: true };
  const taken = port.tabs().find((info) => isThat(info.name));
  if (!taken || taken.rows > 0 || taken.columns > 0)
    throw new Told(`There is already a tab named "${tab}". Choose another name. Nothing was written.`);
  const blank = { ...area, tab: taken.name };
  refuseTaken(port.ground(blank), blank, undefined);
  return { area: blank, needsTab: false };
}

function overOwn(
  port: SheetPort,
  request: WriteBlock,
  size: { rows: number; columns: number },
  old: Area | undefined,
  tabs: readonly TabContent[],
): Area {
  if (!old) {
    throw new Told(
      'The table to rebuild is no longer in this file. Build it on a new tab. Nothing was written.',
    );
  }
  const area: Area = { tab: old.tab, row: old.row, column: old.column, ...size };
  const read = tabs.find(({ name }) => name === old.tab);
  const ground = port.ground(around(area, old), read);
  const own = <Cell>(rows: readonly (readonly Cell[])[]) =>
    rows.slice(0, old.rows).map((row) => row.slice(0, old.columns));
  if (request.expects !== blockFingerprint(own(ground.values), own(ground.formulas))) {
    throw new Told(
      `Somebody changed the table on "${old.tab}" after it was read here. Read it again, look at the plan and write once more. Nothing was written.`,
    );
  }
  refuseTaken(ground, area, old);
  return area;
}

/** The smallest rectangle over both: what is read of the sheet, never what is written. */
export function around(area: Area, old: Area): Area {
  return { ...area, rows: Math.max(area.rows, old.rows), columns: Math.max(area.columns, old.columns) };
}

/**
 * Refuses where a cell of the area that is not our own already holds something, where cells are merged, and where
 * cells of the area or of the old block may not be edited. `ground` begins at the area's corner.
 */
function refuseTaken(ground: Ground, area: Area, old: Area | undefined): void {
  const needed = `The table needs ${areaA1(area)} on "${area.tab}", but`;
  const taken = takenCells(ground, area, old);
  if (taken.length > 0) {
    throw new Told(
      `${needed} something stands in ${firstFew(taken)}. Choose an empty area or a new tab, or move those cells. Nothing was written.`,
    );
  }
  const merged = ground.merged.filter((one) => overlaps(one, area)).map(areaA1);
  if (merged.length > 0) {
    throw new Told(
      `${needed} cells are merged in ${firstFew(merged)}. Undo that with Format > Merge cells > Unmerge, or choose another place. Nothing was written.`,
    );
  }
  if (ground.isTabClosed) {
    throw new Told(
      `The tab "${area.tab}" is protected against changes. Ask its owner to let you edit it, or write to a new tab. Nothing was written.`,
    );
  }
  const closed = ground.closed
    .filter((one) => overlaps(one, area) || (old && overlaps(one, old)))
    .map(areaA1);
  if (closed.length > 0) {
    throw new Told(
      `${needed} cells are protected in ${firstFew(closed)}. Ask the owner to let you edit them, or choose another place. Nothing was written.`,
    );
  }
}

function overlaps(one: Area, other: Area): boolean {
  return (
    one.row < other.row + other.rows &&
    other.row < one.row + one.rows &&
    one.column < other.column + other.columns &&
    other.column < one.column + one.columns
  );
}

function takenCells({ values, formulas }: Ground, area: Area, old: Area | undefined): string[] {
  const taken: string[] = [];
  values.forEach((row, r) => {
    row.forEach((value, c) => {
      const at = { row: area.row + r, column: area.column + c, rows: 1, columns: 1 };
      const empty = value === '' && (formulas[r]?.[c] ?? '') === '';
      if (!empty && isWithin(at, area) && !(old && isWithin(at, old))) taken.push(cellA1(at.row, at.column));
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
