/**
 * Writes a block of ours: onto a new tab, into an empty area, or over our own block of that name.
 *
 * What it touches is the new rectangle and the rest of the old one, nothing else. Everything is checked before the
 * first write; the values go in as one batch, sent off at once, so that a failure leaves the old table or the new one,
 * never half of each. Whether they are in, the block's own stamp says, never a comparison of values.
 */

import { areaA1, cellA1 } from '../../../shared/block/a1';
import { BLANK } from '../../../shared/block/cells';
import { fileFingerprint } from '../../../shared/block/file-fingerprint';
import { firstFew } from '../../../shared/block/first-few';
import { markOfCell, markOfStanding, readMemory } from '../../../shared/block/memory';
import { cut } from '../../../shared/block/read-block';
import type { FileChanged, TabContent, WireCell, WriteBlock, WriteDone } from '../../../shared/contract';
import { failureSentence } from '../failure-sentence';
import { type Area, type SheetPort, Told } from '../port';
import * as words from '../words';
import { blockContent, grid, hasBox, originOf, sheetValue } from './block-content';
import { readFile } from './overview';
import { around, isForeignArea, targetArea } from './target-area';

export function writeBlock(port: SheetPort, request: WriteBlock): WriteDone | FileChanged {
  return port.locked(() => {
    if (request.file === undefined) return writeOver(port, request, undefined);
    const { timeZone } = request;
    // In another zone its days would be others: what was read holds in either, or in neither.
    if (timeZone !== undefined) port.trustZone(timeZone);
    const read = port.readAll();
    const filled = read.filter(({ values }) => values.length > 0);
    if (request.file === fileFingerprint(port.today(), filled)) return writeOver(port, request, filled);
    const isRight = timeZone === undefined || port.timeZone() === timeZone;
    return { changed: readFile(port, isRight ? read : port.readAll()) };
  });
}

/** `tabs`: what stands in the file, where it has just been read. */
function writeOver(port: SheetPort, request: WriteBlock, tabs: readonly TabContent[] | undefined): WriteDone {
  const standing = standingArea(port, request);
  const { area, needsTab } = targetArea(port, request, standing, tabs);
  const old = request.place.at === 'own' ? standing : undefined;
  writeCells(port, request, area, old, needsTab);
  const read = tabs && (tabs.find(({ name }) => name === area.tab) ?? { ...BLANK_TAB, name: area.tab });
  const stay = old !== undefined && rowsStay(request, area, old, read);
  const { failure, tab } = finish(port, request, area, old, read, stay);
  const notes = [failure, old && !stay ? noteOfNotes(port, old) : ''];
  const note = notes.filter((text) => text !== '').join(' ');
  return { block: { name: request.name, ...area }, a1: areaA1(area), note, ...(tab && { tab }) };
}

/**
 * The block that stands: as far as the page has read it, which its memory says; else as far as its name says. Where no
 * table of ours stands there, none counts.
 */
function standingArea(port: SheetPort, { place, name, replaces }: WriteBlock): Area | undefined {
  if (place.at === 'own' && place.area) return place.area;
  const named = port.namedAreas().find((area) => area.name === name);
  if (place.at === 'own' || !named || replaces) return named;
  return isForeignArea(port, named) ? undefined : named;
}

/** All or nothing: where the cells cannot be written, the new tab and the formats are taken back. */
function writeCells(
  port: SheetPort,
  request: WriteBlock,
  area: Area,
  old: Area | undefined,
  needsTab: boolean,
): void {
  const undo: (() => void)[] = [];
  let began = false;
  try {
    if (needsTab) {
      port.addTab(area.tab, request.place.at === 'new-tab' ? request.place.before : undefined);
      undo.push(() => port.removeTab(area.tab));
    }
    const formats = port.readFormatsWithRoom(old ? around(area, old) : area, old);
    undo.push(() =>
      port.setFormats(
        area,
        grid(area, (r, c) => formats[r]?.[c] ?? ''),
      ),
    );
    const content = blockContent(request.cells, area, formats);
    began = true;
    port.write(area, content);
    // The reading sends the batch off: a refusal comes here.
    if (!isWritten(port, request, area)) throw new Error('the cells did not keep what was written');
  } catch (error) {
    const written = began && tried(() => isWritten(port, request, area));
    if (written === true) return;
    const why = failureSentence(error);
    if (written === undefined) {
      throw new Told(words.writtenUnseen(why, area.tab));
    }
    for (const step of [() => port.flush(), ...undo].reverse()) attempt(step);
    throw new Told(`${why} ${old ? words.LEFT_AS_IT_WAS : words.NO_TABLE_WRITTEN}`);
  }
}

/** Whether the block's stamp stands at the end of its first row: whatever the service said, the batch went in. */
function isWritten(port: SheetPort, { cells }: WriteBlock, area: Area): boolean {
  const column = area.column + area.columns - 1;
  const stamp = cells[0]?.[area.columns - 1] ?? BLANK;
  const standing = port.firstValue({ ...area, rows: 1, column, columns: 1 });
  return markOfStanding(standing, '') === markOfCell(stamp);
}

