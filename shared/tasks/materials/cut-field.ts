import type { GridLayout } from './layout';

export type Cut = 'strips' | 'least fence';

/**
 * One rectangular field cut into `paddocks` equal paddocks.
 *
 * "strips" cuts across the width, every paddock as long as the field. "least fence" takes the rows and columns
 * (rows × columns = paddocks) with the least dividing fence; of equals the one with fewer rows.
 * Source: plane geometry.
 */
export function cutField(widthMeters: number, lengthMeters: number, paddocks: number, cut: Cut): GridLayout {
  const grid = (rows: number): GridLayout => ({
    kind: 'grid',
    rows,
    columns: paddocks / rows,
    widthMeters: (widthMeters * rows) / paddocks,
    lengthMeters: lengthMeters / rows,
  });
  if (cut === 'strips') return grid(1);
  const dividing = ({ rows, columns }: GridLayout): number =>
    (rows - 1) * widthMeters + (columns - 1) * lengthMeters;
  let best = grid(1);
  for (let rows = 2; rows <= paddocks; rows++) {
    if (paddocks % rows === 0 && dividing(grid(rows)) < dividing(best)) best = grid(rows);
  }
  return best;
}
