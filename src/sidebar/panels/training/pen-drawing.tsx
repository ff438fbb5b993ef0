import {
  PANEL_HEIGHT_METERS,
  type PenPlan,
  type Place,
  WIRE_OFFSET_METERS,
} from '../../../../shared/tasks/training/pen-drawing';
import { POST_SIDES } from '../../../../shared/tasks/training/words';
import { fromInside, symbolOf, type UnitSystem } from '../../../../shared/units/units';
import { count } from '../../parts/day-words';
import { DrawingButtons } from '../../parts/drawing-buttons';
import { INK, round, SketchText, SOFT } from '../../parts/sketch-text';
import * as words from './words';

const WIDTH = 276;
const PLAN = { left: 38, top: 30, size: 200 };
const SIDE = { left: 54, top: 300, width: 184, height: 110 };
const HEIGHT = 500;
const WIRE = '#b3261e';
const POST = '#5b3a14';

/** Plan and side view of the pen. What it shows is said in words below it. */
export function PenDrawing({ plan, units }: { plan: PenPlan; units: UnitSystem }) {
  const heights = plan.wireHeightsMeters.map((height) => amount(height, 'height', units));
  const shows = words.penDrawn(
    amount(plan.sideMeters, 'length', units),
    count(plan.panelsPerSide, 'panel'),
    heights.join(' and '),
  );
  const drawing = (
    <svg
      width={WIDTH}
      height={HEIGHT}
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`${shows} ${POST_SIDES}`}
      xmlns="http://www.w3.org/2000/svg"
      font-family="system-ui, sans-serif"
    >
      <rect width={WIDTH} height={HEIGHT} fill="#ffffff" />
      <PlanView plan={plan} units={units} />
      <SideView plan={plan} units={units} />
      <Legend />
    </svg>
  );
  return (
    <>
      <div class="sketch">{drawing}</div>
      <p>
        {shows} {POST_SIDES} {words.wireStands(amount(WIRE_OFFSET_METERS, 'height', units))}
      </p>
      <DrawingButtons title="The training pen" drawing={drawing} fileName="training-pen.svg" />
    </>
  );
}

function PlanView({ plan, units }: { plan: PenPlan; units: UnitSystem }) {
  const { left, top, size } = PLAN;
  const scale = size / plan.sideMeters;
  // Drawn at least this far off, or it would not be seen apart from the panel.
  const inset = Math.max(9, WIRE_OFFSET_METERS * scale);
  const at = ({ east, north }: Place) => ({
    x: round(left + spread(east, plan.sideMeters, scale)),
    y: round(top + size - spread(north, plan.sideMeters, scale)),
  });
  return (
    <g>
      <SketchText x={left} y={16} text="From above" bold />
      <rect x={left} y={top} width={size} height={size} fill="#f3f0e6" stroke={INK} stroke-width="3" />
      {plan.joints.map((joint) => {
        const { x, y } = at(joint);
        return <circle key={`${x} ${y}`} cx={x} cy={y} r="2.5" fill="#ffffff" stroke={INK} />;
      })}
      <rect
        x={left + inset}
        y={top + inset}
        width={size - 2 * inset}
        height={size - 2 * inset}
        fill="none"
        stroke={WIRE}
        stroke-width="1.5"
        stroke-dasharray="6 3"
      />
      {[...plan.cornerPosts, ...plan.sidePosts].map((post) => {
        const { x, y } = at(post);
        return <rect key={`${x} ${y}`} x={x - 3} y={y - 3} width="6" height="6" fill={POST} />;
      })}
      <SketchText
        x={left + size / 2}
        y={top + size / 2}
        text={`${amount(plan.sideMeters, 'length', units)} a side`}
        anchor="middle"
      />
      <SketchText
        x={left + size / 2}
        y={top + size / 2 + 16}
        text="pigs inside"
        size={11}
        color={SOFT}
        anchor="middle"
      />
    </g>
  );
}

/** Posts are drawn 5 picture units to their side of the panel, however big the pen. */
function spread(meters: number, side: number, scale: number): number {
  if (meters < 0) return -5;
  if (meters > side) return side * scale + 5;
  if (meters > 0 && meters * scale < 5) return 5;
  return meters < side && (side - meters) * scale < 5 ? side * scale - 5 : meters * scale;
}

function SideView({ plan, units }: { plan: PenPlan; units: UnitSystem }) {
  const { left, top, width, height } = SIDE;
  const ground = top + height;
  const highest = Math.max(PANEL_HEIGHT_METERS, plan.noseMeters, ...plan.wireHeightsMeters);
  const scale = (height - 10) / highest;
  const up = (meters: number): number => round(ground - meters * scale);
  const panelTop = up(PANEL_HEIGHT_METERS);
  return (
    <g>
      <SketchText x={PLAN.left} y={top - 22} text="From inside, heights to scale" bold />
      <rect
        x={left}
        y={panelTop}
        width={width}
        height={ground - panelTop}
        fill="#f3f0e6"
        stroke={SOFT}
        stroke-width="1.5"
      />
      {[0.25, 0.5, 0.75].map((part) => (
        <line
          key={part}
          x1={left + part * width}
          x2={left + part * width}
          y1={panelTop}
          y2={ground}
          stroke={SOFT}
          stroke-width="0.6"
        />
      ))}
      {plan.wireHeightsMeters.map((wire) => (
        <g key={wire}>
          <line
            x1={left - 4}
            x2={left + width + 4}
            y1={up(wire)}
            y2={up(wire)}
            stroke={WIRE}
            stroke-width="2"
          />
          <SketchText
            x={left - 6}
            y={up(wire) + 4}
            text={amount(wire, 'height', units)}
            size={10}
            color={WIRE}
            anchor="end"
          />
        </g>
      ))}
      <SketchText
        x={left + width - 4}
        y={up(plan.noseMeters) - 4}
        text="height of the noses"
        size={10}
        anchor="end"
      />
      <line x1={left - 20} x2={left + width + 20} y1={ground} y2={ground} stroke={INK} stroke-width="2" />
    </g>
  );
}

function Legend() {
  const y = SIDE.top + SIDE.height + 26;
  return (
    <g>
      <rect x={PLAN.left} y={y - 7} width="6" height="6" fill={POST} />
      <SketchText x={PLAN.left + 14} y={y} text="post: inside at corners, outside on sides" size={11} />
      <line x1={PLAN.left - 6} x2={PLAN.left + 10} y1={y + 13} y2={y + 13} stroke={INK} stroke-width="3" />
      <SketchText x={PLAN.left + 14} y={y + 17} text="rigid panel, ringed where two meet" size={11} />
      <line
        x1={PLAN.left - 6}
        x2={PLAN.left + 10}
        y1={y + 30}
        y2={y + 30}
        stroke={WIRE}
        stroke-width="1.5"
        stroke-dasharray="6 3"
      />
      <SketchText x={PLAN.left + 14} y={y + 34} text="live wire inside the panels" size={11} />
    </g>
  );
}

function amount(meters: number, quantity: 'length' | 'height', units: UnitSystem): string {
  const value = Math.round(fromInside(meters, quantity, units) * 10) / 10;
  return `${value} ${symbolOf(quantity, units)}`;
}
