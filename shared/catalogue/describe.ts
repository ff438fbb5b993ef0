/** Words about a catalogue entry that stubs, README and sidebar share. */
import { QUANTITIES, type Quantity } from '../units/units';
import type { AnyEntry, Param, SourceUse } from './define';

/** "ft or m" for a quantity, the plain unit otherwise, '' where there is none. */
export function unitWords(of: { quantity?: Quantity; unit?: string } | Param): string {
  const { quantity, unit } = of as { quantity?: Quantity; unit?: string };
  if (quantity) return `${QUANTITIES[quantity].US.symbol} or ${QUANTITIES[quantity].metric.symbol}`;
  return unit ?? '';
}

/** The call as people read it: FENCE_LENGTH(width, length, [strands]). */
export function signature(entry: Pick<AnyEntry, 'name' | 'params'>): string {
  const list = entry.params.map((param) => (param.optional ? `[${param.name}]` : param.name));
  return `${entry.name}(${list.join(', ')})`;
}

/** How sure a figure is, and whether a published check would catch it wrong. */
export function certaintyOf({ certainty, unguarded }: SourceUse): string {
  return unguarded ? `${certainty}, no published check` : certainty;
}
