/** Private things outside the known columns: lines kept from earlier tables, columns of the grower's, own remarks. */

import { headingRow } from '../../block/heading-row';
import { isFilled } from '../../block/is-filled';
import { ROTATION_NAME } from '../../block/own-words';
import type { BlockContent } from '../../block/read-block';
import { columnOfHeading } from '../../table/columns';
import { settingsTitleRow } from '../../table/read-settings';
import { ITEM_HEADINGS, ITEM_NAMES, TOTAL_LABEL } from '../materials/item-rows';
import { MATERIALS_BLOCK } from '../materials/materials-block';
import { KEPT_BELOW } from '../merge/words';

/** Cells of one column, from 0 within the block, that are cleared together. */
export interface ExtraCells {
  readonly what: string;
  readonly column: number;
  readonly rows: readonly number[];
}

export function privateExtras(block: BlockContent): readonly ExtraCells[] {
  if (block.info.name === ROTATION_NAME) {
    return [...warnings(block), ...keptLines(block), ...ownColumns(block)];
  }
  return [...keptLines(block), ...(block.info.name === MATERIALS_BLOCK ? ownRemarks(block) : [])];
}

function rowsUntil(block: BlockContent, first: number, end: number, column: number): number[] {
  const rows = Array.from({ length: Math.max(0, end - first) }, (_, i) => first + i);
  return rows.filter((row) => isFilled(block, row, column));
}

/** Title and hint stand above them. */
const FIRST_WARNING_ROW = 2;

/** What the plan has to say, and what was typed beside it. */
function warnings(block: BlockContent): ExtraCells[] {
  const end = headingRow(block.values, MOVES);
  return (block.values[0] ?? []).flatMap((_, column) => {
    const rows = rowsUntil(block, column === 0 ? FIRST_WARNING_ROW : 0, end, column);
    return rows.length === 0 ? [] : [{ what: 'What stands above the moves', column, rows }];
  });
}

const MOVES = ['Group', 'Paddock', 'Moved in'];

/** Titles over what had no place in a table any more: now, and in rotation tables of version 0.1.0. */
const KEPT_TITLES: readonly unknown[] = [KEPT_BELOW, 'Kept from earlier tables'];

function keptLines(block: BlockContent): ExtraCells[] {
  const at = block.values.findIndex(([first]) => KEPT_TITLES.includes(first));
  const settings = settingsTitleRow(block);
  const end = settings > at ? settings : block.values.length;
  return (block.values[at] ?? []).flatMap((_, column) => {
    const rows = rowsUntil(block, at + 1, end, column);
    return rows.length === 0 ? [] : [{ what: `“${block.values[at]![0]}”`, column, rows }];
  });
}

function ownColumns(block: BlockContent): ExtraCells[] {
  const at = headingRow(block.values, MOVES);
  const end = settingsTitleRow(block);
  return (block.values[at] ?? []).flatMap((heading, column) => {
    if (typeof heading === 'string' && columnOfHeading(heading) !== undefined) return [];
    const rows = rowsUntil(block, at + 1, end > at ? end : block.values.length, column);
    const name = heading === '' ? 'A column of yours' : `“${String(heading)}”, a column of yours`;
    return rows.length === 0 ? [] : [{ what: `${name} in the moves`, column, rows }];
  });
}

function ownRemarks(block: BlockContent): ExtraCells[] {
  const at = headingRow(block.values, ITEM_HEADINGS);
  const end = block.values.findIndex((row) => row[0] === TOTAL_LABEL);
  const column = block.values[at]?.indexOf('How it is counted') ?? -1;
  const ours: readonly unknown[] = Object.values(ITEM_NAMES);
  if (at < 0 || column < 0) return [];
  const rows = rowsUntil(block, at + 1, end, column).filter((row) => !ours.includes(block.values[row]![0]));
  return rows.length === 0
    ? []
    : [{ what: 'Remarks beside items of yours in the fence materials', column, rows }];
}