/**
 * What the old block leaves is cleared, then the name is moved: until then the name says how far the old block
 * reached, so that the next write can clear the rest. The name is an anchor: a table without it is found by its memory,
 * and named at the next write. Then colours, widths and the view. Where any of it fails the table stands, and the
 * reply says so.
 */
function finish(
  port: SheetPort,
  request: WriteBlock,
  area: Area,
  old: Area | undefined,
  read: TabContent | undefined,
  stay: boolean,
): { failure: string; tab?: TabContent | undefined } {
  let tab: TabContent | undefined;
  const rest = old ? leftovers(area, old) : [];
  const looks = old ? around(area, old) : area;
  const steps = [
    () => {
      for (const part of rest) port.clearAll(part);
      port.nameArea(request.name, area);
    },
    () => {
      const rules = port.ownRules(area, old, request.rules);
      const styles = grid(area, (r, c) => request.styles[r]?.[c] ?? 'plain');
      const origins = grid(area, (r, c) => originOf(request.cells[r]?.[c]));
      // Rules go in behind the looks: where they stand, the write before was not cut short between.
      port.style(area, looks, styles, origins, stay && rules.stand);
      rules.renew();
      const isBox = grid(looks, (r, c) => hasBox(request.cells[r]?.[c]));
      if (isBox.flat().includes(true)) port.setBoxes(looks, isBox);
      setView(port, request, area, old);
      port.showTab(area.tab);
    },
    // The reading sends off all that.
    () => {
      tab = port.readTab(area.tab, read && reach(area, read));
    },
  ];
  const [failure] = steps.map(attempt).filter((sentence) => sentence !== undefined);
  if (failure === undefined) return { failure: '', tab };
  const left = rest.length > 0 ? ', and rows or columns of the old one may be left beside it' : '';
  return {
    failure: words.looksMissing(left, failure),
  };
}

/** The view of a tab is set where we make the tab. Later it moves along with a block that begins the tab. */
function setView(
  port: SheetPort,
  { place, ...request }: WriteBlock,
  area: Area,
  old: Area | undefined,
): void {
  const memory = area.column + area.columns - 1;
  if (place.at === 'new-tab') {
    port.setLook(area.tab, area.column, request.widths, request.freezeRows, request.freezeColumns ?? 0);
    port.hideColumns(area.tab, columnsToHide(request, area));
  }
  if (place.at !== 'own' || !old || old.row !== 1) return;
  const { frozenRows, memoryColumn } = place;
  if (frozenRows !== undefined && frozenRows !== request.freezeRows) {
    port.moveFrozenRows(area.tab, frozenRows, request.freezeRows);
  }
  if (memoryColumn === undefined || memoryColumn === memory || !port.isHidden(area.tab, memoryColumn)) return;
  port.showColumns(area.tab, memoryColumn, 1);
  port.hideColumns(area.tab, columnsToHide(request, area));
}

/** What is for the tool alone: working columns and the memory. */
function columnsToHide({ styles }: Pick<WriteBlock, 'styles'>, { column, columns }: Area): number[] {
  const isHidden = (c: number): boolean => styles.some((row) => row[c] === 'working' || row[c] === 'memory');
  return Array.from({ length: columns }, (_, c) => c)
    .filter(isHidden)
    .map((c) => column + c);
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

const BLANK_TAB = { values: [], formulas: [] };

/** How far the tab is filled with the block on it, at most. */
function reach({ row, column, rows, columns }: Area, { values }: TabContent) {
  return {
    rows: Math.max(values.length, row + rows - 1),
    columns: Math.max(values[0]?.length ?? 0, column + columns - 1),
  };
}

/** Whether every row and column of the old block is where it was, as both memories say. */
function rowsStay(
  { place, cells }: WriteBlock,
  area: Area,
  old: Area,
  read: TabContent | undefined,
): boolean {
  const memory = area.columns - 1;
  if (!read || place.at !== 'own' || place.memoryColumn !== area.column + memory) return false;
  const idsOf = (column: readonly WireCell[]) => readMemory(column)?.rows.map((row) => row?.id);
  const before = idsOf(cut(read, { name: '', ...old }).values.map((row) => row[memory] ?? ''));
  const now = idsOf(cells.map((row) => sheetValue(row[memory] ?? BLANK)));
  return before?.every((id, r) => id !== undefined && id === now?.[r]) === true;
}

/** Notes hang on cells, not on what stands there: where rows have moved they belong to something else now. */
function noteOfNotes(port: SheetPort, old: Area): string {
  const cells: string[] = [];
  const failure = attempt(() => {
    for (const [r, c] of port.notedCells(old)) cells.push(cellA1(old.row + r, old.column + c));
  });
  if (failure || cells.length === 0) return '';
  return words.notesStay(firstFew(cells));
}

/** What a look at the sheet gives; undefined where it fails. */
export function tried<T>(look: () => T): T | undefined {
  try {
    return look();
  } catch {
    return undefined;
  }
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
