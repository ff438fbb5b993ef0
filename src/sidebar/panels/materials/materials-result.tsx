import { strandHeights } from '../../../../shared/core/fence/strand-heights';
import { ITEM_NAMES } from '../../../../shared/tasks/materials/item-rows';
import { layoutFence } from '../../../../shared/tasks/materials/layout-fence';
import { setSize } from '../../../../shared/tasks/materials/layout-rows';
import { MATERIAL_ITEMS, materialNeeds } from '../../../../shared/tasks/materials/material-needs';
import type { MaterialsPlan } from '../../../../shared/tasks/materials/materials-block';
import { MATERIALS_SETTINGS } from '../../../../shared/tasks/materials/materials-settings';
import { insideSettings } from '../../../../shared/tasks/settings';
import { fromInside, type Quantity, symbolOf } from '../../../../shared/units/units';
import { formatNumber } from '../../numbers/format-number';
import { ScrollRegion } from '../../parts/scroll-region';

function needsOf({ settings, layout, atATime, units }: MaterialsPlan) {
  const inside = insideSettings(MATERIALS_SETTINGS, settings, units);
  const fence = layoutFence(layout, inside.postSpacing ?? 1, setSize(atATime));
  return { inside, fence, ...materialNeeds(fence, atATime, inside) };
}

/** What the fence takes, before anything is written. */
export function MaterialsResult({ plan }: { plan: MaterialsPlan }) {
  const { units } = plan;
  const { inside, fence, lineMeters, wireMeters, joules, need } = needsOf(plan);
  const show = (value: number, quantity: Quantity): string =>
    `${formatNumber(Math.round(fromInside(value, quantity, units)))} ${symbolOf(quantity, units)}`;
  const heights = strandHeights(inside.pigWeight ?? 1, inside.strands ?? 2);
  return (
    <div class="answer">
      <p>
        <span class="big">{show(lineMeters, 'length')}</span> of fence to put up.
      </p>
      <ul>
        <li>Outer fence {show(fence.outerMeters, 'length')}, all at once.</li>
        <li>Dividing fence {show(fence.dividingMeters, 'length')}, shared sides counted once.</li>
        <li>Wire {show(wireMeters, 'length')}, all strands.</li>
        <li>
          Wires at{' '}
          {heights.map((height) => formatNumber(Math.round(fromInside(height, 'height', units)))).join(', ')}{' '}
          {symbolOf('height', units)} above ground.
        </li>
        <li>
          Energizer of {formatNumber(Math.round(joules * 10) / 10)} J or more, {need.rods} ground{' '}
          {need.rods === 1 ? 'rod' : 'rods'}.
        </li>
      </ul>
    </div>
  );
}

/** Piece by piece. */
export function MaterialsNeeded({ plan }: { plan: MaterialsPlan }) {
  const { units } = plan;
  const { need } = needsOf(plan);
  const cable = Math.ceil(fromInside(need.cable, 'length', units) - 1e-9);
  return (
    <>
      <h2>What it takes</h2>
      <p class="hint">
        In the sheet you type what you have and what things cost; what to buy and its cost follow, and the
        comparison with woven wire and panels.
      </p>
      <ScrollRegion label="Materials needed">
        <table>
          <thead>
            <tr>
              <th scope="col">Item</th>
              <th scope="col">Need</th>
            </tr>
          </thead>
          <tbody>
            {MATERIAL_ITEMS.map((item) => (
              <tr key={item}>
                <th scope="row">{ITEM_NAMES[item]}</th>
                <td class="number">
                  {item === 'cable'
                    ? `${formatNumber(cable)} ${symbolOf('length', units)}`
                    : formatNumber(need[item])}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
    </>
  );
}
