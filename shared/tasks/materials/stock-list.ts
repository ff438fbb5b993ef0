/**
 * What the grower has on hand by a list in the own file: items, how many, length, price, somewhere on a tab. It is known by
 * a heading for how many and by a column below it that names at least two of our items.
 */

import type { Book } from '../../block/book';
import type { WireCell } from '../../contract';
import { headingUnit } from '../../lists/heading-unit';
import { withoutBlocks } from '../../lists/own-headings';
import { decimalComma } from '../../locale/decimal-comma';
import { readAmount } from '../../locale/read-amount';
import { LIST_UNITS, unitOfText } from '../../units/unit-words';
import { fromInside, type UnitSystem } from '../../units/units';
import { ITEM_NAMES, itemWith, type TypedItem } from './item-rows';
import type { MaterialItem } from './material-needs';
import type { MaterialsKey } from './materials-settings';
import * as words from './words';

export interface StockList {
  /** By the item's name, as typed cells. */
  readonly items: ReadonlyMap<string, TypedItem>;
  /** What the rows say of nets, rolls and energizers, in cell units. */
  readonly settings: Readonly<Partial<Record<MaterialsKey, number>>>;
  readonly tab: string;
  /** Its rows of energizers, with their joules where the name says them. */
  readonly energizers: readonly Pick<StockRow, 'name' | 'count' | 'price' | 'joules'>[];
  /** Rows that were not counted, and why. */
  readonly notes: readonly string[];
}

/** How growers call a column, in English and German. Judgement. */
const COLUMNS = {
  count:
    /^(how many|on hand|in stock|stock|have|qty|quantity|count|number|pieces|pcs|anzahl|stück|menge|vorrat)\b/i,
  price: /price|paid|cost|\$|€|preis|kosten|bezahlt/i,
  length: /length|long\b|länge/i,
} as const;
type Column = keyof typeof COLUMNS;

/** How growers call an item; the first that fits. Judgement. */
const ITEM_WORDS: readonly (readonly [MaterialItem, RegExp])[] = [
  ['nets', /\bnets?\b|netting|netz/i],
  ['gateHandles', /gate handle|torgriff/i],
  ['insulators', /insulator|isolator/i],
  ['clamps', /clamp|erdklemme/i],
  ['rods', /\b(ground|earth)(ing)?[ -](rod|stake|spike)|erdstab|erdspie/i],
  ['cornerPosts', /\b(corner|wood|t)[ -]?posts?\b|eckpf/i],
  ['linePosts', /\b(posts?|stakes?)\b|pfahl|pfähl|pfosten/i],
  ['reels', /^((empty|spare|geared|winding) )*reels?\b|haspel/i],
  ['rolls', /polywire|poly wire|polytape|twine|\bwire\b|litze|draht/i],
  ['signs', /\bsigns?\b|schild/i],
  ['tester', /tester|voltmeter|prüfer/i],
  ['energizer', /energi[sz]er|fencer|charger|weidezaungerät|stromgerät/i],
];

/** The setting that a length in the row of an item says. */
const LENGTH_OF: Partial<Record<MaterialItem, MaterialsKey>> = {
  nets: 'netLength',
  rolls: 'rollLength',
  rods: 'rodLength',
};
/** A rod's length in its name, as in “1 m earth rods”; of a net it may be the height. */
const ROD_IN_NAME = /\d+(?:[.,]\d+)?\s*(?:m|cm|ft|feet|foot)\b/i;

interface StockRow {
  readonly item: MaterialItem;
  readonly name: string;
  readonly count: number;
  readonly price: number | undefined;
  /** In cell units. */
  readonly length: number | undefined;
  readonly joules: number | undefined;
}

/** The first such list outside our tables; undefined where there is none. */
export function stockList(book: Book, units: UnitSystem): StockList | undefined {
  const comma = decimalComma(book.overview.locale);
  for (const { name: tab, values } of book.tabs) {
    const own = book.overview.blocks.filter((block) => block.tab === tab);
    const rows = values.map((row, r) => withoutBlocks(row, r + 1, own));
    const head = rows.findIndex(
      (row, r) => columnAt(row, 'count') >= 0 && itemColumn(rows.slice(r + 1)) !== undefined,
    );
    const below = rows.slice(head + 1);
    const items = itemColumn(below) ?? 0;
    const stock = below.flatMap((row) => stockRow(rows[head] ?? [], row, items, units, comma));
    if (head >= 0 && stock.length > 0) return taken(stock, tab);
  }
  return undefined;
}

function columnAt(row: readonly WireCell[], column: Column): number {
  return row.findIndex((cell) => typeof cell === 'string' && COLUMNS[column].test(cell.trim()));
}

const FEWEST_ITEMS = 2;

