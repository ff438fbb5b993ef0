/**
 * Fence round a rectangle, in the unit of its sides.
 *
 *   length = 2 × (width + length) × strands
 *
 * Source: plane geometry.
 */
export function fenceLength(width: number, length: number, strands: number): number {
  return 2 * (width + length) * strands;
}
