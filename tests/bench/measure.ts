/** Shortest time of one run in milliseconds, after warming up. Results are kept so that nothing is optimised away. */
let kept: unknown;

export function shortestMilliseconds(run: () => unknown, runs = 41): number {
  for (let i = 0; i < runs; i++) kept = run();
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    kept = run();
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return times[0] ?? Number.NaN;
}

export function lastResult(): unknown {
  return kept;
}
