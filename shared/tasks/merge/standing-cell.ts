import { isMemory } from '../../block/memory';
import type { WireCell } from '../../contract';
import { NOT_WRITTEN } from '../today/tick-words';

/** A cell of a block as it stands, by row and column from 0. */
export interface StandingCell {
  readonly row: number;
  readonly column: number;
  readonly value: WireCell;
  readonly formula: string;
}

/** A cell that stays, with the row and column that it has then. */
export type Stay = readonly [cell: StandingCell, row: number, column: number];

/** Whether there is nothing in it to keep. */
export function isNothing({ value, formula }: StandingCell): boolean {
  // A formula that lost what it pointed to has nothing left to keep.
  const isSaid = typeof value === 'string' && value.startsWith(NOT_WRITTEN);
  return (value === '' && formula === '') || formula.includes('#REF') || isMemory(value) || isSaid;
}
