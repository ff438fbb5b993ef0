import { isRecordId } from '../../block/compose-block';
import type { PointingCell } from '../../block/pointing-cells';
import type { BlockContent } from '../../block/read-block';

/**
 * Cells of the grower's that mean something else once the block is written anew with rows of these ids: the first or
 * the last row that each refers to holds something else then. The first row stays, as the corner of a block never
 * moves. A range over all records has to hold all of the new ones and nothing else, one that ends below the block all
 * of the new block.
 */
export function astrayCells(
  pointing: readonly PointingCell[],
  { info, memory }: BlockContent,
  ids: readonly string[],
): readonly string[] {
  const before = memory?.rows.map((row) => row?.id) ?? [];
  const first = before.findIndex(isRecordId);
  const last = before.map(isRecordId).lastIndexOf(true);
  const isSameLength = ids.map(isRecordId).lastIndexOf(true) === last;
  const stays = (sheetRow: number): boolean => {
    const at = sheetRow - info.row;
    return at === 0 || (before[at] !== undefined && before[at] === ids[at]);
  };
  const isAstray = ({ firstRow, lastRow, reachesRow }: PointingCell): boolean => {
    const endsBelow = reachesRow >= info.row + info.rows;
    if (endsBelow && reachesRow < info.row + ids.length - 1) return true;
    const holdsRecords = first >= 0 && firstRow <= info.row + first && lastRow >= info.row + last;
    if (holdsRecords) return !endsBelow && !isSameLength;
    return !stays(firstRow) || (!endsBelow && !stays(lastRow));
  };
  return [...new Set(pointing.filter(isAstray).map(({ cell }) => cell))];
}
