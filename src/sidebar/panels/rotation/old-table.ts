/** The rotation table that stands in the file already, if any. */

import { cellOnTab } from '../../../../shared/block/cell-on-tab';
import { ROTATION_NAME } from '../../../../shared/block/own-words';
import { cut, cutBlock } from '../../../../shared/block/read-block';
import type { BlockInfo, TabContent } from '../../../../shared/contract';
import { areasBeside } from '../../../../shared/lists/found-lists';
import type { OldRotation } from '../../../../shared/table/model';
import { readRotation } from '../../../../shared/table/read-rotation';
import { widenedBlock } from '../../../../shared/table/widened-block';
import { areaFingerprint } from '../../../../shared/tasks/area-fingerprint';
import type { Book } from '../../parts/use-book';

export interface OldTable {
  /** The block and the columns that the grower began right beside it. */
  readonly info: BlockInfo;
  /** How many columns those are. */
  readonly adopted: number;
  /** Column of its memory, and the stamp there; absent in a table of version 0.1.0. */
  readonly memory: { readonly column: number; readonly stamp: string } | undefined;
  /** The whole rectangle that is written over. */
  readonly area: BlockInfo;
  /** A filled cell further right, which does not move along. */
  readonly apart: string | undefined;
  readonly rotation: OldRotation;
  /** Texts of its first column from the top. */
  readonly firstColumn: readonly string[];
  /** What the script must still find there when it writes over it. */
  readonly fingerprint: string;
}

export function oldTable(book: Book): OldTable | undefined {
  const named = book.overview.blocks.find(({ name }) => name === ROTATION_NAME);
  const tab = book.tabs.find(({ name }) => name === named?.tab);
  if (!named || !tab) return undefined;
  const block = cutBlock(tab, named);
  const memory = block.memory && {
    column: block.info.column + block.info.columns,
    stamp: block.memory.stamp,
  };
  // Columns that the grower began right beside the table stand beyond its memory: read as if that were not there.
  const table = memory ? withoutColumn(tab, memory.column) : tab;
  const { info, apart } = widenedBlock(table, block.info, areasBeside(book, ROTATION_NAME));
  const area = memory ? { ...info, columns: info.columns + 1 } : info;
  const { values } = cut(table, info);
  return {
    info,
    adopted: info.columns - block.info.columns,
    memory,
    area,
    apart: apart && cellOnTab(tab.name, apart.row, apart.column + (memory ? 1 : 0)),
    rotation: readRotation(table, info),
    firstColumn: values.map(([first = '']) => (typeof first === 'string' ? first : '')),
    fingerprint: areaFingerprint(book, area),
  };
}

function withoutColumn(tab: TabContent, column: number): TabContent {
  const less = <Cell>(rows: readonly (readonly Cell[])[]): Cell[][] =>
    rows.map((row) => row.filter((_, c) => c !== column - 1));
  return { ...tab, values: less(tab.values), formulas: less(tab.formulas) };
}
