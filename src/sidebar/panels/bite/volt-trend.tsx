import type { Walk } from '../../../../shared/tasks/bite/walk-log';
import { dayWords } from '../../parts/day-words';
import * as words from './words';

const WIDTH = 270;
const HEIGHT = 90;
const EDGE = 6;

/** The lowest volts of each walk as a line over time, with the grower's level as a dashed line. */
export function VoltTrend({ walks, level }: { walks: readonly Walk[]; level: number }) {
  const [first, last] = [walks[0], walks[walks.length - 1]];
  if (!first || !last || walks.length < 2) return null;
  const top = Math.max(level, ...walks.map(({ lowest }) => lowest)) * 1.05;
  const x = (day: number): number => EDGE + ((day - first.day) / (last.day - first.day)) * (WIDTH - 2 * EDGE);
  const y = (volts: number): number => HEIGHT - EDGE - (volts / top) * (HEIGHT - 2 * EDGE);
  const points = walks.map(({ day, lowest }) => `${x(day).toFixed(1)},${y(lowest).toFixed(1)}`);
  return (
    <figure class="chart">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words.TREND}>
        <line class="level" x1={EDGE} x2={WIDTH - EDGE} y1={y(level)} y2={y(level)} />
        <polyline class="trend" points={points.join(' ')} />
        {walks.map(({ day, lowest }) => (
          <circle
            key={day}
            class={lowest < level ? 'point below' : 'point'}
            cx={x(day)}
            cy={y(lowest)}
            r={lowest < level ? 4 : 3}
          />
        ))}
      </svg>
      <figcaption class="hint">{words.trendDays(dayWords(first.day), dayWords(last.day))}</figcaption>
    </figure>
  );
}
