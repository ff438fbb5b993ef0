import type { EngineZone } from '../engine/engine';

/** Rectangles that cover exactly these cells: runs of a column, joined to the right. */
export function zonesOfCells(cells: readonly { row: number; column: number }[]): EngineZone[] {
  const sorted = [...cells].sort((one, other) => one.column - other.column || one.row - other.row);
  const runs: EngineZone[] = [];
  for (const { row, column } of sorted) {
    const last = runs.at(-1);
    if (last?.left === column && last.bottom === row - 1) last.bottom = row;
    else runs.push({ top: row, bottom: row, left: column, right: column });
  }
  const zones: EngineZone[] = [];
  for (const run of runs) {
    const left = zones.find(
      ({ top, bottom, right }) => top === run.top && bottom === run.bottom && right === run.left - 1,
    );
    if (left) left.right = run.right;
    else zones.push(run);
  }
  return zones;
}
