import type { PlanPaddock } from './model';

/**
 * Whether a move from one paddock to another is a stride: they do not adjoin, and for at least one of them
 * the adjoining paddocks are known. One of the two naming the other is enough to adjoin.
 */
export function isStride(paddocks: readonly PlanPaddock[], left: number, entered: number): boolean {
  const a = paddocks[left]?.adjoins;
  const b = paddocks[entered]?.adjoins;
  if (!a && !b) return false;
  return !(a?.includes(entered) || b?.includes(left));
}
