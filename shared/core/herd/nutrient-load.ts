import { DROPPED_PER_1000_A_DAY } from '../../tables/manure-nutrients';
import { refuseUnlessGrowing } from './growing-weights';

const INSTEAD = 'for sows, boars and sucklings take an adviser’s figure or your country’s table';

/**
 * Nitrogen, phosphorus and potassium (elemental) dropped on the ground in a stay, in kg/m².
 *
 *   head × weight × days ÷ area × (0.54, 0.09, 0.24) ÷ 1000
 *
 * Growing and finishing pigs of 5 to 160 kg, others are refused; spread evenly; before any loss to the air. An average
 * over a whole growth: it runs high for heavy pigs. Source: awmfh, from memory.
 */
export function nutrientLoad(
  head: number,
  weightKg: number,
  days: number,
  areaSquareMeters: number,
): readonly number[] {
  refuseUnlessGrowing('weight', weightKg, INSTEAD);
  const load = (head * weightKg * days) / areaSquareMeters / 1000;
  const { nitrogen, phosphorus, potassium } = DROPPED_PER_1000_A_DAY;
  return [load * nitrogen, load * phosphorus, load * potassium];
}
