/** Reads a materials list that stands already, so that a rebuild keeps what was typed there. */
import { cellA1 } from '../../block/a1';
import { headingRow } from '../../block/heading-row';
import { type BlockContent, type TableRow, tableRows } from '../../block/read-block';
import type { BlockCell, WireCell } from '../../contract';
import { describeWire } from '../../lists/read-list-cell';
import { keptCell } from '../kept-cell';
import { type KeptRow, rowsBetween, textOf } from '../rows-between';
import { readSettings, type SettingsRead } from '../settings';
import {
  COMPARISON_HEADINGS,
  COMPARISON_SETTINGS,
  type ComparisonKey,
  FIXED_HEADINGS,
  KINDS,
  YEARLY_INPUT_LABELS,
} from './comparison-model';
import { FENCE_WORDS, type FenceKind } from './fence-types';
import { ITEM_HEADINGS, ITEM_NAMES, type OwnItem, TOTAL_LABEL, type TypedItem } from './item-rows';
import type { Touching } from './layout';
import { GRID_SETTINGS, type GridKey } from './layout-rows';
import { TOUCHING_LABEL, TOUCHING_WORDS } from './list-rows';
import type { AtATime } from './material-needs';
import { AT_A_TIME_LABEL, KIND_LABEL, type MaterialsTyped } from './materials-block';
import { MATERIALS_SETTINGS, type MaterialsKey } from './materials-settings';

export const NOTHING_TYPED: MaterialsTyped = {
  items: new Map(),
  own: [],
  fixed: new Map(),
  yearly: new Map(),
};

export interface MaterialsRead {
  readonly typed: MaterialsTyped;
  readonly settings: SettingsRead<MaterialsKey>;
  readonly comparison: SettingsRead<ComparisonKey>;
  readonly atATime: AtATime | undefined;
  readonly kind: FenceKind | undefined;
  /** The grid, where the block was made of one. */
  readonly grid: SettingsRead<GridKey>;
  readonly touching: Touching | undefined;
  /** What hides where the items end, with its cell. */
  readonly problems: readonly string[];
}

export function readMaterials(block: BlockContent): MaterialsRead {
  const ours = new Set(Object.values(ITEM_NAMES));
  const rows = rowsBetween(block, ITEM_HEADINGS, TOTAL_LABEL).filter((row) => !row.emptyUnder(OWN_COLUMNS));
  const nameOf = (row: KeptRow): string => textOf(row.kept('Item'));
  // A second row of the same name is the grower's own: each keeps its stock and price.
  const isOurs = (row: KeptRow): boolean =>
    ours.has(nameOf(row)) && rows.find((other) => nameOf(other) === nameOf(row)) === row;
  return {
    typed: {
      items: new Map(rows.filter(isOurs).map((row) => [nameOf(row), typedItem(row)])),
      own: rows.filter((row) => !isOurs(row)).map(ownItem),
      fixed: new Map((tableRows(block, FIXED_HEADINGS) ?? []).map((row) => [fixedKey(row), typedFixed(row)])),
      yearly: new Map(
        (tableRows(block, COMPARISON_HEADINGS) ?? [])
          .filter((row) => YEARLY_INPUT_LABELS.includes(String(row.value('Comparison'))))
          .map((row) => [String(row.value('Comparison')), KINDS.map((kind) => kept(row, kind))]),
      ),
    },
    settings: readSettings(block, MATERIALS_SETTINGS),
    comparison: readSettings(block, COMPARISON_SETTINGS),
    atATime: readAtATime(block),
    kind: keyOf(FENCE_WORDS, beside(block, KIND_LABEL)),
    grid: readSettings(block, GRID_SETTINGS),
    touching: keyOf(TOUCHING_WORDS, beside(block, TOUCHING_LABEL)),
    problems: totalProblems(block),
  };
}

/** Without its label the total would be taken for an item. */
function totalProblems({ info, values, formulas }: BlockContent): string[] {
  const head = headingRow(values, ITEM_HEADINGS);
  const cost = values[head]?.indexOf('Cost') ?? -1;
  const at = formulas.findIndex((row, r) => r > head && row[cost]?.startsWith('=SUM('));
  if (head < 0 || at < 0 || values[at]?.[0] === TOTAL_LABEL) return [];
  const cell = `${info.tab}!${cellA1(info.row + at, info.column)}`;
  return [`${cell} must be “${TOTAL_LABEL}”, got ${describeWire(values[at]?.[0] ?? '')}`];
}

function kept(row: TableRow, heading: string): BlockCell {
  return keptCell(row.value(heading), row.formula(heading));
}

function typedItem(row: KeptRow): TypedItem {
  const amount = (heading: string, key: 'need' | 'onHand' | 'price') => {
    const value = row.value(heading);
    return typeof value === 'number' ? { [key]: value } : {};
  };
  return {
    onHand: row.kept('On hand'),
    price: row.kept('Unit price'),
    amounts: { ...amount('Need', 'need'), ...amount('On hand', 'onHand'), ...amount('Unit price', 'price') },
  };
}

const OWN_COLUMNS = ['Item', 'Need', 'Unit', 'On hand', 'Unit price', 'How it is counted'];

function ownItem(row: KeptRow): OwnItem {
  return {
    ...typedItem(row),
    item: row.kept('Item'),
    need: row.kept('Need'),
    unit: row.kept('Unit'),
    note: row.kept('How it is counted'),
  };
}

function fixedKey(row: TableRow): string {
  return `${row.value('Fence')}|${row.value('Fixed fence item')}`;
}

/** A quantity with a formula is ours and is counted anew; one without was typed. */
function typedFixed(row: TableRow): { quantity?: BlockCell; price: BlockCell } {
  const price = kept(row, 'Price each');
  return row.formula('Quantity') === '' && row.value('Quantity') !== ''
    ? { quantity: kept(row, 'Quantity'), price }
    : { price };
}

function readAtATime(block: BlockContent): AtATime | undefined {
  const cell = beside(block, AT_A_TIME_LABEL);
  if (cell === 'all') return { kind: 'all' };
  return typeof cell === 'number' && cell >= 1 ? { kind: 'set', paddocks: cell } : undefined;
}

function beside({ values }: BlockContent, label: string): WireCell | undefined {
  return values.find((row) => row[0] === label)?.[1];
}

/** The choice that the table names by its words. */
function keyOf<Key extends string>(
  words: Readonly<Record<Key, string>>,
  cell: WireCell | undefined,
): Key | undefined {
  return (Object.keys(words) as Key[]).find((key) => words[key] === cell);
}
