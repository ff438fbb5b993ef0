import { Refusal } from '../refusals';
import type { UnitSystem } from '../units/units';

/** The sentence for a cell. A fault of ours is said as such, and still names the function. */
export function sentenceFor(error: unknown, functionName: string, system: UnitSystem): string {
  if (error instanceof Refusal) return error.sentence(functionName, system);
  const detail = error instanceof Error ? error.message : String(error);
  return `${functionName}: a fault in the function itself, please report it (${detail})`;
}
