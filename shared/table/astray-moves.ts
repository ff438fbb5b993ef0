import type { PointingCell } from '../block/pointing-cells';
import type { BlockInfo } from '../contract';
import type { OldRow } from './model';
import type { TableRow } from './table-rows';

interface OldMoves {
  readonly info: BlockInfo;
  /** Rows above the headings. */
  readonly headRows: number;
  readonly rows: readonly OldRow[];
}

/**
 * Cells of the grower's that point at another move once the table has the moves `rows`: the first or the last move
 * that each refers to will stand in another row. A range over all moves has to hold all of the new ones and nothing else.
 */
export function astrayMoves(
  pointing: readonly PointingCell[],
  old: OldMoves,
  rows: readonly TableRow[],
): readonly string[] {
  // Headings and the row of the cell functions stay.
  const firstMove = old.info.row + old.headRows + 2;
  const oldRows = old.rows.map(({ sheetRow }) => sheetRow);
  const oldLast = Math.max(firstMove, ...oldRows);
  const isSameLength = firstMove + rows.length - 1 === oldLast;
  const stays = (sheetRow: number): boolean =>
    sheetRow < firstMove || rows[sheetRow - firstMove]?.kept?.sheetRow === sheetRow;
  const isAstray = ({ firstRow, lastRow, reachesRow }: PointingCell): boolean => {
    if (lastRow < firstMove) return false;
    if (firstRow > oldLast) return !isSameLength;
    const holdsAll = firstRow <= firstMove && lastRow >= oldLast;
    const blockEnd = old.info.row + old.info.rows - 1;
    if (holdsAll) return !isSameLength && reachesRow <= blockEnd;
    return !stays(firstRow) || !stays(lastRow);
  };
  return [...new Set(pointing.filter(isAstray).map(({ cell }) => cell))];
}
