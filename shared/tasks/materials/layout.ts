/** What is to be fenced, and what fence that makes. SI units. */

/** How paddocks of a list touch: not at all, along their lengths, or along their widths. */
export type Touching = 'alone' | 'lengths' | 'widths';

/** A rectangle, or a paddock of which only the fence round it is known. */
export interface LaidPaddock {
  readonly name: string;
  readonly widthMeters?: number;
  readonly lengthMeters?: number;
  /** Width and length are worked out from the area and the usual shape. */
  readonly guessedFromSquareMeters?: number;
  /** The side that the list gives; the other is what the area makes of it. */
  readonly givenSide?: 'width' | 'length';
  readonly fenceMeters?: number;
  /** Positions in the list of the paddocks that adjoin; absent: not known. */
  readonly adjoins?: readonly number[];
}

export interface GridLayout {
  readonly kind: 'grid';
  readonly rows: number;
  readonly columns: number;
  /** Sides of one paddock. */
  readonly widthMeters: number;
  readonly lengthMeters: number;
}

export interface ListLayout {
  readonly kind: 'list';
  readonly paddocks: readonly LaidPaddock[];
  readonly touching: Touching;
  /** Where a rotation stands: for each group the positions of its paddocks, in the order of its moves. */
  readonly inTurn?: readonly (readonly number[])[];
}

export type Layout = GridLayout | ListLayout;

/** How far apart posts stand at most, and how long a net is. */
export interface PieceLengths {
  readonly postSpacing: number;
  readonly netLength: number;
}

/** A fence as lengths, and what it takes of either piece: corner and junction posts are among `posts`. */
export interface FenceCount {
  readonly meters: number;
  readonly posts: number;
  readonly nets: number;
  readonly corners: number;
}

export interface LayoutFence {
  readonly outerMeters: number;
  readonly dividingMeters: number;
  /** Everything fenced at once, shared sides counted once. */
  readonly all: FenceCount;
  /** The most that stands at one time where a set of paddocks leapfrogs through the layout. */
  readonly set: FenceCount;
  /** Names of the paddocks of the longest set, where the layout has names. */
  readonly longest: readonly string[];
}
