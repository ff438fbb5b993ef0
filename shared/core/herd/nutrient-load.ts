import { DROPPED_PER_1000_A_DAY } from '../../tables/manure-nutrients';

/**
 * Nitrogen, phosphorus and potassium (elemental) dropped on the ground in a stay, in kg/m².
 *
 *   head × weight × days ÷ area × (0.54, 0.09, 0.24) ÷ 1000
 *
 * Growing and finishing pigs, spread evenly; before any loss to the air. Source: awmfh, from memory.
 */
export function nutrientLoad(
  head: number,
  weightKg: number,
  days: number,
  areaSquareMeters: number,
): readonly number[] {
  const load = (head * weightKg * days) / areaSquareMeters / 1000;
  const { nitrogen, phosphorus, potassium } = DROPPED_PER_1000_A_DAY;
  return [load * nitrogen, load * phosphorus, load * potassium];
}
