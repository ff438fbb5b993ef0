import type { BlockCell, BlockRule, BlockStyle } from '../contract';

/** A block ready to be written: the part of WriteBlock that a task composes. */
export interface ComposedBlock {
  readonly cells: BlockCell[][];
  readonly styles: BlockStyle[][];
  readonly rules: BlockRule[];
  readonly widths: number[];
  /** What rows are called from one write to the next, where their first cell does not say it. */
  readonly ids?: readonly (string | undefined)[];
  /** Rows are records: what was typed goes where their ids are, and nothing is carried along in any other way. */
  readonly records?: true;
  /** Cells (row, column) that hold what the grower typed: still the grower's the next time. */
  readonly typed?: readonly (readonly [row: number, column: number])[];
  /** Rows at the top of a new tab to freeze. */
  readonly freezeRows?: number;
  readonly freezeColumns?: number;
}
