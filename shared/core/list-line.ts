import type { Quantity } from '../units/units';

/** One line of a list result: its amount is shown in the grower's unit, with the unit beside it. */
export interface ListLine {
  readonly item: string;
  /** In inside units where there is a quantity. */
  readonly amount: number;
  readonly quantity?: Quantity;
  readonly unit?: string;
}
