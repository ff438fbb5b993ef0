/** Reads a materials list that stands already, so that a rebuild keeps what was typed there. */
import { cellA1 } from '../../block/a1';
import { headingRow } from '../../block/heading-row';
import { type BlockContent, type TableRow, tableRows } from '../../block/read-block';
import type { BlockCell } from '../../contract';
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
import { ITEM_HEADINGS, ITEM_NAMES, type OwnItem, TOTAL_LABEL, type TypedItem } from './item-rows';
import type { Touching } from './layout';
import { GRID_SETTINGS, type GridKey } from './layout-rows';
import { TOUCHING_LABEL, TOUCHING_WORDS } from './list-rows';
import type { AtATime } from './material-needs';
import { AT_A_TIME_LABEL, type MaterialsTyped } from './materials-block';
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
    grid: readSettings(block, GRID_SETTINGS),
    touching: readTouching(block),
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
  return { onHand: row.kept('On hand'), price: row.kept('Unit price') };
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
  const cell = block.values.find((row) => row[0] === AT_A_TIME_LABEL)?.[1];
  if (cell === 'all') return { kind: 'all' };
  return typeof cell === 'number' && cell >= 1 ? { kind: 'set', paddocks: cell } : undefined;
}

function readTouching(block: BlockContent): Touching | undefined {
  const cell = block.values.find((row) => row[0] === TOUCHING_LABEL)?.[1];
  const kinds = Object.keys(TOUCHING_WORDS) as Touching[];
  return kinds.find((kind) => TOUCHING_WORDS[kind] === cell);
}
