import { MOVE_KEYS, STAY_KEYS } from '../block/own-words';
import type { BlockInfo, TabContent, WireCell } from '../contract';
import * as words from './words';

const MOVES = Object.values(MOVE_KEYS);
const STAYS = Object.values(STAY_KEYS);

/**
 * Whether a row holds the headings of a table of ours. A copied tab has no named range any more, and its table of moves
 * would read like a list of paddocks, one for each move.
 */
export function isOwnHeadings(row: readonly WireCell[]): boolean {
  return hasAll(row, MOVES) || hasAll(row, STAYS) || row.some(isWhereAListStands);
}

/** A setting of a table of moves: "headings in row 1, list in rows 2 to 9", with headings of the list beside it. */
function isWhereAListStands(cell: WireCell): boolean {
  return typeof cell === 'string' && /^headings in row \d+, list in rows \d/.test(cell);
}

function hasAll(row: readonly WireCell[], wanted: readonly string[]): boolean {
  return wanted.every((heading) =>
    row.some((cell) => typeof cell === 'string' && cell.replace(/\s*\(.*\)$/, '').trim() === heading),
  );
}

/** A row with the cells of blocks blanked. */
export function withoutBlocks(
  row: readonly WireCell[],
  rowNumber: number,
  blocks: readonly BlockInfo[],
): readonly WireCell[] {
  const here = blocks.filter((block) => rowNumber >= block.row && rowNumber < block.row + block.rows);
  const isIn = (column: number): boolean =>
    here.some((block) => column >= block.column && column < block.column + block.columns);
  return here.length === 0 ? row : row.map((cell, c) => (isIn(c + 1) ? '' : cell));
}

/**
 * A sentence for each table of moves that stands in the file without its name, as a copied tab does; with the table
 * itself in the file, a copy of it or last season's.
 */
export function copiedMovesNotes(
  tabs: readonly TabContent[],
  blocks: readonly BlockInfo[],
  isTableThere = false,
): string[] {
  return tabs.flatMap(({ name, values }) => {
    const own = blocks.filter((block) => block.tab === name);
    const row = values.findIndex((cells, r) => hasAll(withoutBlocks(cells, r + 1, own), MOVES));
    if (row < 0) return [];
    if (isTableThere) {
      return [words.anotherTable(name, row + 1)];
    }
    return [words.copiedTable(name, row + 1)];
  });
}
