import { gridFence } from './grid-fence';
import type { Layout, LayoutFence } from './layout';
import { listFence } from './list-fence';

/** Fence of any layout. */
export function layoutFence(layout: Layout, postSpacingMeters: number, setPaddocks: number): LayoutFence {
  return layout.kind === 'grid'
    ? gridFence(layout, postSpacingMeters, setPaddocks)
    : listFence(layout, postSpacingMeters, setPaddocks);
}