/** The column whose cells name the most of our items; undefined where none names enough. */
function itemColumn(rows: readonly (readonly WireCell[])[]): number | undefined {
  const width = Math.max(0, ...rows.map((row) => row.length));
  const named = Array.from(
    { length: width },
    (_, c) => new Set(rows.flatMap((row) => itemOf(row[c]) ?? [])).size,
  );
  const most = Math.max(0, ...named);
  return most < FEWEST_ITEMS ? undefined : named.indexOf(most);
}

function itemOf(cell: WireCell | undefined): MaterialItem | undefined {
  return typeof cell === 'string' ? ITEM_WORDS.find(([, words]) => words.test(cell.trim()))?.[0] : undefined;
}

function stockRow(
  head: readonly WireCell[],
  row: readonly WireCell[],
  items: number,
  units: UnitSystem,
  comma: boolean,
): StockRow[] {
  const cell = (column: Column): WireCell => row[columnAt(head, column)] ?? '';
  const name = String(row[items] ?? '').trim();
  const item = itemOf(name);
  const count = amountIn(cell('count'), comma);
  if (item === undefined || count === undefined) return [];
  const joules = /(\d+(?:[.,]\d+)?)\s*(?:j\b|joule)/i.exec(name)?.[1];
  return [
    {
      item,
      name,
      count,
      price: amountIn(cell('price'), comma),
      length:
        lengthIn(cell('length'), String(head[columnAt(head, 'length')] ?? ''), units, comma) ??
        lengthIn((item === 'rods' && ROD_IN_NAME.exec(name)?.[0]) || '', '', units, comma),
      joules: joules === undefined ? undefined : Number(joules.replace(',', '.')),
    },
  ];
}

/** The one number of a cell, with or without a sign of money or a unit; above or equal 0. */
function amountIn(cell: WireCell, comma: boolean): number | undefined {
  if (typeof cell === 'number') return cell >= 0 ? cell : undefined;
  if (typeof cell !== 'string') return undefined;
  const [typed, ...more] = cell.match(/\d[\d.,]*/g) ?? [];
  const read = typed === undefined || more.length > 0 ? undefined : readAmount(typed, comma);
  return read && 'value' in read ? read.value : undefined;
}

function lengthIn(cell: WireCell, heading: string, units: UnitSystem, comma: boolean): number | undefined {
  const amount = amountIn(cell, comma);
  const behind = typeof cell === 'string' ? unitOfText(cell.replace(/[\d.,\s]+/g, ''), true) : undefined;
  const unit = behind ?? headingUnit(heading, 'length');
  if (amount === undefined || unit === undefined || amount === 0) return amount || undefined;
  return fromInside(amount * LIST_UNITS[unit].factor, 'length', units);
}

function taken(rows: readonly StockRow[], tab: string): StockList {
  const items = new Map<string, TypedItem>();
  const settings: Partial<Record<MaterialsKey, number>> = {};
  const notes: string[] = [];
  for (const [item] of ITEM_WORDS) {
    const [first, ...more] = rows.filter((row) => row.item === item);
    if (!first) continue;
    // A net, roll or rod of another length is none of those that are counted.
    const isCounted = (row: StockRow): boolean =>
      LENGTH_OF[item] === undefined || row.length === first.length;
    const others = more.filter((row) => !isCounted(row));
    notes.push(...others.map(({ name }) => `“${name}” is of another length and is not counted.`));
    const count = [first, ...more.filter(isCounted)].reduce((sum, row) => sum + row.count, 0);
    items.set(
      ITEM_NAMES[item],
      itemWith({ onHand: count, ...(first.price !== undefined && { price: first.price }) }),
    );
    const key = LENGTH_OF[item];
    if (key && first.length !== undefined) settings[key] = first.length;
  }
  const energizers = rows.filter(({ item }) => item === 'energizer');
  const joules = energizers.flatMap((row) => row.joules ?? []);
  if (joules.length > 0) settings.energizerJoules = Math.max(...joules);
  return { items, settings, tab, energizers, notes };
}

/** Without the energizers that put out less than the fence takes: they cannot feed it. */
export function withEnoughJoules(stock: StockList, needed: number): StockList {
  const isWeak = ({ joules = needed }: { readonly joules: number | undefined }): boolean =>
    joules < needed - 1e-9;
  const weak = stock.energizers.filter(isWeak);
  if (weak.length === 0) return stock;
  const enough = stock.energizers.filter((row) => !isWeak(row));
  const price = enough[0]?.price;
  const onHand = enough.reduce((sum, { count }) => sum + count, 0);
  return {
    ...stock,
    items: new Map(stock.items).set(
      ITEM_NAMES.energizer,
      itemWith({ onHand, ...(price !== undefined && { price }) }),
    ),
    notes: [...stock.notes, ...weak.map(({ name }) => words.tooWeak(name, needed))],
  };
}
