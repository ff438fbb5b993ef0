import type { PointingCell } from '../block/pointing-cells';
import type { BlockContent } from '../block/read-block';
import { isMoveId } from './move-rows';

/**
 * Cells of the grower's that point at another move or setting once the table is written anew with rows of these ids:
 * the first or the last row that each refers to will hold something else. A range over all moves has to hold all of the
 * new ones and nothing else.
 */
export function astrayMoves(
  pointing: readonly PointingCell[],
  { info, memory }: BlockContent,
  ids: readonly (string | undefined)[],
): readonly string[] {
  const before = memory?.rows.map((row) => row?.id) ?? [];
  const first = before.findIndex(isMoveId);
  const last = before.map(isMoveId).lastIndexOf(true);
  const isSameLength = ids.map(isMoveId).lastIndexOf(true) === last;
  const stays = (sheetRow: number): boolean => {
    const at = sheetRow - info.row;
    return before[at] !== undefined && before[at] === ids[at];
  };
  const isAstray = ({ firstRow, lastRow, reachesRow }: PointingCell): boolean => {
    const holdsAll = firstRow <= info.row + first && lastRow >= info.row + last;
    if (holdsAll) return !isSameLength && reachesRow < info.row + info.rows;
    return !stays(firstRow) || !stays(lastRow);
  };
  return [...new Set(pointing.filter(isAstray).map(({ cell }) => cell))];
}
