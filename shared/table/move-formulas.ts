/**
 * The plain formulas of the rotation table.
 *
 * They must give the same in Google Sheets, LibreOffice and the preview's engine, stay light at 3,000 rows, and
 * survive a deleted or inserted row. Hence:
 * - A group's planned day in is what MAXIFS finds in a window of rows above, not a reference to one cell: a
 *   deleted row then leaves the next one with the move before it instead of #REF!.
 * - The windows are as long as the table needs, not the whole column: work grows with the rows, not their square.
 * - Groups and paddocks are compared by key columns, a letter before the name and the wildcards replaced, because
 *   the criteria of MAXIFS and COUNTIFS would read a name such as ">5" or "Pigs*" as a pattern.
 * - `;` between arguments, no decimal and no array literals: every locale reads them.
 */
import type { ColumnKey } from './columns';
import { ifFilled } from './list-lookup';
import { isSkippedFormula } from './skipped';

/** Where the rows of the table stand, and how far formulas look. */
export interface TableFrame {
  readonly letters: (key: ColumnKey) => string;
  /** The blank row under the headings, which starts every window and holds the cell functions. */
  readonly anchorRow: number;
  readonly lastRow: number;
  /** Rows above in which a group's move before is looked for. */
  readonly groupWindow: number;
  /** Rows above and below in which other uses of a paddock are looked for. */
  readonly paddockWindow: number;
}

export function cellIn(frame: TableFrame, key: ColumnKey, row: number): string {
  return `${frame.letters(key)}${row}`;
}

export function rangeIn(frame: TableFrame, key: ColumnKey, from: number, to: number): string {
  return `${frame.letters(key)}${from}:${frame.letters(key)}${to}`;
}

export type At = (key: ColumnKey) => string;

/** A row's own cells, the rows above it that may hold its group, the rows around that may hold its paddock. */
export function windows(frame: TableFrame, row: number): { at: At; above: At; around: At } {
  const { anchorRow, lastRow, groupWindow, paddockWindow } = frame;
  const from = Math.max(anchorRow, row - paddockWindow);
  const to = Math.min(lastRow, row + paddockWindow);
  return {
    at: (key) => cellIn(frame, key, row),
    above: (key) => rangeIn(frame, key, Math.max(anchorRow, row - groupWindow), row - 1),
    around: (key) => rangeIn(frame, key, from, to),
  };
}

/** In + days of the group's latest move above; the day first planned where all of those were deleted. */
export function plannedInFormula(frame: TableFrame, row: number, firstPlanned: string): string {
  const { at, above } = windows(frame, row);
  const group = `${above('groupKey')};${at('groupKey')}`;
  const latest = `MAXIFS(${above('inDay')};${group};${above('dueOut')};">0")`;
  const due = `MAXIFS(${above('dueOut')};${group};${above('inDay')};${latest})`;
  return `=IF(COUNTIFS(${group};${above('dueOut')};">0")=0;${firstPlanned};${due})`;
}

/** The day really moved in if it is typed, else the planned one; nothing for a move that was skipped. */
export function inDayFormula(frame: TableFrame, row: number): string {
  const { at } = windows(frame, row);
  const planned = `IF(${isSkippedFormula(at('movedIn'))};"";${at('plannedIn')})`;
  return `=IF(ISNUMBER(${at('movedIn')});INT(${at('movedIn')});${planned})`;
}

/** Days of a stay, see wholeDays. */
export function isStayDaysFormula(days: string, most: number): string {
  return `IF(ISNUMBER(${days});AND(${days}>=1;${days}<=${most};${days}=INT(${days}));FALSE)`;
}

/** In + days; where these are no days of a stay, those that were written there count. */
export function dueOutFormula(frame: TableFrame, row: number, written: number, most: number): string {
  const { at } = windows(frame, row);
  const days = `IF(${isStayDaysFormula(at('days'), most)};${at('days')};${written})`;
  return `=IF(ISNUMBER(${at('inDay')});${at('inDay')}+${days};"")`;
}

/**
 * In + days; or the day on which the group's next move is typed in, for then it left. The next is the first below that
 * has a day in: one that was skipped is passed over.
 */
