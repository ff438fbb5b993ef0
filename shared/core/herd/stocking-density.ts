/**
 * Animals on a unit of ground now, or liveweight on it where a weight is given.
 *
 *   head ÷ area, or head × weight ÷ area
 *
 * In the units of the inputs. Source: definition of stock density (stockDensityTerm).
 */
export function stockingDensity(head: number, area: number, weight: number | undefined): number {
  return (head * (weight ?? 1)) / area;
}
