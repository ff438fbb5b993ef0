/** Heights of wires against each other and against the single wire of the training pen. */
import { expect, it } from 'vitest';
import { cell, rowOf } from '../cell';

// Common practice, no source: a lowest wire above the noses is gone under. The single wire is this sheet's own judgement.
it('the single wire of TRAINING_PEN, and no lowest wire above it', () => {
  for (let pounds = 5; pounds <= 900; pounds += 5) {
    const [single = 0] = rowOf('STRAND_HEIGHTS', pounds, 1);
    const lines = cell('TRAINING_PEN', 8, pounds) as (string | number)[][];
    expect(Number(lines.find(([item]) => item === 'height of a single wire')?.[1])).toBeCloseTo(single, 9);
    for (const strands of [2, 3]) {
      const heights = rowOf('STRAND_HEIGHTS', pounds, strands);
      expect(heights).toHaveLength(strands);
      expect(heights[0]).toBeLessThanOrEqual(single + 1e-9);
      expect([...heights].sort((a, b) => a - b)).toEqual([...heights]);
    }
  }
});
