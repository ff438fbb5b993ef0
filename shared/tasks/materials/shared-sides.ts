import type { ListLayout } from './layout';

/** A side that two paddocks of the list have in common, counted in the row of the later one. */
export interface SharedSide {
  readonly earlier: number;
  readonly later: number;
}

/**
 * Which paddocks of a list share a side: those that the list says adjoin; where the list says nothing about any,
 * each and the next one. A paddock of which only the fence length is known shares nothing, because it has no side
 * to compare. Each pair comes once, in the order of the later paddock.
 */
export function sharedSides({ paddocks, touching }: ListLayout): readonly SharedSide[] {
  if (touching === 'alone') return [];
  const known = paddocks.some(({ adjoins }) => adjoins !== undefined);
  const sides: SharedSide[] = [];
  paddocks.forEach((paddock, later) => {
    if (!isRectangle(paddock)) return;
    for (let earlier = 0; earlier < later; earlier++) {
      const other = paddocks[earlier];
      if (!other || !isRectangle(other)) continue;
      const touches = known
        ? paddock.adjoins?.includes(earlier) || other.adjoins?.includes(later)
        : earlier === later - 1;
      if (touches) sides.push({ earlier, later });
    }
  });
  return sides;
}

export function isRectangle(paddock: { widthMeters?: number; lengthMeters?: number }): boolean {
  return paddock.widthMeters !== undefined && paddock.lengthMeters !== undefined;
}

/**
 * Corners at which several paddocks meet on all sides, so that taking every shared side's two end posts off once
 * takes that corner off wholly. By Euler's formula they are the closed rounds of the "adjoins" graph:
 * pairs − paddocks + separate groups of paddocks.
 */
export function crossings(paddocks: number, sides: readonly SharedSide[]): number {
  const group = Array.from({ length: paddocks }, (_, i) => i);
  const root = (i: number): number => (group[i] === i ? i : root(group[i] ?? i));
  for (const { earlier, later } of sides) group[root(later)] = root(earlier);
  const separate = group.filter((_, i) => root(i) === i).length;
  return sides.length - paddocks + separate;
}
