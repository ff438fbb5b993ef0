/**
 * Touches Apps Script's services (SpreadsheetApp, HtmlService, LockService, Utilities), as nothing else does but
 * google-scratch.ts.
 */

import { areaA1 } from '../../shared/block/a1';
import { cut } from '../../shared/block/read-block';
import { stretches } from '../../shared/block/stretches';
import type { BlockRule, BlockStyle, TabContent, WireCell } from '../../shared/contract';
import { type Day, dayFromIso } from '../../shared/core/calendar/day';
import type { Edge } from '../../shared/door/edge';
import { TODAY_BLOCK } from '../../shared/tasks/today/tick-words';
import { onScratchTab } from './google-scratch';
import { isWithin } from './is-within';
import type { TickedPage } from './on-edit';
import type { Area, AreaContent, AreaWrite, Ground, Origins, SheetPort } from './port';
import { Told } from './port';
import { ruleShape } from './rule-shape';
import * as words from './words';

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

const ISO_DATE = 'yyyy-MM-dd';
const ISO_TIME = "yyyy-MM-dd'T'HH:mm:ss";
const MIDNIGHT = '00:00:00';
const AFTER_THE_JUMP = '01:00:00';
const LOCK_WAIT_MILLISECONDS = 5000;
const COPY_PIXELS = { width: 640, height: 480 };

/** What a cell without a fill says of itself. Set as a fill, it would hide the lines of the grid. */
const NO_FILL = '#ffffff';

const PLAIN: Look = { background: null, color: '#202124', weight: 'normal', slant: 'normal' };
const MUTED: Look = { background: null, color: '#5f6368', weight: 'normal', slant: 'italic' };
/** Looks of the cells. Colours come with a weight or a slant, so that none speaks by colour alone. */
const LOOKS: Readonly<Record<BlockStyle, Look>> = {
  plain: PLAIN,
  /** Plain, in as many lines as it takes: names in a narrow column. */
  name: PLAIN,
  title: { background: null, color: '#202124', weight: 'bold', slant: 'normal' },
  heading: { background: '#dfe8d8', color: '#202124', weight: 'bold', slant: 'normal' },
  input: { background: '#fff8e1', color: '#202124', weight: 'normal', slant: 'normal' },
  muted: MUTED,
  /** Sums between two others: its column is hidden on a tab of ours. */
  working: MUTED,
  /** Muted, in as many lines as it takes. */
  note: MUTED,
  /** The block's last column, for the tool alone: hidden on a tab of ours, hardly seen elsewhere. */
  memory: { background: null, color: '#e8eaed', weight: 'normal', slant: 'normal' },
  warning: { background: '#fdecea', color: '#7a1f14', weight: 'bold', slant: 'normal' },
};
const WRAPPED: readonly BlockStyle[] = ['heading', 'name', 'note'];
interface Look {
  readonly background: string | null;
  readonly color: string;
  readonly weight: Weight;
  readonly slant: Slant;
}
type Weight = 'bold' | 'normal';
type Slant = 'italic' | 'normal';

/** Reads dates for the door: a date cell is an instant, and only the spreadsheet's time zone says which day. */
export function spreadsheetEdge(): Edge {
  let zone: string | undefined;
  return {
    dayOfDate: (date) => {
      zone ??= SpreadsheetApp.getActiveSpreadsheet().getSpreadsheetTimeZone();
      return dayInZone(date as Date, zone);
    },
  };
}

function dayInZone(date: Date, zone: string): Day {
  return dayFromIso(Utilities.formatDate(date, zone, ISO_DATE)) ?? Number.NaN;
}

export function addMenu(title: string, items: readonly { label: string; functionName: string }[]): void {
  const menu = SpreadsheetApp.getUi().createMenu(title);
  for (const item of items) menu.addItem(item.label, item.functionName);
  menu.addToUi();
}

export function showSidebarPage(title: string): void {
  SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile('sidebar').setTitle(title));
}

/** A message that can be marked and copied. */
export function showTextToCopy(title: string, text: string): void {
  const escaped = text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
  const style = 'box-sizing:border-box;width:100%;height:95vh;font:13px/1.5 sans-serif';
  const page = `<textarea readonly aria-label="${title}" style="${style}">${escaped}</textarea>`;
  showPage(title, page, COPY_PIXELS.width, COPY_PIXELS.height);
}

function showPage(title: string, page: string, width: number, height: number): void {
  const output = HtmlService.createHtmlOutput(page).setWidth(width).setHeight(height);
  SpreadsheetApp.getUi().showModalDialog(output, title);
}

