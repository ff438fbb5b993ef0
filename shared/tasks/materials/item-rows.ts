/** The list itself: need, on hand, to buy, price, cost. */
import { BLANK, formula, number, text } from '../../block/cells';
import type { BlockCell, BlockStyle } from '../../contract';
import { symbolOf, type UnitSystem } from '../../units/units';
import type { Draft } from '../draft-block';
import { type FenceKind, fenceType } from './fence-types';
import { type NeedsOn, needOf } from './item-needs';
import { MATERIAL_ITEMS, type MaterialItem } from './material-needs';

export const ITEM_HEADINGS = [
  'Item',
  'Need',
  'Unit',
  'On hand',
  'To buy',
  'Unit price',
  'Cost',
  'How it is counted',
] as const;

export const TOTAL_LABEL = 'To buy, together';

export const ITEM_NAMES: Readonly<Record<MaterialItem, string>> = {
  nets: 'Nets',
  linePosts: 'Line posts',
  cornerPosts: 'Corner and junction posts',
  guys: 'Guy lines with pegs',
  rolls: 'Rolls of wire',
  reels: 'Reels',
  insulators: 'Insulators',
  gateHandles: 'Gate handles',
  signs: 'Warning signs, yellow',
  energizer: 'Energizer',
  rods: 'Ground rods',
  clamps: 'Ground rod clamps',
  cable: 'High-voltage cable',
  tester: 'Fence tester',
};

/** What an item is counted in. */
const ITEM_UNITS: Partial<Record<MaterialItem, string>> = {
  nets: 'nets',
  linePosts: 'posts',
  cornerPosts: 'posts',
  rolls: 'rolls',
  reels: 'reels',
  signs: 'signs',
  rods: 'rods',
};

export function itemUnit(item: MaterialItem, units: UnitSystem): string {
  return item === 'cable' ? symbolOf('length', units) : (ITEM_UNITS[item] ?? 'each');
}

/** What was typed for an item. */
export interface TypedItem {
  readonly onHand: BlockCell;
  readonly price: BlockCell;
  /** The numbers that those cells come to. */
  readonly amounts: Readonly<Partial<Record<'need' | 'onHand' | 'price', number>>>;
}

export function itemWith(amounts: { readonly onHand?: number; readonly price?: number }): TypedItem {
  const cell = (amount: number | undefined): BlockCell => (amount === undefined ? BLANK : number(amount));
  return { onHand: cell(amounts.onHand), price: cell(amounts.price), amounts };
}

/** A row that the grower added, typed throughout. */
export interface OwnItem extends TypedItem {
  readonly item: BlockCell;
  readonly need: BlockCell;
  readonly unit: BlockCell;
  readonly note: BlockCell;
}

/** Rows left free for the grower's own items. */
export const FREE_ROWS = 4;

const STYLES: readonly BlockStyle[] = [
  'plain',
  'plain',
  'muted',
  'input',
  'plain',
  'input',
  'plain',
  'muted',
];
const OWN_STYLES: readonly BlockStyle[] = [
  'input',
  'input',
  'input',
  'input',
  'plain',
  'input',
  'plain',
  'input',
];

export interface ItemRows {
  /** Cost of all that is needed, on hand or not, as a formula body. */
  readonly newCost: string;
  /** Items that have no price, as a formula body. */
  readonly unpriced: string;
}

interface ItemsOn extends NeedsOn {
  readonly draft: Draft;
  readonly units: UnitSystem;
}

/** Those of the kind of fence, and those of another kind for which something was typed. */
export function itemsOf(kind: FenceKind, typed: ReadonlyMap<string, TypedItem>): readonly MaterialItem[] {
  return MATERIAL_ITEMS.filter((item) => {
    const cells = typed.get(ITEM_NAMES[item]);
    const isTyped = cells !== undefined && (cells.onHand.k !== 'blank' || cells.price.k !== 'blank');
    return isTyped || fenceType(kind).items.includes(item);
  });
}

/** How many rows addItems() makes. */
export function itemRowCount(items: number, own: number): number {
  return 1 + items + own + FREE_ROWS + 2;
}

export function addItems(
  on: ItemsOn,
  items: readonly MaterialItem[],
  typed: ReadonlyMap<string, TypedItem>,
  own: readonly OwnItem[],
): ItemRows {
  const { draft } = on;
  draft.add(ITEM_HEADINGS.map(text), 'heading');
  const first = draft.next();
  for (const item of items) addItem(item, on, typed.get(ITEM_NAMES[item]));
  const free = Array.from({ length: FREE_ROWS }, () => undefined);
  for (const row of [...own, ...free]) addOwn(draft, row);
  const last = draft.next() - 1;
  const column = (at: number): string => draft.down(first, last, at);
  draft.add(
    [
      text(TOTAL_LABEL),
      ...Array(5).fill(BLANK),
      formula(`=IF(COUNT(${column(6)})=0;"";SUM(${column(6)}))`, '#,##0.00'),
    ],
    'heading',
  );
  draft.add(
    [
      text('To buy, but without a price'),
      ...Array(5).fill(BLANK),
      formula(`=SUMPRODUCT((${column(0)}<>"")*(${column(4)}>0)*(${column(5)}=""))`, '0'),
    ],
    'muted',
  );
  return {
    newCost: `SUMPRODUCT(${column(1)};${column(5)})`,
    unpriced: `SUMPRODUCT((${column(0)}<>"")*(${column(1)}>0)*(${column(5)}=""))`,
  };
}

function addItem(item: MaterialItem, on: ItemsOn, typed: TypedItem | undefined): void {
  const row = on.draft.next();
  const { need, note } = needOf(item, on);
  const cells: BlockCell[] = [
    text(ITEM_NAMES[item]),
    formula(`=${need}`, '0'),
    text(itemUnit(item, on.units)),
    typed?.onHand ?? BLANK,
    formula(`=MAX(0;${on.draft.at(row, 1)}-${on.draft.at(row, 3)})`, '0'),
    typed?.price ?? BLANK,
    formula(costFormula(on.draft, row), '#,##0.00'),
    text(note),
  ];
  on.draft.add(cells, STYLES);
}

function addOwn(draft: Draft, own: OwnItem | undefined): void {
  const row = draft.next();
  const item = draft.at(row, 0);
  const cells: BlockCell[] = [
    own?.item ?? BLANK,
    own?.need ?? BLANK,
    own?.unit ?? BLANK,
    own?.onHand ?? BLANK,
    formula(`=IF(${item}="";"";MAX(0;${draft.at(row, 1)}-${draft.at(row, 3)}))`, '0'),
    own?.price ?? BLANK,
    formula(costFormula(draft, row), '#,##0.00'),
    own?.note ?? BLANK,
  ];
  draft.add(cells, OWN_STYLES);
}

function costFormula(draft: Draft, row: number): string {
  const [toBuy, price] = [draft.at(row, 4), draft.at(row, 5)];
  return `=IF(OR(${toBuy}="";${price}="");"";${toBuy}*${price})`;
}
