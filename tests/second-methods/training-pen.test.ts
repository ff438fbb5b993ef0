/**
 * Common practice, no source: a training pen whose every side is one 16 ft panel takes 4 panels and 12 posts when the
 * gaps are a little over 5 ft; 3 clips a post; one offset insulator a post.
 */
import { describe, expect, it } from 'vitest';
import { cell } from '../cell';

const linesOf = (...args: readonly unknown[]): Map<unknown, readonly unknown[]> =>
  new Map(
    (cell('TRAINING_PEN', ...args) as unknown[][]).map(([item, amount, unit]) => [item, [amount, unit]]),
  );

describe('a pen of one panel a side', () => {
  it.each([5.1, 5.34, 5.5, 6, undefined])(
    'gaps of at most %s ft: 4 panels, 12 posts, 36 clips',
    (spacing) => {
      const lines = linesOf(6, 60, 16, spacing);
      expect(lines.get('panels')).toEqual([4, 'panels']);
      expect(lines.get('posts')?.[0]).toBe(spacing === 5.1 ? 16 : 12);
      expect(lines.get('clips')?.[0]).toBe(3 * Number(lines.get('posts')?.[0]));
      expect(lines.get('offset insulators')?.[0]).toBe(lines.get('posts')?.[0]);
    },
  );

  it('is the same in metres', () => {
    const lines = linesOf(6, 27, undefined, undefined, undefined, 'metric');
    expect(lines.get('panels')?.[0]).toBe(4);
    expect(lines.get('posts')?.[0]).toBe(12);
    expect(lines.get('inside length of a side')?.[1]).toBe('m');
    expect(Number(lines.get('inside length of a side')?.[0])).toBeCloseTo(4.9, 12);
  });

  it('takes its posts as POST_COUNT does, and its wire as FENCE_LENGTH does', () => {
    for (const head of [3, 12, 30, 75]) {
      const lines = linesOf(head, 120);
      const side = lines.get('inside length of a side')?.[0];
      expect(lines.get('posts')?.[0]).toBe(cell('POST_COUNT', side, side, 16 / 3));
      expect(lines.get('live wire')?.[0]).toBeCloseTo(Number(cell('FENCE_LENGTH', side, side)), 9);
      expect(Number(side) ** 2).toBeGreaterThanOrEqual(head * 25 - 1e-6);
    }
  });
});
