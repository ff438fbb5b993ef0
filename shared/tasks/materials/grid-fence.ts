import { fenceGrid } from '../../core/fence/fence-grid';
import { gapsOnSide } from '../../core/fence/gaps-on-side';
import { postCount } from '../../core/fence/post-count';
import type { FenceCount, GridLayout, LayoutFence } from './layout';

/**
 * Fence of a grid of equal paddocks.
 *
 *   posts = nodes + (rows + 1) × columns × (⌈width ÷ spacing⌉ − 1) + (columns + 1) × rows × (⌈length ÷ spacing⌉ − 1)
 *   nodes = (rows + 1) × (columns + 1), every one a corner or a junction
 *
 * The set is `setPaddocks` paddocks that follow one another along a row (along the column where there is only one),
 * counted where it takes most fence: on the way back, with the last and the first paddock apart. Source: counting.
 */
export function gridFence(grid: GridLayout, postSpacingMeters: number, setPaddocks: number): LayoutFence {
  const { rows, columns, widthMeters: width, lengthMeters: length } = grid;
  const [outerMeters = 0, dividingMeters = 0, meters = 0] = fenceGrid(rows, columns, width, length);
  const acrossGaps = gapsOnSide(width, postSpacingMeters);
  const downGaps = gapsOnSide(length, postSpacingMeters);
  const corners = (rows + 1) * (columns + 1);
  const posts = corners + (rows + 1) * columns * (acrossGaps - 1) + (columns + 1) * rows * (downGaps - 1);
  const all: FenceCount = { meters, posts, corners };
  return {
    outerMeters,
    dividingMeters,
    all,
    set: setPaddocks >= rows * columns ? all : setOfPaddocks(grid, postSpacingMeters, setPaddocks),
  };
}

function setOfPaddocks(grid: GridLayout, spacing: number, paddocks: number): FenceCount {
  const shared = sharedInLine(grid);
  const joints = jointsOfSet(paddocks);
  return {
    meters: paddocks * 2 * (grid.widthMeters + grid.lengthMeters) - joints * shared,
    posts:
      paddocks * postCount(grid.widthMeters, grid.lengthMeters, spacing) -
      joints * (gapsOnSide(shared, spacing) + 1),
    corners: 4 * paddocks - 2 * joints,
  };
}

/** Shared sides in a set where it takes most fence: on the way back from the last paddock to the first one joint is missing. */
export function jointsOfSet(paddocks: number): number {
  return Math.max(0, paddocks - 2);
}

/** The side that a paddock shares with the next one. */
export function sharedInLine(grid: GridLayout): number {
  return grid.columns > 1 ? grid.lengthMeters : grid.widthMeters;
}
