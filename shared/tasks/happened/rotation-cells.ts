/** Cells of the rotation table that are typed into when something has happened. */
import { blank } from '../../block/cells';
import { DAY_FORMAT } from '../../block/day-format';
import type { BlockCell, CellChange } from '../../contract';
import type { ColumnKey } from '../../table/columns';
import { columnsOf } from '../../table/move-rows';
import { keptCell } from '../kept-cell';
import type { StandingRotation } from '../rotation/rotation-standing';

/** How a cell looks that is blank again. */
const FORMATS: Partial<Record<ColumnKey, string>> = { movedIn: DAY_FORMAT, days: '0', cover: '0%' };

/** `row`: in the sheet. Undefined where the grower has taken the column out. */
export function rotationCell(
  { block }: StandingRotation,
  row: number,
  key: ColumnKey,
  after: BlockCell,
): CellChange | undefined {
  const { info } = block;
  const column = columnsOf(block).get(key);
  if (column === undefined) return undefined;
  const [value, formula] = [block.values[row - info.row]?.[column], block.formulas[row - info.row]?.[column]];
  const standing = keptCell(value ?? '', formula ?? '');
  const format = FORMATS[key];
  const before = standing.k === 'blank' && format ? blank(format) : standing;
  return { tab: info.tab, row, column: info.column + column, before, after };
}
