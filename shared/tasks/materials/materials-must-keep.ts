import { headingRow } from '../../block/heading-row';
import type { BlockContent } from '../../block/read-block';
import type { WireCell } from '../../contract';
import { isMemory } from '../../lists/list-memory';
import { readSettings } from '../settings';
import { rowOfLabel, withoutOwn } from '../without-own';
import { FIGURES_TITLE, HEIGHTS_LABEL } from './figure-rows';
import { LAYOUT_TITLE } from './layout-formulas';
import { GRID_FENCE_LABEL, GRID_SETTINGS } from './layout-rows';
import { LIST_HEADINGS } from './list-rows';
import { AT_A_TIME_LABEL } from './materials-block';
import { MATERIALS_SETTINGS } from './materials-settings';
import { materialsWords } from './materials-variants';

/** Label, value, unit and note of a setting. */
const LABELLED = (column: number): boolean => column <= 3;
/** The words beside a figure; the figure itself is a formula. */
const WORDS = (column: number): boolean => column <= 3 && column !== 1;

const IN_VALUES = (column: number): boolean => column === 1;
/** Sides and posts, added up and less those that are shared. */
const SUM_OF_SIDES = /^=(?:\$?[A-Z]{1,3}\$?\d+|MIN|ROUNDUP|[\d+\-*/^();,])+$/;

const isNumber = (value: WireCell): boolean => typeof value === 'number';
/** A name that is not in the list any more has no figures. */
const isFigure = (value: WireCell): boolean => isNumber(value) || String(value).startsWith('#');

/** What of a materials list must not get lost: all but the layout, which the sidebar has read and may change. */
export function materialsMustKeep(old: BlockContent): BlockContent {
  const atATime = rowOfLabel(old, AT_A_TIME_LABEL);
  const strands = readSettings(old, MATERIALS_SETTINGS).values.strands ?? 0;
  const words = materialsWords();
  const isOurs = (value: WireCell): boolean => typeof value === 'string' && words.has(value);
  const figures = rowOfLabel(old, FIGURES_TITLE);
  const listHead = headingRow(old.values, LIST_HEADINGS);
  const list = listRows(old, listHead);
  const layout = { firstRow: rowOfLabel(old, LAYOUT_TITLE), endRow: listHead < 0 ? figures : listHead };
  return withoutOwn(old, [
    { firstRow: atATime, endRow: atATime + 1, columns: LABELLED, isOurs },
    { firstRow: atATime, endRow: atATime + 1, columns: IN_VALUES, isOurs: isNumber },
    { ...layout, columns: LABELLED, isOurs: (value) => isOurs(value) || isMemory(value) },
    ...GRID_SETTINGS.map(({ label }) => ({ ...rowOf(old, label), columns: IN_VALUES, isOurs: isNumber })),
    { ...rowOf(old, GRID_FENCE_LABEL), columns: (column) => column === 2 || column === 3, isOurs: isNumber },
    {
      firstRow: figures,
      endRow: rowOfLabel(old, 'Compared with fixed fence'),
      columns: WORDS,
      isOurs,
    },
    { ...rowOf(old, HEIGHTS_LABEL), columns: (column) => column > 0 && column <= strands, isOurs: isNumber },
    { ...headingCells(old), isOurs },
    { ...list, columns: (column) => column === 0, isOurs: (value) => typeof value === 'string' },
    { ...list, columns: (column) => column > 0 && column <= 3, isOurs: isFigure },
    {
      ...list,
      columns: (column) => column > 3 && column < LIST_HEADINGS.length,
      isOurs: (_, formula) => SUM_OF_SIDES.test(formula),
      manyFormulas: true,
    },
  ]);
}

function rowOf(old: BlockContent, label: string) {
  const firstRow = rowOfLabel(old, label);
  return { firstRow, endRow: firstRow + 1 };
}

/** Every paddock of the list has a formula for its posts. */
function listRows({ values, formulas }: BlockContent, head: number) {
  const firstRow = head < 0 ? values.length : head + 1;
  const count = formulas.slice(firstRow).findIndex((row) => !row[POSTS_COLUMN]);
  return { firstRow, endRow: count < 0 ? values.length : firstRow + count };
}

const POSTS_COLUMN = LIST_HEADINGS.indexOf('Posts round it');

/** The list's headings and the row of units above them. */
function headingCells(old: BlockContent) {
  const at = headingRow(old.values, LIST_HEADINGS);
  return {
    firstRow: at < 0 ? old.values.length : at - 1,
    endRow: at + 1,
    columns: (column: number) => column < LIST_HEADINGS.length,
  };
}
