/**
 * Electrical resistivity of wire metals at 20 °C, in Ω·m.
 *
 * - Copper (annealed), aluminium, mild steel (1010): resistivityTables, published.
 * - High-tensile steel: from memory, worked back from about 35 Ω/km for 2.5 mm fence wire; a trade page has 56 Ω a mile.
 * - Stainless (304): stainless304, published. An older table has 6.9e-7 for 18-8.
 */
export const RESISTIVITY_OHM_METERS = {
  copper: 1.724e-8,
  aluminium: 2.82e-8,
  aluminum: 2.82e-8,
  'mild steel': 1.43e-7,
  'high-tensile steel': 1.73e-7,
  stainless: 7.2e-7,
} as const;

export type Metal = keyof typeof RESISTIVITY_OHM_METERS;