export function showText(title: string, text: string): void {
  const ui = SpreadsheetApp.getUi();
  ui.alert(title, text, ui.ButtonSet.OK);
}

/** The spreadsheet that the script is bound to. */
export function boundSpreadsheet(): SheetPort {
  const file = SpreadsheetApp.getActiveSpreadsheet();
  // Each look-up waits for Google.
  let listed: Map<string, Sheet> | undefined;
  const sheets = (): Map<string, Sheet> => {
    listed ??= new Map(file.getSheets().map((sheet) => [sheet.getName(), sheet]));
    return listed;
  };
  const grids = (): [string, Sheet][] => [...sheets()].filter(([, sheet]) => isGrid(sheet));
  const sheetOf = (name: string): Sheet => {
    const sheet = sheets().get(name);
    if (!sheet) throw new Told(words.tabGone(name));
    return sheet;
  };
  let trusted: string | undefined;
  let known: string | undefined;
  const timeZone = (): string => {
    trusted = undefined;
    known ??= file.getSpreadsheetTimeZone();
    return known;
  };
  const zone = (): string => trusted ?? timeZone();
  const rangeOf = (area: Area): Range =>
    sheetOf(area.tab).getRange(area.row, area.column, area.rows, area.columns);
  return {
    title: () => file.getName(),
    fileId: () => file.getId(),
    locale: () => file.getSpreadsheetLocale(),
    timeZone,
    trustZone: (name) => {
      trusted = name;
    },
    today: () => Utilities.formatDate(new Date(), zone(), ISO_DATE),
    usedPart: (tab) => ({ rows: sheetOf(tab).getLastRow(), columns: sheetOf(tab).getLastColumn() }),
    tabNames: () => [...sheets().keys()],
    passedOver: () => [...sheets()].filter(([, sheet]) => !isGrid(sheet)).map(([name]) => name),
    readAll: () => grids().map(([name, sheet]) => readUsed(name, sheet.getDataRange(), zone())),
    activeTab: () => file.getActiveSheet().getName(),
    active: () => activeArea(file),
    namedAreas: () => namedAreas(file),
    read: (area) => readRange(rangeOf(area), zone()),
    readTab: (name, size) => {
      const sheet = sheetOf(name);
      const range = size ? sheet.getRange(1, 1, size.rows, size.columns) : sheet.getDataRange();
      return readUsed(name, range, zone());
    },
    firstValue: (area) => wireCells([[rangeOf(area).getValue()]], zone())[0]?.[0] ?? '',
    ground: (area, read) => groundOf(sheetOf(area.tab), area, zone(), read),
    makeRoom: (area, old) => makeRoom(sheetOf(area.tab), area, old),
    addTab: (name, before) => {
      const names = [...sheets().keys()];
      const at = before === undefined ? -1 : names.indexOf(before);
      sheets().set(name, file.insertSheet(name, at < 0 ? names.length : at));
    },
    removeTab: (name) => {
      file.deleteSheet(sheetOf(name));
      sheets().delete(name);
    },
    readFormats: (area) => formatsOf(rangeOf(area)),
    readFormatsWithRoom: (area, old) => {
      const read = () => formatsOf(rangeOf({ ...area, rows: area.rows + SPARE_ROWS }));
      try {
        return read();
      } catch {
        makeRoom(sheetOf(area.tab), area, old);
        return read();
      }
    },
    setFormats: (area, formats) => {
      rangeOf(area).setNumberFormats(formats);
    },
    write: (area, content) => writeRange(rangeOf(area), content),
    style: (area, old, styles, from, isStyled) => {
      const rangeOfRows = (first: number, rows: number) => rangeOf({ ...area, row: area.row + first, rows });
      styleRows(rangeOfRows, rangeOf(old), styles, from, isStyled);
    },
    clearAll: (area) => {
      // clearFormat leaves the number format.
      rangeOf(area).clearContent().clearFormat().setNumberFormat('General');
    },
    hideColumns: (tab, columns) => {
      for (const { first, count } of stretches(columns)) sheetOf(tab).hideColumns(first, count);
    },
    showColumns: (tab, first, count) => sheetOf(tab).showColumns(first, count),
    isHidden: (tab, column) => sheetOf(tab).isColumnHiddenByUser(column),
    clear: (areas) => {
      for (const area of areas) rangeOf(area).clearContent();
      SpreadsheetApp.flush();
    },
    nameArea: (name, area) => file.setNamedRange(name, rangeOf(area)),
    notedCells: (area) => notedCells(rangeOf(area)),
    ownRules: (area, old, rules) => ownRules(sheetOf(area.tab), area, old, rules),
    moveFrozenRows: (tab, from, to) => {
      if (sheetOf(tab).getFrozenRows() === from) sheetOf(tab).setFrozenRows(to);
    },
    setBoxes: (area, isBox) => setBoxes(rangeOf(area), isBox),
    setLook: (tab, ...look) => setLook(sheetOf(tab), ...look),
    putValue: (area, value) => {
      rangeOf(area).setValue(value);
    },
    showTab: (tab) => {
      file.setActiveSheet(sheetOf(tab));
    },
    showCell: (tab, row, column) => {
      file.setActiveSheet(sheetOf(tab)).getRange(row, column).activate();
      return {};
    },
    showPage,
    onScratchTab: (work) => onScratchTab(file, (range) => readRange(range, zone()).values, work),
    flush: () => SpreadsheetApp.flush(),
    locked: (work) => withLock(work),
  };
}

