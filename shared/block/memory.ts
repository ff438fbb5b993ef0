/**
 * What a block remembers of itself: its last column holds, for each row, an id and for each cell a mark of what was
 * written there. So whatever stands there now can be told from what the grower typed. A mark is a short hash, never
 * the thing itself, so nothing private lies in it; it moves with its row and comes along in a copy of the file.
 *
 *   first row:  SOUNDER MATERIALS 2 k3x9 | id mark mark …
 *   any other:  k3x9 | id mark mark …
 *
 * The stamp (k3x9) differs at every write: a row that carries another was left over by a write that did not end.
 * A mark is "." for a cell left blank, "~" for the room that an answer spills into, and "+" stands before the mark of
 * a cell that the grower is to type into. "^" stands before the mark of a title or heading: a table begins there, and
 * the mark of its heading is a column's id, by which it is found wherever it stands and whatever is put in beside it.
 *
 * What an earlier version remembers counts for nothing: its tables are read by their headings.
 */
import type { BlockCell, BlockStyle, WireCell } from '../contract';
import { serialFromIso } from '../core/calendar/serial-from-iso';
import { hashText } from './hash-text';
import { writtenShape } from './written-shape';

/** Version of the memory, not of the tool. */
const VERSION = 2;
const HEAD = /^SOUNDER ([A-Z_]+) (\d+) (\w+) \|/;
const ROW = /^(?:SOUNDER [A-Z_]+ \d+ )?(\w+) \| (\S+)((?: \S+)*)$/;

export const BLANK_MARK = '.';
export const ANSWER_MARK = '~';
const YOURS = '+';
const HEADING = '^';

/** What is remembered of a row. */
export interface RowMemory {
  readonly stamp: string;
  readonly id: string;
  /** One for each column that was written. */
  readonly marks: readonly string[];
}

export interface Memory {
  /** "MATERIALS". */
  readonly kind: string;
  /** Differs at every write. */
  readonly stamp: string;
  /** By the rows that stand; undefined for a row that was put in. */
  readonly rows: readonly (RowMemory | undefined)[];
}

/** Mark of something that stands in a cell, without its role. */
export function markOfStanding(value: WireCell, formula: string): string {
  if (formula !== '') return hashed(`=${writtenShape(formula)}`);
  if (value === '') return BLANK_MARK;
  if (typeof value === 'object') return hashed(`n${serialFromIso(value.d)}`);
  return typeof value === 'number' ? hashed(`n${value}`) : hashed(`${typeof value} ${value}`);
}

/** The same of a cell of a block or an area, by row and column from 0. */
export function markIn({ values, formulas }: Cells, row: number, column: number): string {
  return markOfStanding(values[row]?.[column] ?? '', formulas[row]?.[column] ?? '');
}

interface Cells {
  readonly values: readonly (readonly WireCell[])[];
  readonly formulas: readonly (readonly string[])[];
}

/** The same for a cell that is to be written. */
export function markOfCell(cell: BlockCell): string {
  switch (cell.k) {
    case 'blank':
      return cell.answer ? ANSWER_MARK : BLANK_MARK;
    case 'f':
      return markOfStanding('', cell.v);
    case 'd':
      return markOfStanding({ d: cell.v }, '');
    default:
      return markOfStanding(cell.v, '');
  }
}

const MARK_DIGITS = 5;

function hashed(text: string): string {
  return hashText(text).toString(36).padStart(MARK_DIGITS, '0').slice(-MARK_DIGITS);
}

export function isYours(mark: string): boolean {
  return mark.startsWith(YOURS);
}

export function isHeading(mark: string): boolean {
  return mark.startsWith(HEADING);
}

export function bareMark(mark: string): string {
  return isYours(mark) || isHeading(mark) ? mark.slice(1) : mark;
}

/** The mark of a title or heading with its sign. */
export function headingMark(mark: string): string {
  return mark === BLANK_MARK ? mark : HEADING + mark;
}

/** Mark of a cell that is to be written, with its role. */
export function markWithRole(cell: BlockCell, style: BlockStyle | undefined): string {
  const mark = markOfCell(cell);
  if (style === 'input') return YOURS + mark;
  return cell.k === 't' && (style === 'heading' || style === 'title') ? headingMark(mark) : mark;
}

/** The texts of the memory column. `before` is the stamp that stands now, so that the new one differs from it. */
export function memoryColumn(
  kind: string,
  cells: readonly (readonly BlockCell[])[],
  styles: readonly (readonly BlockStyle[])[],
  ids: readonly string[],
  before: string,
): { readonly stamp: string; readonly texts: string[] } {
  const rows = cells.map((row, r) => {
    const marks = row.map((cell, c) => markWithRole(cell, styles[r]?.[c]));
    return `| ${ids[r]} ${marks.join(' ')}`;
  });
  const stamp = hashText(before + rows.join('\n')).toString(36);
  const head = `SOUNDER ${kind} ${VERSION} `;
  return { stamp, texts: rows.map((row, r) => `${r === 0 ? head : ''}${stamp} ${row}`) };
}

/** Memory out of the texts of its column; undefined where that is no memory, or one of an earlier version. */
export function readMemory(column: readonly WireCell[]): Memory | undefined {
  const rows = column.map(rowMemory);
  if (rows.every((row) => row === undefined)) return undefined;
  const [head, kind = '', version, stamp = ''] = HEAD.exec(String(column.find(isHead) ?? '')) ?? [];
  if (head !== undefined && Number(version) !== VERSION) return undefined;
  return { kind, stamp, rows };
}

function rowMemory(text: WireCell): RowMemory | undefined {
  const [, stamp = '', id, marks = ''] = typeof text === 'string' ? (ROW.exec(text) ?? []) : [];
  return id === undefined ? undefined : { stamp, id, marks: marks.trim().split(' ') };
}

/** How many columns were written. */
export function columnsWritten(memory: Pick<Memory, 'rows'>): number {
  return Math.max(0, ...memory.rows.map((row) => row?.marks.length ?? 0));
}

export function isHead(text: WireCell): boolean {
  return typeof text === 'string' && HEAD.test(text);
}

export function isMemory(text: WireCell): boolean {
  return typeof text === 'string' && ROW.test(text);
}

/** Whether a write that was cut short has left that row of the block before. */
export function isLeftOver({ stamp }: Memory, row: RowMemory): boolean {
  return stamp !== '' && row.stamp !== stamp;
}

/** The texts of a memory column from its block's first row to where another block's memory begins. */
export function ownTexts(column: readonly WireCell[]): readonly WireCell[] {
  const next = column.findIndex((text, r) => r > 0 && isHead(text));
  return next < 0 ? column : column.slice(0, next);
}

/** How many rows such texts remember, rows that were put in between among them. */
export function rememberedRows(texts: readonly WireCell[]): number {
  return texts.map(isMemory).lastIndexOf(true) + 1;
}
