import { firstFew } from '../../../../shared/block/first-few';
import { counted } from '../../../../shared/plan/words';
import type { MeasuredMap } from '../../../../shared/tasks/map/measure-map';
import {
  type Frame,
  LARGE_FRAME,
  type Sketch,
  type SketchMark,
  SMALL_FRAME,
  type Spot,
  sketchMap,
  TEXT_SIZES,
} from '../../../../shared/tasks/map/sketch';
import type { UnitSystem } from '../../../../shared/units/units';
import { DrawingButtons } from '../../parts/drawing-buttons';
import { INK, round, SketchText, SOFT } from '../../parts/sketch-text';
import * as words from './words';

const FIELD = '#eef4ea';
const WATER = '#1f5f8b';
const WELL = '#7a3d0c';

interface Props {
  readonly map: MeasuredMap;
  readonly units: UnitSystem;
}

/** The map as it fits beside the sheet; paddocks that have no room for their names by numbers. */
export function MapDrawing({ map, units }: Props) {
  const { paddocks } = sketchMap(map, units, SMALL_FRAME);
  const numbered = paddocks.filter(({ name, label }) => name !== label);
  return (
    <>
      <div class="sketch">
        <MapSvg map={map} units={units} frame={SMALL_FRAME} />
      </div>
      {numbered.length > 0 && (
        <p class="hint">{firstFew(numbered.map(({ name, label }) => `${label} ${name}`))}</p>
      )}
    </>
  );
}

/** The map in a window of its own, or as a file. */
export function MapButtons({ map, units }: Props) {
  return (
    <DrawingButtons
      title="Map of the paddocks"
      drawing={<MapSvg map={map} units={units} frame={LARGE_FRAME} />}
      fileName="paddock-map.svg"
    />
  );
}

/** To scale, north up, in colours of its own so that it prints and saves as it looks. */
function MapSvg({ map, units, frame }: Props & { frame: Frame }) {
  const sketch = sketchMap(map, units, frame);
  const { width, height } = sketch;
  return (
    <svg
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={words.drawn(counted(map.paddocks.length, 'paddock'))}
      xmlns="http://www.w3.org/2000/svg"
      font-family="system-ui, sans-serif"
    >
      <rect width={width} height={height} fill="#ffffff" />
      {sketch.paddocks.map((paddock) => (
        <polygon
          key={paddock.name}
          points={pointsText(paddock.outline)}
          fill={FIELD}
          stroke={INK}
          stroke-width="1.5"
        />
      ))}
      {sketch.marks.map((mark) => (
        <Mark key={mark.name} mark={mark} />
      ))}
      {sketch.paddocks.map((paddock) => (
        <g key={paddock.name}>
          {paddock.sides.map((side) => (
            <SketchText
              key={`${side.x} ${side.y}`}
              {...side}
              size={TEXT_SIZES.length}
              color={SOFT}
              anchor="middle"
            />
          ))}
          <SketchText
            {...paddock.middle}
            text={paddock.label}
            size={TEXT_SIZES.name}
            bold
            halo
            anchor="middle"
          />
          <SketchText
            x={paddock.middle.x}
            y={paddock.middle.y + TEXT_SIZES.name + 2}
            text={paddock.area}
            size={TEXT_SIZES.area}
            halo
            anchor="middle"
          />
        </g>
      ))}
      <ScaleAndNorth sketch={sketch} />
    </svg>
  );
}

function Mark({ mark: { name, role, form, points, label, gap } }: { mark: SketchMark }) {
  const color = role === 'water' ? WATER : role === 'well' ? WELL : SOFT;
  const at = points[0] ?? { x: 0, y: 0 };
  return (
    <g>
      {form === 'point' && <circle cx={at.x} cy={at.y} r="4" fill={color} />}
      {form === 'line' && (
        <polyline
          points={pointsText(points)}
          fill="none"
          stroke={color}
          stroke-width="2"
          stroke-dasharray="7 3"
        />
      )}
      {form === 'area' && (
        <polygon
          points={pointsText(points)}
          fill={color}
          fill-opacity="0.2"
          stroke={color}
          stroke-dasharray="7 3"
        />
      )}
      <SketchText {...label} text={name} size={TEXT_SIZES.area} italic halo color={color} />
      {gap && (
        <>
          <line
            x1={gap.from.x}
            y1={gap.from.y}
            x2={gap.to.x}
            y2={gap.to.y}
            stroke={color}
            stroke-dasharray="2 3"
          />
          {gap.label && <SketchText {...gap.label} size={TEXT_SIZES.length} color={color} anchor="middle" />}
        </>
      )}
    </g>
  );
}

function ScaleAndNorth({ sketch: { width, height, bar } }: { sketch: Sketch }) {
  const y = height - 24;
  return (
    <g fill={INK} stroke="none">
      <rect x={10} y={y} width={bar.length} height="4" />
      <SketchText x={10} y={y + 17} text={bar.text} size={11} />
      <g transform={`translate(${width - 14} ${height - 24})`}>
        <path d="M0 -8 L5 7 L0 3 L-5 7 Z" />
        <SketchText x={0} y={19} text="N" size={11} anchor="middle" />
      </g>
    </g>
  );
}

function pointsText(points: readonly Spot[]): string {
  return points.map(({ x, y }) => `${round(x)},${round(y)}`).join(' ');
}
