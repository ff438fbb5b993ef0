/** What a map file or typed corners come to: shapes on the ground, not yet measured. */
import type { Corner } from '../../core/fence/corner';

/** What a shape is to the grower. Guessed from its kind and name, changed by the grower. */
export const ROLES = ['paddock', 'water', 'well', 'other'] as const;
export type Role = (typeof ROLES)[number];

export type ShapeForm = 'area' | 'line' | 'point';

export interface MapShape {
  readonly name: string;
  readonly form: ShapeForm;
  /** The outline without a repeated last corner, the points of a line, or one point. */
  readonly corners: readonly Corner[];
  /** Outlines inside an area that do not belong to it: a pond, a wood. */
  readonly holes: readonly (readonly Corner[])[];
}

export interface FarmMap {
  readonly shapes: readonly MapShape[];
  /** What was left out and why, one sentence each. */
  readonly problems: readonly string[];
}
