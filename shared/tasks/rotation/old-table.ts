/** The rotation table that stands in the file already, if any. */

import type { Book } from '../../block/book';
import { cellOnTab } from '../../block/cell-on-tab';
import { ROTATION_NAME } from '../../block/own-words';
import { type BlockContent, cut, cutBlock } from '../../block/read-block';
import type { BlockInfo, TabContent } from '../../contract';
import { areasBeside } from '../../lists/found-lists';
import { blockMeaning } from '../../table/block-meaning';
import type { OldRotation } from '../../table/model';
import { readRotation } from '../../table/read-rotation';
import { rememberedRotation } from '../../table/remembered-rotation';
import { widenedBlock } from '../../table/widened-block';
import { areaFingerprint } from '../area-fingerprint';

export interface OldTable {
  readonly info: BlockInfo;
  /** What stands there, with the columns that the grower began right beside it; its memory stands apart. */
  readonly block: BlockContent;
  /** How many such columns there are. */
  readonly adopted: number;
  /** Column of its memory; absent in a table of version 0.1.0. */
  readonly memoryColumn: number | undefined;
  /** The whole rectangle that is written over. */
  readonly area: BlockInfo;
  /** A filled cell further right, which does not move along. */
  readonly apart: string | undefined;
  readonly rotation: OldRotation;
  /** Texts of its first column from the top. */
  readonly firstColumn: readonly string[];
  /** Changes with whatever somebody types, and with nothing else. */
  readonly meaning: string;
  /** What the script must still find there when it writes over it. */
  readonly fingerprint: string;
}

export function oldTable(book: Book): OldTable | undefined {
  const named = book.overview.blocks.find(({ name }) => name === ROTATION_NAME);
  const tab = book.tabs.find(({ name }) => name === named?.tab);
  if (!named || !tab) return undefined;
  const written = cutBlock(tab, named);
  const { memory } = written;
  const memoryColumn = memory && written.info.column + written.info.columns;
  // Columns that the grower began right beside the table stand beyond its memory: read as if that were not there.
  const table = memoryColumn === undefined ? tab : withoutColumn(tab, memoryColumn);
  const { info, apart } = widenedBlock(table, written.info, areasBeside(book, ROTATION_NAME));
  const area = memory ? { ...info, columns: info.columns + 1 } : info;
  const block = rememberedRotation({ ...cut(table, info), ...(memory && { memory }) });
  return {
    info,
    block,
    adopted: info.columns - written.info.columns,
    memoryColumn,
    area,
    apart: apart && cellOnTab(tab.name, apart.row, apart.column + (memory ? 1 : 0)),
    rotation: readRotation(block),
    firstColumn: block.values.map(([first = '']) => (typeof first === 'string' ? first : '')),
    meaning: blockMeaning(block),
    fingerprint: areaFingerprint(book, area),
  };
}

/** Throws where the table in the sheet is no longer the one that the page knows: what was typed since would be missing. */
export function refuseTyped(known: OldTable, now: OldTable | undefined): void {
  if (now?.meaning === known.meaning) return;
  throw new Error(
    `Somebody changed the table on “${known.info.tab}” since the page read it, and the plan here does not know of it. Press “Read the spreadsheet again”, work out the plan and build the table anew. Nothing was written.`,
  );
}

function withoutColumn(tab: TabContent, column: number): TabContent {
  const less = <Cell>(rows: readonly (readonly Cell[])[]): Cell[][] =>
    rows.map((row) => row.filter((_, c) => c !== column - 1));
  return { ...tab, values: less(tab.values), formulas: less(tab.formulas) };
}
