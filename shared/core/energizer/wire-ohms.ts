import { type Metal, RESISTIVITY_OHM_METERS } from '../../tables/resistivity';

/**
 * Resistance of a wire per metre, in Ω/m, at 20 °C.
 *
 *   R = ρ ÷ (π ÷ 4 × diameter²) ÷ wires
 *
 * `wires` equal wires tied together at both ends share the current. Holds for solid round wire.
 * Source: definition of resistivity; ρ by metal from the table.
 */
export function wireOhms(metal: Metal, diameterMeters: number, wires: number): number {
  const areaSquareMeters = (Math.PI / 4) * diameterMeters ** 2;
  return RESISTIVITY_OHM_METERS[metal] / areaSquareMeters / wires;
}
