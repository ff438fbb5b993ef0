import type { UnitSystem } from '../../units/units';

/** Liveweight of one animal unit. US: nrcsManureUnit. Metric: bmelLivestockUnit. Published. */
const UNIT_KG = { US: 1000 * 0.45359237, metric: 500 } as const satisfies Record<UnitSystem, number>;

/**
 * Animal units by liveweight.
 *
 *   head × weight ÷ 1000 lb, or ÷ 500 kg
 *
 * Source: nrcsManureUnit, bmelLivestockUnit. Not the forage animal unit, which speaks of stock that live on forage.
 */
export function animalUnits(head: number, weightKg: number, system: UnitSystem): number {
  return (head * weightKg) / UNIT_KG[system];
}
