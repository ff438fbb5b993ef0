/** Which typed cells of our own tables say something that a stranger need not know. */
import { headingRow } from '../../block/heading-row';
import { MAP_BLOCK, ROTATION_NAME } from '../../block/own-words';
import type { BlockContent } from '../../block/read-block';
import { COVER_HEADING, WEEK_HEADING } from '../../table/picture-block';
import { settingsTitleRow } from '../../table/read-settings';
import { WALK_BLOCK, WALK_HEADINGS } from '../bite/walk-block';
import { BUDGET_BLOCK, LOAD_HEADINGS } from '../budget/budget-block';
import { endLineRow } from '../end-line';
import { HERD_BLOCK, HERD_HEADINGS } from '../herd/herd-block';
import { CORNER_HEADINGS } from '../map/map-block';
import { FIXED_HEADINGS } from '../materials/comparison-model';
import { ITEM_HEADINGS, TOTAL_LABEL } from '../materials/item-rows';
import { MATERIALS_BLOCK } from '../materials/materials-block';
import { PICTURE_BLOCK } from '../season/picture-task';
import { LOG_BLOCK } from '../training/log-block';
import { LOG_HEADINGS, LOG_INPUTS, LOG_REMARKS } from '../training/log-headings';
import { PEN_BLOCK, PEN_HEADINGS } from '../training/pen-block';

export const PRIVATE_KINDS = ['prices', 'logs', 'notes', 'stock', 'place'] as const;
export type PrivateKind = (typeof PRIVATE_KINDS)[number];

export const KIND_WORDS: Readonly<Record<PrivateKind, string>> = {
  prices: 'prices and pay',
  logs: 'logs: what really happened, when, and who saw it',
  notes: 'notes',
  stock: 'what you have on hand',
  place: 'where the farm lies (corners of the map; areas and perimeters go with them)',
};

export interface PrivateColumns {
  readonly block: string;
  /** What the table is called in sentences. */
  readonly table: string;
  /** The heading row holds all of these, units in brackets aside. */
  readonly headings: readonly string[];
  readonly columns: Readonly<Record<string, PrivateKind>>;
  /** Number of the row after the table's last, counted from 0 in the block; the block's end where absent. */
  readonly endRow?: (block: BlockContent) => number;
  /** Single cells beside a label. */
  readonly labels?: Readonly<Record<string, PrivateKind>>;
}

const allAs = (headings: readonly string[], kind: PrivateKind): Record<string, PrivateKind> =>
  Object.fromEntries(headings.map((heading) => [heading, kind]));

const rowOf =
  (label: string) =>
  (block: BlockContent): number =>
    block.values.findIndex((row) => row[0] === label);

const headingRowOf =
  (headings: readonly string[]) =>
  (block: BlockContent): number =>
    headingRow(block.values, headings);

export const PRIVATE_COLUMNS: readonly PrivateColumns[] = [
  {
    block: ROTATION_NAME,
    table: 'the moves',
    headings: ['Group', 'Paddock', 'Moved in'],
    columns: { 'Moved in': 'logs', 'Cover left': 'logs', Note: 'notes' },
    endRow: (block) => settingsTitleRow(block),
  },
  {
    block: PICTURE_BLOCK,
    table: 'the picture of the season',
    headings: [WEEK_HEADING, COVER_HEADING],
    columns: { [COVER_HEADING]: 'logs' },
  },
  {
    block: MATERIALS_BLOCK,
    table: 'the fence materials',
    headings: ITEM_HEADINGS,
    columns: { 'On hand': 'stock', 'Unit price': 'prices' },
    endRow: rowOf(TOTAL_LABEL),
    labels: { 'Pay for an hour of work': 'prices' },
  },
  {
    block: MATERIALS_BLOCK,
    table: 'the comparison of fences',
    headings: FIXED_HEADINGS,
    columns: { 'Price each': 'prices' },
    endRow: headingRowOf(['Comparison']),
  },
  {
    block: HERD_BLOCK,
    table: 'the herd log',
    headings: HERD_HEADINGS,
    // Whole rows: one that keeps its group and has no day keeps every task from going on.
    columns: { ...allAs(['Group', 'Day', 'Head from then on', 'Weight each'], 'logs'), Note: 'notes' },
    endRow: endLineRow,
  },
  {
    block: BUDGET_BLOCK,
    table: 'the budget',
    headings: LOAD_HEADINGS,
    columns: { 'Typed note': 'notes' },
    endRow: rowOf('Settings'),
    labels: { 'Price of feed': 'prices', 'Fence, what it costs this season': 'prices' },
  },
  {
    block: WALK_BLOCK,
    table: 'the fence walks',
    headings: WALK_HEADINGS,
    columns: allAs(['Date', 'Place', 'Volts', 'What was found'], 'logs'),
    endRow: endLineRow,
  },
  {
    block: PEN_BLOCK,
    table: 'the training pen',
    headings: PEN_HEADINGS,
    columns: { 'On hand': 'stock' },
    endRow: (block) => block.values.findIndex((row) => /^Wire heights/.test(String(row[0]))),
  },
  {
    block: LOG_BLOCK,
    table: 'the training log',
    headings: LOG_HEADINGS,
    columns: { ...allAs([...LOG_INPUTS, ...LOG_REMARKS], 'logs'), Note: 'notes' },
    endRow: endLineRow,
  },
  {
    block: MAP_BLOCK,
    table: 'the map',
    headings: ['paddock', 'adjoining', 'note'],
    columns: { note: 'notes' },
    endRow: headingRowOf(CORNER_HEADINGS),
  },
  {
    block: MAP_BLOCK,
    table: 'the map’s corners',
    headings: CORNER_HEADINGS,
    columns: { latitude: 'place', longitude: 'place' },
  },
];
