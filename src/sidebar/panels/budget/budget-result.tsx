import { useState } from 'preact/hooks';
import type { BudgetPlan } from '../../../../shared/tasks/budget/budget-block';
import type { StayNeeds } from '../../../../shared/tasks/budget/budget-model';
import type { BudgetSettings } from '../../../../shared/tasks/budget/budget-settings';
import { byPeriod, type Period } from '../../../../shared/tasks/budget/by-period';
import { paddockLoads } from '../../../../shared/tasks/budget/paddock-loads';
import { seasonNeeds } from '../../../../shared/tasks/budget/season-needs';
import { fromInside, type Quantity, symbolOf } from '../../../../shared/units/units';
import { formatNumber } from '../../numbers/format-number';
import { Choices } from '../../parts/choices';
import { Notice } from '../../parts/notice';
import { ScrollRegion } from '../../parts/scroll-region';
import { FeedChart } from './feed-chart';
import * as words from './words';

const LIMITS = ['limitN', 'limitP', 'limitK'] as const;
const PERIODS = [
  { value: 'week', text: 'By week' },
  { value: 'month', text: 'By month' },
];

interface Props {
  readonly plan: BudgetPlan;
  readonly needs: readonly StayNeeds[];
  /** Settings in inside units. */
  readonly limits: BudgetSettings;
}

/** Season totals. */
export function BudgetResult({ plan, needs, limits }: Props) {
  const { units, stays } = plan;
  const season = seasonNeeds(stays, needs, limits);
  const { money } = season;
  const show = (value: number, quantity: Quantity): string =>
    `${formatNumber(Math.round(fromInside(value, quantity, units)))} ${symbolOf(quantity, units)}`;
  return (
    <div class="answer">
      <p>
        <span class="big">{show(season.feedKg, 'mass')}</span> of feed, waste included.
      </p>
      <ul>
        <li>
          {words.mostWater(
            show(season.waterLiters, 'volumePerDay'),
            show(season.hotWaterLiters, 'volumePerDay'),
          )}
        </li>
        <li>{words.shelter(show(season.shelterSquareMeters, 'floorArea'))}</li>
        {money?.feed !== undefined && (
          <li>
            {words.feedCosts(
              cost(money.feed),
              cost(money.feedPerPig),
              formatNumber(money.pigs),
              cost(money.feedPerKgGained && money.feedPerKgGained / fromInside(1, 'mass', units)),
              symbolOf('mass', units),
            )}
          </li>
        )}
        {money?.fencePerPig !== undefined && (
          <li>{words.fenceCosts(cost(money.fencePerPig), formatNumber(money.pigs))}</li>
        )}
      </ul>
      {!money && <p class="hint">{words.TYPE_PRICE}</p>}
    </div>
  );
}

function cost(amount: number | undefined): string {
  return amount === undefined ? '–' : formatNumber(Math.round(amount * 100) / 100);
}

/** The feed over time, and what falls on each paddock. */
export function BudgetMore({ plan, needs, limits }: Props) {
  const [period, setPeriod] = useState<Period>('week');
  const { units, stays } = plan;
  const feed = byPeriod(stays, (_, at) => fromInside(needs[at]?.feedKg ?? 0, 'mass', units), period);
  const loads = paddockLoads(stays, needs, limits);
  const over = loads.filter((load) => load.over.length > 0);
  const load = (value: number): string => formatNumber(Math.round(fromInside(value, 'massPerArea', units)));
  return (
    <>
      <Choices
        legend="Feed over the season"
        value={period}
        options={PERIODS}
        onChange={(chosen) => setPeriod(chosen as Period)}
      />
      <FeedChart sums={feed} unit={symbolOf('mass', units)} period={period} />
      <h2>On the ground in the season</h2>
      {over.length > 0 && (
        <Notice kind="warning">
          Over your limit: {over.map((one) => `${one.paddock} (${one.over.join(', ')})`).join('; ')}.
        </Notice>
      )}
      {LIMITS.every((key) => limits[key] === undefined) && <p class="hint">{words.NO_LIMIT}</p>}
      <ScrollRegion label="Nutrients by paddock">
        <table>
          <caption class="hint">{symbolOf('massPerArea', units)}, elemental, spread evenly</caption>
          <thead>
            <tr>
              <th scope="col">Paddock</th>
              <th scope="col">Days</th>
              <th scope="col">N</th>
              <th scope="col">P</th>
              <th scope="col">K</th>
            </tr>
          </thead>
          <tbody>
            {loads.map((one) => (
              <tr key={one.paddock}>
                <th scope="row">{one.paddock}</th>
                <td class="number">{one.days}</td>
                <td class="number">{load(one.nitrogen)}</td>
                <td class="number">{load(one.phosphorus)}</td>
                <td class="number">{load(one.potassium)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
    </>
  );
}