export function outFormula(frame: TableFrame, row: number): string {
  const { at } = windows(frame, row);
  const due = at('dueOut');
  // Never a range of one cell: the preview's engine mixes it up with a single cell. The row below the moves has no group's key.
  const last = Math.max(row + 2, Math.min(frame.lastRow, row + frame.groupWindow));
  const first = (key: ColumnKey): string => {
    const below = (column: ColumnKey): string => rangeIn(frame, column, row + 1, last);
    return `MINIFS(${below(key)};${below('groupKey')};${at('groupKey')})`;
  };
  const typed = first('movedIn');
  const left = `IF(${typed}>0;IF(INT(${typed})=${first('inDay')};INT(${typed});${due});${due})`;
  return `=IF(ISNUMBER(${at('inDay')});IFERROR(${left};${due});"")`;
}

/** The days really stayed, or to be stayed: those that feed and manure go by. */
export function stayDaysFormula(frame: TableFrame, row: number): string {
  const { at } = windows(frame, row);
  return `=IF(AND(ISNUMBER(${at('inDay')});ISNUMBER(${at('out')}));${at('out')}-${at('inDay')};"")`;
}

/** The day the paddock was last left before this move, by any row near or as the list says; 0 for never. */
export function lastOutFormula(frame: TableFrame, row: number): string {
  const { at, around } = windows(frame, row);
  const used = at('lastUsed');
  const inTable = `MAXIFS(${around('out')};${around('paddockKey')};${at('paddockKey')};${around('out')};"<="&${at('inDay')})`;
  const inList = `IF(ISNUMBER(${used});IF(${used}<=${at('inDay')};${used};0);0)`;
  return `=IF(ISNUMBER(${at('inDay')});MAX(${inTable};${inList});0)`;
}

export function restBeforeFormula(frame: TableFrame, row: number): string {
  const { at } = windows(frame, row);
  return `=IF(${at('lastOut')}>0;${at('inDay')}-${at('lastOut')};"")`;
}

/**
 * Rest due by a whole number, a settings cell or the twelve settings cells (the month last left): cell by cell, so that
 * a column that is put in between counts for no month.
 */
export function restDueFormula(frame: TableFrame, row: number, setting: string, monthly: boolean): string {
  const { at } = windows(frame, row);
  const due = monthly ? `CHOOSE(MONTH(${at('lastOut')});${setting})` : setting;
  return `=IF(ISNUMBER(${at('restBefore')});ROUNDUP(${due};0);"")`;
}

export function densityFormula(frame: TableFrame, row: number): string {
  const { at } = windows(frame, row);
  return `=IF(AND(ISNUMBER(${at('head')});ISNUMBER(${at('weightIn')});ISNUMBER(${at('area')}));${at('head')}*${at('weightIn')}/${at('area')};"")`;
}

/** Liveweight-days per area with the mean head and the mean of the weights in and out; the weight in where the one out is not known. */
export function loadFormula(frame: TableFrame, row: number): string {
  const { at } = windows(frame, row);
  const known = ['meanHead', 'weightIn', 'stayDays', 'area'] as const;
  const out = `IF(ISNUMBER(${at('weightOut')});${at('weightOut')};${at('weightIn')})`;
  const load = `${at('meanHead')}*(${at('weightIn')}+${out})/2*${at('stayDays')}/${at('area')}`;
  return `=IF(AND(${known.map((key) => `ISNUMBER(${at(key)})`).join(';')});${load};"")`;
}

/** A name made safe as a criterion: a letter before it, no wildcards. */
export function keyFormula(nameCell: string): string {
  const plain = `SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(${nameCell};"*";"·");"?";"¿");"~";"¬")`;
  return `="k"&${plain}`;
}

/**
 * Days since the weighing, not below 0: the growth of a stay before it is not taken back. `isLookup`: the day of
 * weighing may be blank.
 */
export function growthDaysFormula(
  frame: TableFrame,
  row: number,
  weighedOn: string,
  isLookup = false,
): string {
  const { at } = windows(frame, row);
  const since = `MAX(0;${at('inDay')}-${weighedOn})`;
  const known = isLookup ? ifFilled(weighedOn, since).slice(1) : since;
  return `=IF(ISNUMBER(${at('inDay')});${known};"")`;
}
