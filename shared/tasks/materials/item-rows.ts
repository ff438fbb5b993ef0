/** The list itself: need, on hand, to buy, price, cost. */
import { BLANK, formula, text } from '../../block/cells';
import type { BlockCell, BlockStyle } from '../../contract';
import type { Draft } from '../draft-block';
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
  linePosts: 'Line posts',
  cornerPosts: 'Corner and junction posts',
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

/** What was typed for an item. */
export interface TypedItem {
  readonly onHand: BlockCell;
  readonly price: BlockCell;
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
}

/** How many rows addItems() makes. */
export function itemRowCount(own: number): number {
  return 1 + MATERIAL_ITEMS.length + own + FREE_ROWS + 2;
}

export function addItems(
  on: ItemsOn,
  typed: ReadonlyMap<string, TypedItem>,
  own: readonly OwnItem[],
): ItemRows {
  const { draft } = on;
  draft.add(ITEM_HEADINGS.map(text), 'heading');
  const first = draft.next();
  for (const item of MATERIAL_ITEMS) addItem(item, on, typed.get(ITEM_NAMES[item]));
  const free = Array.from({ length: FREE_ROWS }, () => undefined);
  for (const row of [...own, ...free]) addOwn(draft, row);
  const last = draft.next() - 1;
  const column = (at: number): string => draft.down(first, last, at);
  draft.add([text(TOTAL_LABEL), ...Array(5).fill(BLANK), formula(`=SUM(${column(6)})`, '0.00')], 'heading');
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
  const { need, unit, note } = needOf(item, on);
  const cells: BlockCell[] = [
    text(ITEM_NAMES[item]),
    formula(`=${need}`, '0'),
    text(unit),
    typed?.onHand ?? BLANK,
    formula(`=MAX(0;${on.draft.at(row, 1)}-${on.draft.at(row, 3)})`, '0'),
    typed?.price ?? BLANK,
    formula(costFormula(on.draft, row), '0.00'),
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
    formula(costFormula(draft, row), '0.00'),
    own?.note ?? BLANK,
  ];
  draft.add(cells, OWN_STYLES);
}

function costFormula(draft: Draft, row: number): string {
  const [toBuy, price] = [draft.at(row, 4), draft.at(row, 5)];
  return `=IF(OR(${toBuy}="";${price}="");"";${toBuy}*${price})`;
}
