/**
 * Days until a growing group has put its limit of liveweight-days on the ground.
 *
 *   head × (weight × t + gain × t² ÷ 2) = limit × area, solved for t
 *
 * In the units of the inputs. The root is taken in the form that keeps its digits where the gain is small.
 * Source: definition; the limit is the farm's own (see groundLimit).
 */
export function stayDays(
  area: number,
  head: number,
  weight: number,
  limit: number,
  dailyGain: number,
): number {
  const perHead = (limit * area) / head;
  return (2 * perHead) / (weight + Math.hypot(weight, Math.sqrt(2 * dailyGain * perHead)));
}
