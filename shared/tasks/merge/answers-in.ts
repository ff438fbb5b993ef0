import { alignColumns } from '../../block/align-columns';
import { ANSWER_MARK } from '../../block/memory';
import type { BlockContent } from '../../block/read-block';

/** A call of a cell function of ours, which spills. */
export const CALL = /^=[A-Z]+_[A-Z_]+\(/i;
/** What it shows where it has no room for its answer: in Google Sheets the first, in the preview the second. */
const NO_ROOM: readonly unknown[] = ['#REF!', '#SPILL!'];

/**
 * Whether what stands in the room for an answer is the answer: its function stands above it in its column, or left of
 * the room's first row, and has room. Else somebody typed there.
 */
export function answersIn(block: BlockContent): (row: number, column: number) => boolean {
  const { values, formulas, memory } = block;
  const columns = alignColumns(block);
  // A row that was put in is room where the row below it is, a column where the one right of it is.
  const isRoom = (r: number, c: number): boolean => {
    const row = memory?.rows.slice(Math.max(r, 0)).find((one) => one !== undefined);
    const written = columns.slice(Math.max(c, 0)).find((one) => one !== undefined);
    return r >= 0 && c >= 0 && row?.marks[written ?? -1] === ANSWER_MARK;
  };
  const answers = (r: number, c: number): boolean =>
    CALL.test(formulas[r]?.[c] ?? '') && !NO_ROOM.includes(values[r]?.[c]);
  return (row, column) => {
    if (!isRoom(row, column)) return false;
    let top = row;
    while (isRoom(top - 1, column)) top--;
    let first = column;
    while (isRoom(top, first - 1)) first--;
    return answers(top - 1, column) || answers(top, first - 1);
  };
}
