import type { Period, PeriodSum } from '../../../../shared/tasks/budget/by-period';
import { formatNumber } from '../../numbers/format-number';
import { dayWords } from '../../parts/day-words';
import { ScrollRegion } from '../../parts/scroll-region';
import * as words from './words';

const WIDTH = 270;
const HEIGHT = 110;
const FOOT = 14;
const HEAD = 12;

interface Props {
  readonly sums: readonly PeriodSum[];
  readonly unit: string;
  readonly period: Period;
}

/** Feed by week or month as bars; the same numbers in words and as a table below. */
export function FeedChart({ sums, unit, period }: Props) {
  const most = sums.reduce((top, sum) => (sum.sum > top.sum ? sum : top), sums[0] ?? NOTHING);
  if (most.sum <= 0) return null;
  const step = WIDTH / sums.length;
  const height = (sum: number): number => (sum / most.sum) * (HEIGHT - FOOT - HEAD);
  const [first, last] = [sums[0] ?? NOTHING, sums[sums.length - 1] ?? NOTHING];
  const amount = (sum: number): string => `${formatNumber(Math.round(sum))} ${unit}`;
  return (
    <figure class="chart">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words.chart(period)}>
        {sums.map(({ start, sum }, at) => (
          <rect
            key={start}
            class="bar"
            x={at * step + step * 0.1}
            width={step * 0.8}
            y={HEIGHT - FOOT - height(sum)}
            height={height(sum)}
          />
        ))}
        <text class="chart-label" x={2} y={HEIGHT - 4}>
          {dayWords(first.start)}
        </text>
        <text class="chart-label" x={WIDTH - 2} y={HEIGHT - 4} text-anchor="end">
          {dayWords(last.start)}
        </text>
        <text class="chart-label" x={2} y={9}>
          {amount(most.sum)}
        </text>
      </svg>
      <figcaption>
        {words.chartSaid(period, dayWords(most.start), amount(most.sum), amount(first.sum), amount(last.sum))}
      </figcaption>
      <details>
        <summary>As a table</summary>
        <ScrollRegion label={`Feed by ${period}`}>
          <table>
            <thead>
              <tr>
                <th scope="col">From</th>
                <th scope="col">Feed ({unit})</th>
              </tr>
            </thead>
            <tbody>
              {sums.map(({ start, sum }) => (
                <tr key={start}>
                  <th scope="row">{dayWords(start)}</th>
                  <td class="number">{formatNumber(Math.round(sum))}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollRegion>
      </details>
    </figure>
  );
}

const NOTHING: PeriodSum = { start: 0, end: 0, sum: 0 };
