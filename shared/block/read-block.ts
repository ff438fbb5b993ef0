/** Reads what stands in one of our blocks, so that a rebuild can keep what was typed there. */

import type { BlockInfo, TabContent, WireCell } from '../contract';
import { headingRow } from './heading-row';
import { matchRows } from './match-rows';
import { isHead, isMemory, type Memory, ownTexts, readMemory, rememberedRows } from './memory';
import { oncePer } from './once-per';

export interface BlockContent {
  /** The block without its memory, which stands right of it. */
  readonly info: BlockInfo;
  readonly values: readonly (readonly WireCell[])[];
  readonly formulas: readonly (readonly string[])[];
  /** Absent in a block that an earlier version wrote, or whose memory was deleted. */
  readonly memory?: Memory;
  /** What was typed over the memory, by row from 0. */
  readonly overMemory?: readonly {
    readonly row: number;
    readonly value: WireCell;
    readonly formula: string;
  }[];
}

/**
 * The block's own rectangle out of its tab; cells past the used part of the tab are blank. Where the block has a
 * memory, that says how far it reaches: the name may lag behind a write that was cut short. Where the name reaches
 * further down, rows of the block before may be left. `rowsBelow`: rows right below it that are read with it.
 */
export const cutBlock = /* @__PURE__ */ oncePer(
  (tab: TabContent, named: BlockInfo, rowsBelow: number = 0): BlockContent => {
    const column = memoryColumnOf(tab, named);
    if (column === undefined) return cut(tab, { ...named, rows: named.rows + rowsBelow });
    const texts = tab.values.map((row) => row[column - 1] ?? '').slice(named.row - 1);
    const own = ownTexts(texts);
    const written = rememberedRows(own);
    const reached = Math.max(written, named.rows);
    const rows = (own.length < texts.length ? Math.min(reached, own.length) : reached) + rowsBelow;
    // Rows that a write which was cut short has left below the new ones: their memory stands in the column it had then.
    const left = (r: number): WireCell =>
      r < written
        ? ''
        : (tab.values[named.row - 1 + r]?.find((text, c) => c >= named.column && isMemory(text)) ?? '');
    const memory = readMemory(Array.from({ length: rows }, (_, r) => own[r] || left(r)));
    const columns = column - named.column;
    // That of an earlier version is a column like any other, with nothing in it to keep.
    if (!memory) return cut(tab, { ...named, rows, columns: columns + 1 });
    const overMemory = own.slice(0, rows).flatMap((value, row) => {
      const formula = tab.formulas[named.row - 1 + row]?.[column - 1] ?? '';
      return (value === '' && formula === '') || isMemory(value) ? [] : [{ row, value, formula }];
    });
    const content = { ...cut(tab, { ...named, rows, columns }), memory, overMemory };
    return { ...content, memory: { ...memory, rows: matchRows(content) } };
  },
);

/** Column of the memory, counted from 1: that of its head in the block's first row, else one within the block. */
function memoryColumnOf(tab: TabContent, { row, column, rows, columns }: BlockInfo): number | undefined {
  const head = (tab.values[row - 1] ?? []).findIndex((text, c) => c >= column && isHead(text));
  if (head >= 0) return head + 1;
  const within = Array.from({ length: columns - 1 }, (_, c) => column + columns - 1 - c);
  return within.find((c) =>
    tab.values.slice(row - 1, row - 1 + rows).some((cells) => isMemory(cells[c - 1] ?? '')),
  );
}

/** Any rectangle of a tab. */
export function cut(tab: TabContent, info: BlockInfo): BlockContent {
  const rows = Array.from({ length: info.rows }, (_, r) => r + info.row - 1);
  const columns = Array.from({ length: info.columns }, (_, c) => c + info.column - 1);
  return {
    info,
    values: rows.map((r) => columns.map((c) => tab.values[r]?.[c] ?? '')),
    formulas: rows.map((r) => columns.map((c) => tab.formulas[r]?.[c] ?? '')),
  };
}

/** The rectangle that a block takes with its memory: what is written over. */
export function wholeOf({ info, memory }: BlockContent): BlockInfo {
  return memory ? { ...info, columns: info.columns + 1 } : info;
}

/** One row of a table inside a block, by its headings. */
export interface TableRow {
  /** Row in the sheet, for messages. */
  readonly sheetRow: number;
  readonly value: (heading: string) => WireCell;
  readonly formula: (heading: string) => string;
}

/**
 * Rows of the table whose heading row holds all of `headings` (any order, extra columns allowed), down to the
 * first row that is blank under every heading. Undefined where there is no such heading row.
 */
export function tableRows(block: BlockContent, headings: readonly string[]): readonly TableRow[] | undefined {
  const at = headingRow(block.values, headings);
  const head = block.values[at];
  if (!head) return undefined;
  const columnOf = (heading: string): number => head.indexOf(heading);
  const end = block.values.findIndex(
    (row, r) => r > at && headings.every((heading) => row[columnOf(heading)] === ''),
  );
  const last = end < 0 ? block.values.length : end;
  return block.values.slice(at + 1, last).map((row, i) => ({
    sheetRow: block.info.row + at + 1 + i,
    value: (heading) => row[columnOf(heading)] ?? '',
    formula: (heading) => block.formulas[at + 1 + i]?.[columnOf(heading)] ?? '',
  }));
}
