/** Columns that the grower added to a table of ours, so that a rebuild keeps them. */
import { BLANK } from '../block/cells';
import { type BlockContent, tableRows } from '../block/read-block';
import type { BlockCell, WireCell } from '../contract';
import { shiftFormula } from '../table/shift-formula';
import { keptCell } from './kept-cell';

export interface AddedColumns {
  readonly headings: readonly string[];
  /** Cells of a row, by what stands under the key heading; blanks where the row is new. */
  readonly cells: (key: WireCell, sheetRow: number) => readonly BlockCell[];
}

export const NO_ADDED_COLUMNS: AddedColumns = { headings: [], cells: () => [] };

/**
 * Columns with a heading of their own in the heading row of the table that holds `ours`. Rows are found again
 * by the value under `key`.
 */
export function addedColumns(block: BlockContent, ours: readonly string[], key: string): AddedColumns {
  const head = block.values.find((row) =>
    [key, ...ours.slice(0, 2)].every((heading) => row.includes(heading)),
  );
  const headings = (head ?? []).filter(
    (cell): cell is string => typeof cell === 'string' && cell !== '' && !ours.includes(cell),
  );
  if (headings.length === 0) return NO_ADDED_COLUMNS;
  const rows = new Map((tableRows(block, [key, ...headings]) ?? []).map((row) => [row.value(key), row]));
  return {
    headings,
    cells: (name, sheetRow) => {
      const row = rows.get(name);
      if (!row) return headings.map(() => BLANK);
      return headings.map((heading) => {
        const formula = shiftFormula(row.formula(heading), sheetRow - row.sheetRow);
        return keptCell(row.value(heading), formula);
      });
    },
  };
}
