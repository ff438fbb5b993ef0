export const percent = (share: number): string => `${(100 * share).toFixed(2)} %`;

export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
}

/** Processor milliseconds of this process that some work takes, and what comes of it. */
export function timed<T>(work: () => T): { value: T; ms: number } {
  const before = process.cpuUsage();
  const value = work();
  return { value, ms: process.cpuUsage(before).user / 1000 };
}
