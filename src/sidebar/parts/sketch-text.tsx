export const INK = '#1f2421';
export const SOFT = '#4c5751';

interface Props {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size?: number;
  readonly color?: string;
  readonly bold?: boolean;
  /** A pale edge, so that lines behind the words do not cross them out. */
  readonly halo?: boolean;
  readonly italic?: boolean;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Degrees round its place. */
  readonly turn?: number;
}

/** Words in a drawing that keeps its own paper and colours: printed, saved and shown alike. */
export function SketchText({
  x,
  y,
  text,
  size = 12,
  color = INK,
  bold,
  halo,
  italic,
  anchor = 'start',
  turn,
}: Props) {
  return (
    <text
      x={round(x)}
      y={round(y)}
      text-anchor={anchor}
      dominant-baseline={turn === undefined ? undefined : 'central'}
      transform={turn === undefined ? undefined : `rotate(${round(turn)} ${round(x)} ${round(y)})`}
      style={{
        fill: color,
        fontSize: `${size}px`,
        fontWeight: bold ? 700 : 400,
        fontStyle: italic ? 'italic' : 'normal',
        ...(halo && { paintOrder: 'stroke', stroke: '#ffffff', strokeWidth: '3px' }),
      }}
    >
      {text}
    </text>
  );
}

export function round(value: number): number {
  return Math.round(value * 100) / 100;
}
