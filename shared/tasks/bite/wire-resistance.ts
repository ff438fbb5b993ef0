import { wireOhms } from '../../core/energizer/wire-ohms';
import type { Strand } from './wires';

/**
 * Resistance of a wire of several kinds of strand side by side, in Ω/m: 1 ÷ Σ (1 ÷ Rᵢ).
 * Holds where all strands touch all along. Source: resistors in parallel; WIRE_OHMS for each kind.
 */
export function wireResistance(strands: readonly Strand[]): number {
  const conductance = strands.reduce(
    (sum, { metal, diameterMeters, wires }) => sum + 1 / wireOhms(metal, diameterMeters, wires),
    0,
  );
  return 1 / conductance;
}
