import type { BlockContent } from '../block/read-block';
import type { KeptCell } from './model';

/** A cell of the block as it stands, by row and column from 0; blank where there is no such column. */
export function keptAt(block: BlockContent, row: number, column: number | undefined): KeptCell {
  return {
    value: column === undefined ? '' : (block.values[row]?.[column] ?? ''),
    formula: column === undefined ? '' : (block.formulas[row]?.[column] ?? ''),
    sheetRow: block.info.row + row,
    ...(column !== undefined && { from: [row, column] as const }),
  };
}
