import { fromInside } from '../../units/units';
import { insideSettings } from '../settings';
import { ITEM_NAMES, itemsOf, itemUnit, type TypedItem } from './item-rows';
import type { LayoutFence } from './layout';
import { layoutFence } from './layout-fence';
import { setSize } from './layout-rows';
import { type MaterialItem, type MaterialNeeds, materialNeeds } from './material-needs';
import type { MaterialsPlan, MaterialsTyped } from './materials-block';
import { MATERIALS_SETTINGS, type MaterialsSettings } from './materials-settings';

export interface BuyLine {
  readonly name: string;
  readonly unit: string;
  readonly need: number;
  readonly toBuy: number;
  /** Absent without a price. */
  readonly cost?: number;
}

export interface BuyList extends MaterialNeeds {
  /** In inside units. */
  readonly settings: MaterialsSettings;
  readonly fence: LayoutFence;
  readonly lines: readonly BuyLine[];
  /** Of all that has a price. */
  readonly cost: number;
  /** What is to buy and has none. */
  readonly unpriced: readonly string[];
}

/**
 * What a plan takes, what of it is left to buy and what that costs.
 *
 *   to buy = max(0, need − on hand); cost = to buy × price
 *
 * Prices are the grower's own; none is assumed. Source: definition.
 */
export function buyList(plan: MaterialsPlan, typed: Pick<MaterialsTyped, 'items' | 'own'>): BuyList {
  const { units, kind } = plan;
  const { settings, fence, needs } = planNeeds(plan);
  const whole = (item: MaterialItem): number =>
    item === 'cable' ? Math.ceil(fromInside(needs.need.cable, 'length', units) - 1e-9) : needs.need[item];
  const lines = [
    ...itemsOf(kind, typed.items).map((item) =>
      buyLine(ITEM_NAMES[item], itemUnit(item, units), whole(item), typed.items.get(ITEM_NAMES[item])),
    ),
    ...typed.own.flatMap((own) =>
      own.item.k === 't' && own.amounts.need !== undefined
        ? [buyLine(own.item.v, own.unit.k === 't' ? own.unit.v : '', own.amounts.need, own)]
        : [],
    ),
  ];
  return {
    ...needs,
    settings,
    fence,
    lines,
    cost: lines.reduce((sum, { cost = 0 }) => sum + cost, 0),
    unpriced: lines.filter(({ toBuy, cost }) => toBuy > 0 && cost === undefined).map(({ name }) => name),
  };
}

/** What a plan takes, whatever is on hand. */
export function planNeeds({
  units,
  layout,
  atATime,
  kind,
  settings: typed,
}: Pick<MaterialsPlan, 'units' | 'layout' | 'atATime' | 'kind' | 'settings'>) {
  const settings = insideSettings(MATERIALS_SETTINGS, typed, units);
  const pieces = { postSpacing: settings.postSpacing ?? 1, netLength: settings.netLength ?? 1 };
  const fence = layoutFence(layout, pieces, setSize(atATime));
  return { settings, fence, needs: materialNeeds(fence, atATime, kind, settings) };
}

function buyLine(name: string, unit: string, need: number, typed: TypedItem | undefined): BuyLine {
  const { onHand = 0, price } = typed?.amounts ?? {};
  const toBuy = Math.max(0, need - onHand);
  return { name, unit, need, toBuy, ...(price !== undefined && { cost: toBuy * price }) };
}
