/** Where a block goes, and every reason not to put it there. */

import { areaA1, cellA1 } from '../../../shared/block/a1';
import { firstFew } from '../../../shared/block/first-few';
import { isOurs } from '../../../shared/block/is-ours';
import type { TabContent, WriteBlock } from '../../../shared/contract';
import { blockFingerprint } from '../../../shared/table/block-fingerprint';
import { isWithin } from '../is-within';
import { type Area, type Ground, type SheetPort, Told } from '../port';
import * as words from '../words';

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
  tabs: readonly TabContent[] | undefined,
): Target {
  const { place } = request;
  const size = sizeOf(request);
  if (place.at === 'own') return { area: overOwn(port, request, size, old, tabs), needsTab: false };
  if (old && request.replaces !== true) {
    throw new Told(words.tableStands(old.tab, areaA1(old)));
  }
  if (place.at === 'new-tab') return newTab(port, place.tab, size, tabs);
  const area: Area = { tab: place.tab, row: place.row, column: place.column, ...size };
  refuseTaken(port.ground(area), area, undefined);
  return { area, needsTab: false };
}

/** Whether no table of ours stands where one is named: it was emptied, or the name lies over something else. */
export function isForeignArea(port: SheetPort, area: Area): boolean {
  return !isOurs(port.ground(area).values);
}

/** A blank tab of that name is used: a first write that was cut short has left it. */
function newTab(
  port: SheetPort,
  name: string,
  size: { rows: number; columns: number },
  tabs: readonly TabContent[] | undefined,
): Target {
  const tab = name.trim();
  if (tab === '' || tab.length > LONGEST_TAB_NAME) {
    throw new Told(words.newTabName(LONGEST_TAB_NAME));
  }
  const isThat = (other: string): boolean => other.toLowerCase() === tab.toLowerCase();
  const area = { tab, row: 1, column: 1, ...size };
  const there = port.tabNames().find(isThat);
  if (there === undefined) return { area, needsTab: true };
  const isFilled = (): boolean =>
    tabs ? tabs.some(({ name }) => name === there) : port.readTab(there).values.length > 0;
  if (port.passedOver().includes(there) || isFilled()) throw new Told(words.tabTaken(tab));
  const blank = { ...area, tab: there };
  refuseTaken(port.ground(blank), blank, undefined);
  return { area: blank, needsTab: false };
}

function overOwn(
  port: SheetPort,
  request: WriteBlock,
  size: { rows: number; columns: number },
  old: Area | undefined,
  tabs: readonly TabContent[] | undefined,
): Area {
  if (!old) {
    throw new Told(words.TABLE_GONE);
  }
  const area: Area = { tab: old.tab, row: old.row, column: old.column, ...size };
  const read = tabs?.find(({ name }) => name === old.tab);
  const ground = port.ground(around(area, old), read);
  const own = <Cell>(rows: readonly (readonly Cell[])[]) =>
    rows.slice(0, old.rows).map((row) => row.slice(0, old.columns));
  if (request.expects !== blockFingerprint(own(ground.values), own(ground.formulas))) {
    throw new Told(words.tableChanged(old.tab));
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
  const needed = words.tableNeeds(areaA1(area), area.tab);
  const taken = takenCells(ground, area, old);
  if (taken.length > 0) {
    throw new Told(words.somethingStands(needed, firstFew(taken)));
  }
  const merged = ground.merged.filter((one) => overlaps(one, area)).map(areaA1);
  if (merged.length > 0) {
    throw new Told(words.cellsMerged(needed, firstFew(merged)));
  }
  if (ground.isTabClosed) {
    throw new Told(words.tabProtected(area.tab));
  }
  const closed = ground.closed
    .filter((one) => overlaps(one, area) || (old && overlaps(one, old)))
    .map(areaA1);
  if (closed.length > 0) {
    throw new Told(words.cellsProtected(needed, firstFew(closed)));
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
    throw new Told(words.UNEVEN_ROWS);
  }
  if (rows * columns > MOST_CELLS) {
    throw new Told(words.tooLarge(rows, columns));
  }
  return { rows, columns };
}
