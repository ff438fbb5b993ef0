/** Shortest time of one run in milliseconds, after warming up. Results are kept so that nothing is optimised away. */
let kept: unknown;

export function shortestMilliseconds(run: () => unknown, runs = 101): number {
  for (let i = 0; i < runs; i++) kept = run();
  let shortest = Infinity;
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    kept = run();
    shortest = Math.min(shortest, performance.now() - start);
  }
  return shortest;
}

export function lastResult(): unknown {
  return kept;
}
