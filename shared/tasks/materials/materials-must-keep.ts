import { headingRow } from '../../block/heading-row';
import type { BlockContent } from '../../block/read-block';
import type { WireCell } from '../../contract';
import { ownTable, rowOfLabel, withoutOwn } from '../without-own';
import { FIGURES_TITLE, HEIGHTS_LABEL } from './figure-rows';
import { LAYOUT_TITLE } from './layout-formulas';
import { LIST_HEADINGS } from './list-rows';
import { AT_A_TIME_LABEL } from './materials-block';
import { materialsWords } from './materials-variants';

/** Label, value, unit and note of a setting. */
const LABELLED = (column: number): boolean => column <= 3;
/** The words beside a figure; the figure itself is a formula. */
const WORDS = (column: number): boolean => column <= 3 && column !== 1;

/** What of a materials list must not get lost: all but the layout, which the sidebar has read and may change. */
export function materialsMustKeep(old: BlockContent): BlockContent {
  const atATime = rowOfLabel(old, AT_A_TIME_LABEL);
  const heights = rowOfLabel(old, HEIGHTS_LABEL);
  const words = materialsWords();
  const isOurs = (value: WireCell): boolean => typeof value !== 'string' || words.has(value);
  return withoutOwn(old, [
    { firstRow: atATime, endRow: atATime + 1, columns: LABELLED, isOurs },
    { firstRow: rowOfLabel(old, LAYOUT_TITLE), endRow: rowOfLabel(old, FIGURES_TITLE), columns: LABELLED },
    {
      firstRow: rowOfLabel(old, FIGURES_TITLE),
      endRow: rowOfLabel(old, 'Compared with fixed fence'),
      columns: WORDS,
      isOurs,
    },
    { firstRow: heights, endRow: heights + 1, columns: () => true },
    { ...headingCells(old), isOurs },
    ownTable(old, LIST_HEADINGS, LIST_HEADINGS, FIGURES_TITLE),
  ]);
}

/** The list's headings and the row of units above them. */
function headingCells(old: BlockContent) {
  const at = headingRow(old.values, LIST_HEADINGS);
  return {
    firstRow: at < 0 ? old.values.length : at - 1,
    endRow: at + 1,
    columns: (column: number) => column < LIST_HEADINGS.length,
  };
}
