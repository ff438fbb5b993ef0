import type { BlockInfo } from '../contract';

/** Whether a cell, by row and column from 1, stands in an area of its own tab. */
export function isInArea(area: BlockInfo, row: number, column: number): boolean {
  return (
    row >= area.row &&
    row < area.row + area.rows &&
    column >= area.column &&
    column < area.column + area.columns
  );
}
