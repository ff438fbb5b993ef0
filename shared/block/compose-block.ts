/** Puts rows of different length together into the even grids that WriteBlock wants. */
import type { BlockCell, BlockStyle } from '../contract';
import { BLANK } from './cells';
import { hashText } from './hash-text';

export interface BlockRow {
  readonly cells: readonly BlockCell[];
  /** One style for the whole row, or one for each cell. */
  readonly style?: BlockStyle | readonly BlockStyle[];
  /** What the row is called from one write to the next, where its first cell does not say it. */
  readonly id?: string;
}

export interface Grids {
  readonly cells: BlockCell[][];
  readonly styles: BlockStyle[][];
  readonly ids: (string | undefined)[];
}

export function composeBlock(rows: readonly BlockRow[]): Grids {
  const width = Math.max(1, ...rows.map((row) => row.cells.length));
  const across = Array.from({ length: width }, (_, c) => c);
  return {
    cells: rows.map((row) => across.map((c) => row.cells[c] ?? BLANK)),
    styles: rows.map((row) => across.map((c) => styleAt(row, c))),
    ids: rows.map(({ id }) => id && idMark(id)),
  };
}

function styleAt({ style }: BlockRow, column: number): BlockStyle {
  if (style === undefined) return 'plain';
  return typeof style === 'string' ? style : (style[column] ?? 'plain');
}

/** Rows of settings are known by their id: what stands there is on the page too. */
export const SETTING_ROW = 'setting ';

function idMark(id: string): string {
  return isRecordId(id) ? id : idOf(id);
}

/** The id of a row that goes by that name. */
export function idOf(name: string): string {
  return `${name.startsWith(SETTING_ROW) ? SETTING_ID : '='}${hashText(name).toString(36)}`;
}

export const SETTING_ID = '$';
/** Begins the id of a record, such as a move: it keeps the id that it was given at first, wherever it goes. */
export const RECORD_ID = '#';

export function isRecordId(id: string | undefined): boolean {
  return id?.startsWith(RECORD_ID) ?? false;
}
/** Cells at the beginning of a record that say which it is. */
export const NAMING_CELLS = 3;
