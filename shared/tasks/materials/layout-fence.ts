import { gridFence } from './grid-fence';
import type { Layout, LayoutFence, PieceLengths } from './layout';
import { listFence } from './list-fence';

/** Fence of any layout. */
export function layoutFence(layout: Layout, pieces: PieceLengths, setPaddocks: number): LayoutFence {
  return layout.kind === 'grid'
    ? gridFence(layout, pieces, setPaddocks)
    : listFence(layout, pieces, setPaddocks);
}
