/** Floating error that a count of things forgives: the contract's 1e-9, relative for counts above one. */
const FORGIVEN = 1e-9;

/**
 * Rounds a count of things you can hold up to a whole number, forgiving floating error: 30.0000000001 posts
 * are 30 posts.
 */
export function ceilForgiving(count: number): number {
  const whole = Math.ceil(count - FORGIVEN * Math.max(1, Math.abs(count)));
  return whole === 0 ? 0 : whole; // Math.ceil gives −0 just below zero
}