/** Today's page, where the edited cell lies on its tab. */
export function tickedPage(cell: Range): TickedPage | undefined {
  const file = SpreadsheetApp.getActiveSpreadsheet();
  const page = file.getRangeByName(TODAY_BLOCK);
  const tab = cell.getSheet();
  if (page?.getSheet().getName() !== tab.getName()) return undefined;
  const [row, column] = [cell.getRow(), cell.getColumn()];
  return {
    row,
    column,
    values: page.getValues(),
    formulas: page.getFormulas(),
    untick: (says) => {
      tab.getRange(row, column, 1, 2).setValues([[false, says]]);
    },
    writeDay: (range, place, day) => {
      file.getRange(range.replace(/\$/g, '')).getCell(place, 1).setValue(day);
      SpreadsheetApp.flush();
    },
  };
}

/** Charts on a tab of their own have no cells: whatever reads cells there throws. */
function isGrid(sheet: Sheet): boolean {
  return sheet.getType() === SpreadsheetApp.SheetType.GRID;
}

/** What stands on a tab, from A1 as far as it is filled. */
function readUsed(name: string, range: Range, zone: string): TabContent {
  const { values, formulas } = readRange(range, zone);
  const isFilled = (r: number, c: number): boolean => values[r]?.[c] !== '' || formulas[r]?.[c] !== '';
  const rows = lengthTo(values.length, (r) => values[r]!.some((_, c) => isFilled(r, c)));
  const columns = lengthTo(values[0]?.length ?? 0, (c) => values.some((_, r) => isFilled(r, c)));
  const used = <Cell>(grid: Cell[][]) => grid.slice(0, rows).map((row) => row.slice(0, columns));
  return { name, values: used(values), formulas: used(formulas) };
}

/** How many of so many reach to the last that is wanted. */
function lengthTo(length: number, isWanted: (at: number) => boolean): number {
  let last = length;
  while (last > 0 && !isWanted(last - 1)) last--;
  return last;
}

function activeArea(file: Spreadsheet): (Area & { a1: string }) | undefined {
  const range = isGrid(file.getActiveSheet()) ? file.getActiveRange() : undefined;
  if (!range) return undefined;
  const area = areaOf(range);
  return { ...area, a1: areaA1(area) };
}

function areaOf(range: Range): Area {
  return {
    tab: range.getSheet().getName(),
    row: range.getRow(),
    column: range.getColumn(),
    rows: range.getNumRows(),
    columns: range.getNumColumns(),
  };
}

const OWN_PREFIX = 'SOUNDER_';

/** A name whose tab was deleted has no range any more and counts as gone. */
function namedAreas(file: Spreadsheet): (Area & { name: string })[] {
  return file.getNamedRanges().flatMap((named) => {
    const name = named.getName();
    const range = name.startsWith(OWN_PREFIX) ? rangeOrNothing(named) : undefined;
    return range ? [{ name, ...areaOf(range) }] : [];
  });
}

function rangeOrNothing(named: GoogleAppsScript.Spreadsheet.NamedRange): Range | undefined {
  try {
    return named.getRange() ?? undefined;
  } catch {
    return undefined;
  }
}

function readRange(range: Range, zone: string): AreaContent {
  return { values: wireCells(range.getValues(), zone), formulas: range.getFormulas() };
}

function wireCells(values: readonly (readonly unknown[])[], zone: string): WireCell[][] {
  // Many cells hold the same few dates: each is turned into text once.
  const isoOf = new Map<number, string>();
  const wire = (value: unknown): WireCell => {
    if (typeof value === 'number' || typeof value === 'boolean') return value;
    if (Object.prototype.toString.call(value) !== '[object Date]') return String(value ?? '');
    const date = value as Date;
    const time = date.getTime();
    // No day that exists: words that every reader names with their cell.
    if (!Number.isFinite(time)) return String(date);
    let iso = isoOf.get(time);
    if (iso === undefined) {
      iso = isoText(date, zone);
      isoOf.set(time, iso);
    }
    return { d: iso };
  };
  return values.map((row) => row.map(wire));
}

