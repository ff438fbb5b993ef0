/** What the layout's part of the block hands on: fence and posts as formulas. */
import type { ListSource, PaddockList } from '../../lists/model';
import type { UnitSystem } from '../../units/units';
import type { Draft } from '../draft-block';

export const LAYOUT_TITLE = 'The layout';

/** Formula bodies, without "=". Lengths in the block's unit. */
export interface FenceFormulas {
  readonly outer: string;
  readonly dividing: string;
  readonly all: FenceFormula;
  readonly set: FenceFormula;
}
export interface FenceFormula {
  readonly length: string;
  readonly posts: string;
  readonly corners: string;
}

/** Addresses that the layout's formulas hang on. */
export interface LayoutOn {
  readonly draft: Draft;
  readonly units: UnitSystem;
  readonly postSpacing: string;
  readonly shape: string;
  /** The grower's list, to look sides up there. */
  readonly list: ListSource<PaddockList> | undefined;
  readonly setPaddocks: number;
}
