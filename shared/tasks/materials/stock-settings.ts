/** On hand and price of each item as fields of the form; in the table they stand in the item's own row. */
import type { UnitSystem } from '../../units/units';
import type { SettingSpec, SettingValues } from '../settings';
import { ITEM_NAMES, itemUnit, itemWith, type TypedItem } from './item-rows';
import { MATERIAL_ITEMS, type MaterialItem } from './material-needs';

const FIELDS = { onHand: 'on hand', price: 'price each' } as const;
type Field = keyof typeof FIELDS;
export type StockKey = `${MaterialItem} ${Field}`;

type Items = ReadonlyMap<string, TypedItem>;

function keyOf(item: MaterialItem, field: Field): StockKey {
  return `${item} ${field}`;
}

export function stockSettings(
  items: readonly MaterialItem[],
  units: UnitSystem,
): readonly SettingSpec<StockKey>[] {
  return items.flatMap((item) =>
    (['onHand', 'price'] as const).map((field) => ({
      key: keyOf(item, field),
      label: `${ITEM_NAMES[item]}: ${FIELDS[field]}`,
      unit: field === 'price' ? 'your money' : itemUnit(item, units),
      min: 0,
      optional: true as const,
      note: '',
    })),
  );
}

/** What the table or the list of stock says. */
export function stockAmounts(items: Items): Partial<SettingValues<StockKey>> {
  const fields = Object.keys(FIELDS) as Field[];
  return Object.fromEntries(
    MATERIAL_ITEMS.flatMap((item) =>
      fields.map((field) => [keyOf(item, field), items.get(ITEM_NAMES[item])?.amounts[field]]),
    ),
  ) as Partial<SettingValues<StockKey>>;
}

/** The items with what was answered; a cell whose amount is the same stays as it was typed, a formula too. */
export function withAmounts(items: Items, values: SettingValues<StockKey>): Items {
  const all = MATERIAL_ITEMS.map((item): [string, TypedItem] => {
    const was = items.get(ITEM_NAMES[item]) ?? itemWith({});
    const [onHand, price] = [values[keyOf(item, 'onHand')], values[keyOf(item, 'price')]];
    const now = itemWith({ ...(onHand !== undefined && { onHand }), ...(price !== undefined && { price }) });
    return [
      ITEM_NAMES[item],
      {
        onHand: was.amounts.onHand === onHand ? was.onHand : now.onHand,
        price: was.amounts.price === price ? was.price : now.price,
        amounts: now.amounts,
      },
    ];
  });
  return new Map(all);
}
