/** Heights of wires against the nose height of the training pen. */
import { expect, it } from 'vitest';
import { cell, rowOf } from '../cell';

// Common practice, no source; the nose height is this sheet's own judgement, the same in both functions.
it('never stands above the noses of TRAINING_PEN', () => {
  for (let pounds = 5; pounds <= 900; pounds += 5) {
    const [single = 0] = rowOf('STRAND_HEIGHTS', pounds, 1);
    const lines = cell('TRAINING_PEN', 8, pounds) as (string | number)[][];
    const nose = Number(lines.find(([item]) => item === 'highest wire')?.[1]);
    expect(single).toBeLessThanOrEqual(nose + 1e-9);
    for (const strands of [2, 3]) {
      const heights = rowOf('STRAND_HEIGHTS', pounds, strands);
      expect(heights).toHaveLength(strands);
      expect(heights[0]).toBeLessThanOrEqual(nose + 1e-9);
      expect([...heights].sort((a, b) => a - b)).toEqual([...heights]);
    }
  }
});
