/**
 * What the actions need of a spreadsheet. google.ts speaks to the real service behind it; nothing else does.
 *
 * Rows and columns count from 1, as in the sheet. A failing service throws; actions let it pass and the door
 * to the sidebar turns it into a sentence.
 */
import type { BlockRule, BlockStyle, TabContent, WireCell } from '../../shared/contract';

export interface Area {
  readonly tab: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface AreaContent {
  readonly values: WireCell[][];
  readonly formulas: string[][];
}

/** What stands in an area, as far as its tab reaches, and what may keep it from being written. */
export interface Ground {
  readonly values: readonly (readonly WireCell[])[];
  readonly formulas: readonly (readonly string[])[];
  /** Merged ranges that reach into it. */
  readonly merged: Area[];
  /** Ranges of the tab that the person at the keyboard may not edit. */
  readonly closed: Area[];
  /** They may edit nothing on the tab. */
  readonly isTabClosed: boolean;
}

/** What goes into a rectangle in one batch: values ('=…' is a formula only where the format is not "@"). */
export interface AreaWrite {
  readonly values: (string | number | boolean)[][];
  readonly formats: string[][];
}

/** For each cell of an area the offsets of the cell whose look it takes over. */
export type Origins = readonly (readonly (readonly [row: number, column: number] | undefined)[])[];

/** The tab of the self-check. Everything is at its top left corner. */
export interface ScratchTab {
  empty(): void;
  write(values: readonly (readonly (string | number)[])[], format?: string): void;
  /** Values of the first of so many rows. */
  read(rows?: number, columns?: number): unknown[];
  formula(): string;
  /** Of the row's first cell. */
  format(row?: number): string;
  /** Of the first cell. */
  clearFormat(): void;
  locale(): string;
  sleep(milliseconds: number): void;
  merge(rows: number, columns: number): void;
  ruleAsReadBack(formula: string): string;
  nameTwice(): string;
  refusedWrite(): string;
  tabTypes(): string;
  frozenAndHidden(): string;
  hasId(): string;
}

export interface SheetPort {
  title(): string;
  /** Never leaves the script. */
  fileId(): string;
  locale(): string;
  timeZone(): string;
  /** Reads days by that zone without asking for it, until `timeZone` is asked. */
  trustZone(name: string): void;
  today(): string;
  /** How far a tab is filled, from A1. */
  usedPart(tab: string): { readonly rows: number; readonly columns: number };
  /** Names of all tabs, those without cells among them. */
  tabNames(): string[];
  /** Names of tabs without cells, such as charts. */
  passedOver(): string[];
  /** What stands on every tab with cells, from A1; nothing for a blank tab. */
  readAll(): TabContent[];
  activeTab(): string;
  /** The selection; undefined where the tab on show has no cells. */
  active(): (Area & { readonly a1: string }) | undefined;
  /** Our named ranges that still point somewhere. */
  namedAreas(): (Area & { readonly name: string })[];
  read(area: Area): AreaContent;
  /** The whole tab, which is filled no further than `size` where that is known. Sends off what is queued. */
  readTab(name: string, size?: { readonly rows: number; readonly columns: number }): TabContent;
  /** Of the area's first cell. Sends off what is queued. */
  firstValue(area: Area): WireCell;
  /** `read`: the tab's content, where it has just been read. */
  ground(area: Area, read?: TabContent): Ground;
  /** Grows the tab where the area reaches past its edge. `old`: what stands there reaches no further. */
  makeRoom(area: Area, old?: Area): void;
  /** In front of `before`, where that tab is there, else behind all others. */
  addTab(name: string, before?: string): void;
  removeTab(name: string): void;
  readFormats(area: Area): string[][];
  /** Of at least the area, where the tab then has room as by `makeRoom`: whether it has, the reading says. */
  readFormatsWithRoom(area: Area, old?: Area): string[][];
  setFormats(area: Area, formats: string[][]): void;
  /** Formats, then all values, as one batch. */
  write(area: Area, content: AreaWrite): void;
  /**
   * Looks by style, but cells with an origin look as that cell of `old` (with the same corner) did. `isStyled`: what
   * stands in its old place looks so already.
   */
  style(area: Area, old: Area, styles: BlockStyle[][], from: Origins, isStyled: boolean): void;
  /** Empties cells; formats and notes stay. */
  clear(areas: readonly Area[]): void;
  /** Empties cells and takes their formats; notes stay. */
  clearAll(area: Area): void;
  hideColumns(tab: string, columns: readonly number[]): void;
  showColumns(tab: string, first: number, count: number): void;
  isHidden(tab: string, column: number): boolean;
  nameArea(name: string, area: Area): void;
  /** Cells with a note attached, by row and column from 0 within the area. */
  notedCells(area: Area): (readonly [row: number, column: number])[];
  /** The block's own conditional colours inside `old`: whether any stand, and to put these in their place. All others stay. */
  ownRules(
    area: Area,
    old: Area | undefined,
    rules: readonly BlockRule[],
  ): { readonly stand: boolean; readonly renew: () => void };
  /** Makes boxes to tick of those cells; the area's other boxes go. */
  setBoxes(area: Area, isBox: readonly (readonly boolean[])[]): void;
  /** Widths of columns from `column` on, and how many rows and columns are frozen; 0 leaves those alone. */
  setLook(tab: string, column: number, widths: readonly number[], rows: number, columns: number): void;
  /** Freezes `to` rows where exactly `from` are frozen. */
  moveFrozenRows(tab: string, from: number, to: number): void;
  /** Into one cell, under the format that it has. */
  putValue(area: Area, value: string | number | boolean): void;
  showTab(tab: string): void;
  /** Selects it. */
  showCell(tab: string, row: number, column: number): Record<string, never>;
  /** A page in a window of its own over the sheet, in pixels. */
  showPage(title: string, page: string, width: number, height: number): void;
  onScratchTab<T>(work: (tab: ScratchTab) => T): T;
  /** Sends off what is queued: a refusal comes here, or at any reading before. */
  flush(): void;
  /** Runs with the document's lock, or throws where somebody else holds it. */
  locked<T>(work: () => T): T;
}

/** A sentence for the grower; shown as it is. */
export class Told extends Error {}