/** What a cell without a format reads back as; set as it stands, a date typed there later shows as a number. */
const AUTOMATIC_FORMAT = '0.###############';

function formatsOf(range: Range): string[][] {
  const known = (format: string): string => (format === AUTOMATIC_FORMAT ? 'General' : format);
  return range.getNumberFormats().map((row) => row.map(known));
}

/**
 * A day, with its time of day where it has one. In zones whose clocks go forward at midnight (Santiago, Cairo, Beirut)
 * that day begins at 1:00: no time of day either.
 */
function isoText(date: Date, zone: string): string {
  const [day = '', time] = Utilities.formatDate(date, zone, ISO_TIME).split('T');
  if (time === MIDNIGHT) return day;
  const isFirstMoment = (): boolean =>
    Utilities.formatDate(new Date(date.getTime() - 1), zone, ISO_DATE) !== day;
  return time === AFTER_THE_JUMP && isFirstMoment() ? day : `${day}T${time}`;
}

/** Columns left free beside a block that is wider than its tab, for what the grower wants to add. Judgement. */
const SPARE_COLUMNS = 3;
/** Rows below a block that must be there: its formulas may look for what was typed right under it. */
const SPARE_ROWS = 25;

function makeRoom(sheet: Sheet, area: Area, old: Area | undefined): void {
  const lastRow = sheet.getMaxRows();
  const rows = area.row + area.rows - 1 + SPARE_ROWS - lastRow;
  if (rows > 0) sheet.insertRowsAfter(lastRow, rows);
  if (old && area.columns <= old.columns) return;
  const lastColumn = sheet.getMaxColumns();
  const columns = area.column + area.columns - 1 - lastColumn;
  if (columns > 0) sheet.insertColumnsAfter(lastColumn, columns + SPARE_COLUMNS);
}

/** Formats go first: a cell with format "@" keeps text that begins with "=" as text. */
function writeRange(range: Range, { values, formats }: AreaWrite): void {
  range.setNumberFormats(formats);
  range.setValues(values);
}

/**
 * Cells with an origin keep the look that the cell there had; it is read only where there are any. Where the block
 * `isStyled`, rows whose cells all keep their own look are let alone.
 */
function styleRows(
  rangeOfRows: (first: number, rows: number) => Range,
  before: Range,
  styles: BlockStyle[][],
  from: Origins,
  isStyled: boolean,
): void {
  const isKept = (r: number): boolean =>
    isStyled &&
    styles[r]!.every((style, c) => style === 'memory' || (from[r]?.[c]?.[0] === r && from[r][c][1] === c));
  const changed = styles.map((_, r) => r).filter((r) => !isKept(r));
  const keepsAny = changed.some((r) => from[r]?.some((origin) => origin !== undefined));
  const look = <Key extends keyof Look>(property: Key, read: () => string[][]): Look[Key][][] => {
    const old = keepsAny ? read() : [];
    return styles.map((row, r) =>
      row.map((style, c) => {
        const [fromRow = -1, fromColumn = -1] = from[r]?.[c] ?? [];
        // The service answers with the words that it takes.
        const kept = old[fromRow]?.[fromColumn] as Look[Key] | undefined;
        return kept === undefined || kept === NO_FILL ? LOOKS[style][property] : kept;
      }),
    );
  };
  const backgrounds = look('background', () => before.getBackgrounds());
  const colors = look('color', () => before.getFontColors());
  const weights = look('weight', () => before.getFontWeights());
  const slants = look('slant', () => before.getFontStyles());
  // Headings are longer than their columns are wide; long sentences may run over their empty neighbours.
  const wraps = styles.map((row) => row.map((style) => WRAPPED.includes(style)));
  for (const { first, count } of stretches(changed)) {
    const rows = <Cell>(grid: Cell[][]) => grid.slice(first, first + count);
    rangeOfRows(first, count)
      .setBackgrounds(rows(backgrounds))
      .setFontColors(rows(colors))
      .setFontWeights(rows(weights))
      .setFontStyles(rows(slants))
      .setWraps(rows(wraps));
  }
}

