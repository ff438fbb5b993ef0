import type { PointingCell } from '../block/pointing-cells';
import type { BlockInfo } from '../contract';
import type { OldRow } from './model';
import type { TableRow } from './table-rows';

interface OldMoves {
  readonly info: BlockInfo;
  /** Rows above the headings. */
  readonly headRows: number;
  readonly rows: readonly OldRow[];
  /** Texts of the block's first column from the top: the settings below the moves go by them. */
  readonly firstColumn: readonly string[];
}

interface NewMoves {
  readonly rows: readonly TableRow[];
  readonly firstColumn: readonly string[];
}

/**
 * Cells of the grower's that point at another move or setting once the table is `next`: the first or the last row that
 * each refers to will hold something else. A range over all moves has to hold all of the new ones and nothing else.
 */
export function astrayMoves(
  pointing: readonly PointingCell[],
  old: OldMoves,
  next: NewMoves,
): readonly string[] {
  // Headings and the row of the cell functions stay.
  const firstMove = old.info.row + old.headRows + 2;
  const oldRows = old.rows.map(({ sheetRow }) => sheetRow);
  const oldLast = Math.max(firstMove, ...oldRows);
  const isSameLength = firstMove + next.rows.length - 1 === oldLast;
  const stays = (sheetRow: number): boolean => {
    if (sheetRow > oldLast) return isSameLength && hasSameLabel(sheetRow - old.info.row);
    return sheetRow < firstMove || next.rows[sheetRow - firstMove]?.kept?.sheetRow === sheetRow;
  };
  const hasSameLabel = (at: number): boolean => old.firstColumn[at] === next.firstColumn[at];
  const isAstray = ({ firstRow, lastRow, reachesRow }: PointingCell): boolean => {
    if (lastRow < firstMove) return false;
    const holdsAll = firstRow <= firstMove && lastRow >= oldLast;
    const blockEnd = old.info.row + old.info.rows - 1;
    if (holdsAll) return !isSameLength && reachesRow <= blockEnd;
    return !stays(firstRow) || !stays(lastRow);
  };
  return [...new Set(pointing.filter(isAstray).map(({ cell }) => cell))];
}
