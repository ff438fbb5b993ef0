/**
 * Work done piece by piece: each step takes a few milliseconds and tells the share of the work that is done, 0 to 1, as
 * far as it can be foreseen. Whoever runs it may rest between two steps, show the share, or stop for good.
 */
export type Steps<T> = Generator<number, T, void>;

/** All of it at once. */
export function finish<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** A part of larger work: its shares run from `from` to `to` and never fall. */
export function* partOf<T>(steps: Steps<T>, from: number, to: number): Steps<T> {
  let share = 0;
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    share = Math.max(share, Math.min(1, step.value));
    yield from + (to - from) * share;
  }
}
