import { useRef } from 'preact/hooks';
import { counted } from '../../../../shared/plan/words';
import type { MeasuredMap } from '../../../../shared/tasks/map/measure-map';
import { type Sketch, type SketchMark, type Spot, sketchMap } from '../../../../shared/tasks/map/sketch';
import type { UnitSystem } from '../../../../shared/units/units';
import { DrawingButtons } from '../../parts/drawing-buttons';
import { ScrollRegion } from '../../parts/scroll-region';
import { INK, round, SketchText, SOFT } from '../../parts/sketch-text';

const FIELD = '#eef4ea';
const WATER = '#1f5f8b';
const WELL = '#7a3d0c';

/** The map to scale, north up, in colours of its own so that it prints and saves as it looks. */
export function MapDrawing({ map, units }: { map: MeasuredMap; units: UnitSystem }) {
  const svg = useRef<SVGSVGElement>(null);
  const sketch = sketchMap(map, units);
  const { width, height } = sketch;
  return (
    <>
      <ScrollRegion label="Drawing of the paddocks, scrolls sideways" class="sketch">
        <svg
          ref={svg}
          width={width}
          height={height}
          viewBox={`0 0 ${width} ${height}`}
          role="img"
          aria-label={`Map of ${counted(map.paddocks.length, 'paddock')} to scale, north up. The table below says the same in words.`}
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
                <SketchText key={`${side.x} ${side.y}`} {...side} size={10} color={SOFT} anchor="middle" />
              ))}
              <SketchText {...paddock.middle} text={paddock.name} bold halo anchor="middle" />
              <SketchText
                x={paddock.middle.x}
                y={paddock.middle.y + 14}
                text={paddock.area}
                size={11}
                halo
                anchor="middle"
              />
            </g>
          ))}
          <ScaleAndNorth sketch={sketch} />
        </svg>
      </ScrollRegion>
      <DrawingButtons svg={svg} fileName="paddock-map.svg" />
    </>
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
      <SketchText {...label} text={name} size={11} italic halo color={color} />
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
          <SketchText {...gap.label} size={10} color={color} anchor="middle" />
        </>
      )}
    </g>
  );
}

function ScaleAndNorth({ sketch: { width, height, bar } }: { sketch: Sketch }) {
  const y = height - 22;
  return (
    <g fill={INK} stroke="none">
      <rect x={20} y={y} width={bar.length} height="4" />
      <SketchText x={20} y={y + 17} text={bar.text} size={11} />
      <g transform={`translate(${width - 28} ${height - 36})`}>
        <path d="M0 -14 L6 8 L0 3 L-6 8 Z" />
        <SketchText x={0} y={22} text="N" size={11} anchor="middle" />
      </g>
    </g>
  );
}

function pointsText(points: readonly Spot[]): string {
  return points.map(({ x, y }) => `${round(x)},${round(y)}`).join(' ');
}
