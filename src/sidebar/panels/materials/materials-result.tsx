import { strandHeights } from '../../../../shared/core/fence/strand-heights';
import type { BuyList } from '../../../../shared/tasks/materials/buy-list';
import { fenceType } from '../../../../shared/tasks/materials/fence-types';
import type { MaterialsPlan } from '../../../../shared/tasks/materials/materials-block';
import { sharedSides } from '../../../../shared/tasks/materials/shared-sides';
import { tooFewStrands } from '../../../../shared/tasks/strands-setting';
import { fromInside, type Quantity, symbolOf } from '../../../../shared/units/units';
import { formatNumber } from '../../numbers/format-number';
import { count } from '../../parts/day-words';
import { Notice } from '../../parts/notice';
import * as words from './words';

interface Props {
  readonly plan: MaterialsPlan;
  readonly list: BuyList;
}

/** How much fence, where that length comes from, what is left to buy and what it costs. */
export function MaterialsResult({ plan, list }: Props) {
  const buy = list.lines.filter(({ toBuy }) => toBuy > 0);
  const { pigWeight = 0, strands = 1 } = list.settings;
  const tooFew = fenceType(plan.kind).isHung && tooFewStrands(pigWeight, strands, plan.units);
  return (
    <div class="answer">
      {tooFew && <Notice kind="warning">{tooFew}</Notice>}
      <p>
        <span class="big">{shown(list.lineMeters, 'length', plan)}</span> of fence{whereFrom(plan, list)}
      </p>
      {isTakenToTouch(plan) && <p>{words.TAKEN_TO_TOUCH}</p>}
      {buy.length === 0 ? (
        <p>{words.NOTHING_TO_BUY}</p>
      ) : (
        <table>
          <thead>
            <tr>
              <th scope="col">Buy</th>
              <th scope="col" class="number">
                How many
              </th>
              <th scope="col" class="number">
                Cost
              </th>
            </tr>
          </thead>
          <tbody>
            {buy.map((line, at) => (
              <tr key={`${at} ${line.name}`}>
                <th scope="row">{line.name}</th>
                <td class="number">{howMany(line)}</td>
                <td class="number">{line.cost === undefined ? '?' : money(line.cost)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {buy.length > 0 && <p>{costWords(list)}</p>}
    </div>
  );
}

/** Which paddocks touch is the page's guess, not the list's word. */
function isTakenToTouch({ layout }: MaterialsPlan): boolean {
  return (
    layout.kind === 'list' &&
    sharedSides(layout).length > 0 &&
    layout.paddocks.every(({ adjoins }) => adjoins === undefined)
  );
}

function howMany({ toBuy, need, unit }: BuyList['lines'][number]): string {
  const isLength = unit === 'ft' || unit === 'm';
  const of = toBuy < need ? ` of ${formatNumber(need)}` : '';
  return `${formatNumber(toBuy)}${of}${isLength ? ` ${unit}` : ''}`;
}

function costWords({ cost, lines, unpriced }: BuyList) {
  if (lines.every((line) => line.cost === undefined)) return words.TYPE_PRICES;
  return (
    <>
      <strong>Cost {money(cost)}</strong>
      {unpriced.length > 0 && `, without the ${unpriced.length} things that have no price yet (?)`}.
    </>
  );
}

function whereFrom(plan: MaterialsPlan, { fence, settings }: BuyList): string {
  const standing = settings.standing ?? 0;
  const less = standing > 0 ? `, less ${shown(standing, 'length', plan)} that stands` : '';
  if (plan.atATime.kind === 'all') return ` to put up: all paddocks, shared sides once${less}.`;
  const { paddocks } = plan.atATime;
  const groups = settings.groups ?? 1;
  const each = groups === 1 ? '' : `for each of ${groups} groups `;
  const inTurn = plan.layout.kind === 'list' && plan.layout.inTurn !== undefined;
  const longest = paddocks === 1 ? 'the longest paddock' : words.longestSet(paddocks, inTurn);
  const named = fence.longest.length > 0 ? ` (${fence.longest.join(', ')})` : '';
  const length = groups === 1 ? '' : `, ${shown(fence.set.meters, 'length', plan)}`;
  return ` to put up: ${each}${longest}${named}${length}${less}.`;
}

function shown(value: number, quantity: Quantity, { units }: MaterialsPlan): string {
  return `${formatNumber(Math.round(fromInside(value, quantity, units)))} ${symbolOf(quantity, units)}`;
}

function money(amount: number): string {
  return formatNumber(Math.round(amount * 100) / 100);
}

/** Each length in words. */
export function MaterialsLengths({ plan, list }: Props) {
  const { units, kind } = plan;
  const { settings, fence, wireMeters, liveMeters, joules, energizers } = list;
  const { isHung, pieceNote } = fenceType(kind);
  const heights = strandHeights(settings.pigWeight ?? 1, settings.strands ?? 2).map((height) =>
    formatNumber(Math.round(fromInside(height, 'height', units))),
  );
  return (
    <details class="rests">
      <summary>
        <strong>Where the numbers come from</strong>
      </summary>
      <ul>
        <li>{words.outerFence(shown(fence.outerMeters, 'length', plan))}</li>
        <li>{words.dividingFence(shown(fence.dividingMeters, 'length', plan))}</li>
        <li>{pieceNote}</li>
        {isHung && <li>{words.wire(shown(wireMeters, 'length', plan))}</li>}
        {isHung && <li>{words.wireHeights(heights.join(', '), symbolOf('height', units))}</li>}
        <li>
          {words.energizers(
            count(energizers, 'energizer'),
            formatNumber(Math.ceil(joules * 10 - 1e-9) / 10),
            shown(liveMeters, 'length', plan),
          )}
        </li>
      </ul>
    </details>
  );
}
