import type { BlockCell, BlockRule, BlockStyle } from '../contract';

/** A block ready to be written: the part of WriteBlock that a task composes. */
export interface ComposedBlock {
  readonly cells: BlockCell[][];
  readonly styles: BlockStyle[][];
  readonly rules: BlockRule[];
  readonly widths: number[];
}
