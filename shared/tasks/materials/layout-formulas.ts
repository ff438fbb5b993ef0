/** What the layout's part of the block hands on: fence and posts as formulas. */
import type { ListSource, PaddockList } from '../../lists/model';
import type { UnitSystem } from '../../units/units';
import type { Draft } from '../draft-block';
import type { FenceType } from './fence-types';

export const LAYOUT_TITLE = 'The layout';

/** Formula bodies, without "=". Lengths in the block's unit. */
export interface FenceFormulas {
  readonly outer: string;
  readonly dividing: string;
  readonly all: FenceFormula;
  readonly set: FenceFormula;
  /** The set goes by the moves of the rotation. */
  readonly inTurn?: boolean;
}
export interface FenceFormula {
  readonly length: string;
  /** Posts or nets, as the kind of fence is counted. */
  readonly pieces: string;
  readonly corners: string;
}

/** Addresses that the layout's formulas hang on. */
export interface LayoutOn {
  readonly draft: Draft;
  readonly units: UnitSystem;
  readonly pieces: FenceType['pieces'];
  /** Of the piece: the gap between posts, or the length of a net. */
  readonly pieceLength: string;
  readonly shape: string;
  /** The grower's list, to look sides up there. */
  readonly list: ListSource<PaddockList> | undefined;
  readonly setPaddocks: number;
}
