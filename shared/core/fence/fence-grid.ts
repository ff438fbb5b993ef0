/**
 * Fence for a grid of equal paddocks, shared sides counted once, in the unit of the sides.
 *
 *   outer    = 2 × (rows × length + columns × width)
 *   dividing = (rows − 1) × columns × width + (columns − 1) × rows × length
 *
 * Returns [outer, dividing, both]. Source: plane geometry.
 */
export function fenceGrid(rows: number, columns: number, width: number, length: number): readonly number[] {
  const outer = 2 * (rows * length + columns * width);
  const dividing = (rows - 1) * columns * width + (columns - 1) * rows * length;
  return [outer, dividing, outer + dividing];
}
