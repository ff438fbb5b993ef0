import type { AnyEntry, ListLine } from '../catalogue/define';

export type Outcome = number | readonly number[] | readonly ListLine[];
type Run = (...values: unknown[]) => Outcome;

/**
 * Runs a core function with its values. Written out by count, because spreading an array costs more than most
 * of our arithmetic, ten thousand times over.
 */
export function runWith(run: AnyEntry['run'], values: readonly unknown[]): Outcome {
  const core = run as Run;
  switch (values.length) {
    case 2:
      return core(values[0], values[1]);
    case 3:
      return core(values[0], values[1], values[2]);
    case 4:
      return core(values[0], values[1], values[2], values[3]);
    case 5:
      return core(values[0], values[1], values[2], values[3], values[4]);
    default:
      return core(...values);
  }
}
