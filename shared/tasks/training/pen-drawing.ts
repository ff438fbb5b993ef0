/** The training pen as a drawing: where panels, posts and wires stand, in metres; the page only scales it. */
import { gapsOnSide } from '../../core/fence/gaps-on-side';
import { noseHeight } from '../../core/fence/nose-height';
import { strandHeights } from '../../core/fence/strand-heights';
import { trainingPen } from '../../core/training/training-pen';

/** How far the live wire stands off the panels. Common practice, no source: about 5 in. */
export const WIRE_OFFSET_METERS = 5 * 0.0254;
/** Height of a hog panel: 0.86 m held feral pigs (Lavelle and others 2011, published). */
export const PANEL_HEIGHT_METERS = 0.86;

export interface Place {
  readonly east: number;
  readonly north: number;
}

export interface PenPlan {
  readonly sideMeters: number;
  readonly panelsPerSide: number;
  /** Inside the panels. */
  readonly cornerPosts: readonly Place[];
  /** Outside the panels, on the four sides. */
  readonly sidePosts: readonly Place[];
  /** Where one panel ends and the next begins. */
  readonly joints: readonly Place[];
  /** As on the fence that the pigs go to: judgement. */
  readonly wireHeightsMeters: readonly number[];
  readonly noseMeters: number;
}

export interface PenSize {
  readonly head: number;
  readonly weightKg: number;
  readonly panelMeters: number;
  readonly spacingMeters: number;
  readonly areaSquareMeters: number;
  readonly strands: number;
}

/** The inside of the panels runs from (0, 0) to (side, side). Posts stand a hand's breadth off the panel. */
export function penPlan(size: PenSize): PenPlan {
  const { head, weightKg, panelMeters, spacingMeters, areaSquareMeters, strands } = size;
  const lines = trainingPen(head, weightKg, panelMeters, spacingMeters, areaSquareMeters);
  const amountOf = (item: string): number => lines.find((line) => line.item === item)?.amount ?? 0;
  const sideMeters = amountOf('inside length of a side');
  const panelsPerSide = amountOf('panels') / 4;
  const gaps = gapsOnSide(sideMeters, spacingMeters);
  const off = Math.min(0.15, sideMeters / 40);
  const corners = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ] as const;
  return {
    sideMeters,
    panelsPerSide,
    cornerPosts: corners.map(([e, n]) => ({
      east: e === 0 ? off : sideMeters - off,
      north: n === 0 ? off : sideMeters - off,
    })),
    sidePosts: onSides(sideMeters, gaps, off),
    joints: onSides(sideMeters, panelsPerSide, 0),
    wireHeightsMeters: strandHeights(weightKg, strands),
    noseMeters: noseHeight(weightKg),
  };
}

/** Points that part each side into equal pieces, corners left out, `off` metres outside. */
function onSides(side: number, pieces: number, off: number): readonly Place[] {
  return Array.from({ length: Math.max(0, pieces - 1) }, (_, i) => (side * (i + 1)) / pieces).flatMap(
    (at) => [
      { east: at, north: -off },
      { east: side + off, north: at },
      { east: at, north: side + off },
      { east: -off, north: at },
    ],
  );
}