/** An area may reach past the tab's edge, which grows before it is written. */
function groundOf(sheet: Sheet, area: Area, zone: string, read: TabContent | undefined): Ground {
  const [endRow, endColumn] = [area.row + area.rows - 1, area.column + area.columns - 1];
  // The tab reaches as far as it is filled, and Google need not be asked.
  const usedRows = read?.values.length ?? 0;
  const usedColumns = read?.values[0]?.length ?? 0;
  const rows = area.rows - (endRow <= usedRows ? 0 : Math.max(0, endRow - sheet.getMaxRows()));
  const columns =
    area.columns - (endColumn <= usedColumns ? 0 : Math.max(0, endColumn - sheet.getMaxColumns()));
  if (rows <= 0 || columns <= 0) {
    return { values: [], formulas: [], merged: [], ...closedParts(sheet) };
  }
  const range = sheet.getRange(area.row, area.column, rows, columns);
  const merged = range.getMergedRanges().map(areaOf);
  const closed = range.canEdit() ? { closed: [], isTabClosed: false } : closedParts(sheet);
  const { values, formulas } = read ? cut(read, { name: '', ...area }) : readRange(range, zone);
  return { values, formulas, merged, ...closed };
}

function closedParts(sheet: Sheet): Pick<Ground, 'closed' | 'isTabClosed'> {
  const { RANGE, SHEET } = SpreadsheetApp.ProtectionType;
  const notMine = (type: GoogleAppsScript.Spreadsheet.ProtectionType) =>
    sheet.getProtections(type).filter((one) => !one.canEdit());
  return {
    closed: notMine(RANGE).map((one) => areaOf(one.getRange())),
    // Of a tab closed but for some ranges the service itself says whether a cell may be written.
    isTabClosed: notMine(SHEET).some((one) => one.getUnprotectedRanges().length === 0),
  };
}

function notedCells(range: Range): [row: number, column: number][] {
  return range
    .getNotes()
    .flatMap((line, r) => line.flatMap((note, c): [number, number][] => (note === '' ? [] : [[r, c]])));
}

/** The rules of ours inside the block; those that the grower made there stay. */
function ownRules(
  sheet: Sheet,
  area: Area,
  old: Area | undefined,
  rules: readonly BlockRule[],
): { stand: boolean; renew: () => void } {
  const shapes = new Set(rules.map(({ formula }) => ruleShape(formula)));
  const isOurs = (rule: GoogleAppsScript.Spreadsheet.ConditionalFormatRule): boolean => {
    if (!rule.getRanges().every((range) => isWithin(areaOf(range), old ?? area))) return false;
    const [formula] = rule.getBooleanCondition()?.getCriteriaValues() ?? [];
    return typeof formula === 'string' && shapes.has(ruleShape(formula));
  };
  const all = sheet.getConditionalFormatRules();
  const others = all.filter((rule) => !isOurs(rule));
  const renewed = (): GoogleAppsScript.Spreadsheet.ConditionalFormatRule[] =>
    rules.map((rule) =>
      SpreadsheetApp.newConditionalFormatRule()
        .whenFormulaSatisfied(rule.formula)
        .setBackground(rule.background)
        .setRanges([sheet.getRange(area.row + rule.row, area.column + rule.column, rule.rows, rule.columns)])
        .build(),
    );
  return {
    stand: others.length < all.length,
    renew: () => sheet.setConditionalFormatRules([...others, ...renewed()]),
  };
}

/** Rules of the grower's are not written back: what a script reads of a drop-down is not all that it holds. */
function setBoxes(range: Range, isBox: readonly (readonly boolean[])[]): void {
  const box = SpreadsheetApp.newDataValidation().requireCheckbox().build();
  const { CHECKBOX } = SpreadsheetApp.DataValidationCriteria;
  range.getDataValidations().forEach((row, r) => {
    row.forEach((rule, c) => {
      const wanted = isBox[r]?.[c] === true;
      if ((rule?.getCriteriaType() === CHECKBOX) === wanted) return;
      range.getCell(r + 1, c + 1).setDataValidation(wanted ? box : null);
    });
  });
}

function setLook(
  sheet: Sheet,
  column: number,
  widths: readonly number[],
  rows: number,
  columns: number,
): void {
  widths.forEach((width, i) => {
    if (width > 0) sheet.setColumnWidth(column + i, width);
  });
  if (rows > 0) sheet.setFrozenRows(rows);
  if (columns > 0) sheet.setFrozenColumns(columns);
}

function withLock<T>(work: () => T): T {
  const lock = LockService.getDocumentLock();
  if (!lock?.tryLock(LOCK_WAIT_MILLISECONDS)) {
    throw new Told(words.SOMEBODY_WRITES);
  }
  try {
    return work();
  } finally {
    try {
      lock.releaseLock();
    } catch {
      // Google releases it at the end of the script; what was done is done.
    }
  }
}
