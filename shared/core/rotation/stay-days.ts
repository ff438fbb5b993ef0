/**
 * Days until a growing group has put its limit of liveweight-days on the ground.
 *
 *   head × (weight × t + gain × t² ÷ 2) = limit × area, solved for t
 *
 *   days = 2 d ÷ (1 + √(1 + 2 d × gain ÷ weight)), d = limit × area ÷ head ÷ weight
 *
 * In the units of the inputs. This form of the root keeps its digits where the gain is small or nothing.
 * Source: definition; the limit is the farm's own (see groundLimit).
 */
export function stayDays(
  area: number,
  head: number,
  weight: number,
  limit: number,
  dailyGain: number,
): number {
  const daysAtThatWeight = (limit * area) / head / weight;
  return (2 * daysAtThatWeight) / (1 + Math.sqrt(1 + 2 * daysAtThatWeight * (dailyGain / weight)));
}
