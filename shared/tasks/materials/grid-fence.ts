import { fenceGrid } from '../../core/fence/fence-grid';
import { gapsOnSide } from '../../core/fence/gaps-on-side';
import { postCount } from '../../core/fence/post-count';
import { ceilForgiving } from '../../units/ceil-forgiving';
import type { FenceCount, GridLayout, LayoutFence, PieceLengths } from './layout';

/**
 * Fence of a grid of equal paddocks.
 *
 *   posts = nodes + (rows + 1) × columns × (⌈width ÷ spacing⌉ − 1) + (columns + 1) × rows × (⌈length ÷ spacing⌉ − 1)
 *   nodes = (rows + 1) × (columns + 1), every one a corner or a junction
 *   nets = Σ over the paddocks, row by row: ⌈(fence round it − sides shared with those before) ÷ net⌉
 *
 * The set is `setPaddocks` paddocks that follow one another along a row (along the column where there is only one),
 * counted where it takes most fence: on the way back, with the last and the first paddock apart. Source: counting.
 */
export function gridFence(grid: GridLayout, pieces: PieceLengths, setPaddocks: number): LayoutFence {
  const { rows, columns, widthMeters: width, lengthMeters: length } = grid;
  const [outerMeters = 0, dividingMeters = 0, meters = 0] = fenceGrid(rows, columns, width, length);
  const acrossGaps = gapsOnSide(width, pieces.postSpacing);
  const downGaps = gapsOnSide(length, pieces.postSpacing);
  const corners = (rows + 1) * (columns + 1);
  const posts = corners + (rows + 1) * columns * (acrossGaps - 1) + (columns + 1) * rows * (downGaps - 1);
  const ring = 2 * (width + length);
  const netsFor = (line: number): number => ceilForgiving(line / pieces.netLength);
  const nets =
    netsFor(ring) +
    (columns - 1) * netsFor(ring - length) +
    (rows - 1) * netsFor(ring - width) +
    (rows - 1) * (columns - 1) * netsFor(width + length);
  const all: FenceCount = { meters, posts, nets, corners };
  return {
    outerMeters,
    dividingMeters,
    all,
    longest: [],
    set: setPaddocks >= rows * columns ? all : setOfPaddocks(grid, pieces, setPaddocks),
  };
}

function setOfPaddocks(grid: GridLayout, pieces: PieceLengths, paddocks: number): FenceCount {
  const { postSpacing: spacing, netLength } = pieces;
  const shared = sharedInLine(grid);
  const joints = jointsOfSet(paddocks);
  const ring = 2 * (grid.widthMeters + grid.lengthMeters);
  return {
    meters: paddocks * ring - joints * shared,
    nets:
      (paddocks - joints) * ceilForgiving(ring / netLength) +
      joints * ceilForgiving((ring - shared) / netLength),
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
