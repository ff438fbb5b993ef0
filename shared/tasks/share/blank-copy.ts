import type { Book } from '../../block/book';
import { cutBlock, wholeOf } from '../../block/read-block';
import { stretches } from '../../block/stretches';
import type { BlockInfo, ClearInCopy } from '../../contract';
import { listArea } from '../../lists/list-area';
import { rowKind } from '../../lists/list-rows';
import type { FoundList } from '../../lists/model';
import { startUnits } from '../../lists/start-units';
import { areaFingerprint } from '../area-fingerprint';
import { growerLists } from '../grower-lists';
import { readyCells } from '../training/ready-cells';
import { isMark } from './original-mark';

/** What goes for a copy that somebody else begins with. */
export interface BlankCopy extends Pick<ClearInCopy, 'rows' | 'tables'> {
  /** Cells of ours in the grower's lists: without our tables they are errors. */
  readonly lookups: ClearInCopy['rows'];
  /** Tabs with tables of ours, and with lists. */
  readonly tableTabs: readonly string[];
  readonly listTabs: readonly string[];
}

/**
 * All tables of ours, and the rows of the two lists: their headings, their totals and all else stay. The mark goes last:
 * until then the file is known as a copy, so that what was cut short can be done again.
 */
export function blankCopy(book: Book): BlankCopy {
  const { blocks } = book.overview;
  const ordered = [...blocks.filter((block) => !isMark(block)), ...blocks.filter(isMark)];
  const tables = ordered.flatMap((info) => {
    const tab = book.tabs.find(({ name }) => name === info.tab);
    return tab ? [emptied(book, wholeOf(cutBlock(tab, info)))] : [];
  });
  const { chosen } = growerLists(book, startUnits(book));
  const lists = Object.values(chosen).filter((list) => list !== undefined);
  const rows = lists.flatMap((list) => listRowsOf(book, list)).map((area) => emptied(book, area));
  const lookups = readyCells(book).map((cell) => emptied(book, cell));
  return { tables, rows, lookups, tableTabs: tabsOf(tables), listTabs: tabsOf(rows) };
}

function listRowsOf(book: Book, list: FoundList): readonly BlockInfo[] {
  const tab = book.tabs.find(({ name }) => name === list.tab);
  if (!tab) return [];
  const area = listArea(list);
  const all = Array.from({ length: list.lastRow - list.firstRow + 1 }, (_, i) => list.firstRow + i);
  const filled = all.filter((row) => {
    const kind = rowKind({ tab, row: list.headingRow, columns: list.columns }, row);
    return kind === 'item' || kind === 'lone';
  });
  return stretches(filled).map(({ first, count }) => ({ ...area, row: first, rows: count }));
}

function emptied(book: Book, info: BlockInfo): ClearInCopy['tables'][number] {
  const { tab, row, column, rows, columns } = info;
  return { tab, row, column, rows, columns, expects: areaFingerprint(book, info) };
}

/** What is asked of the script. */
export function blankRequest({ tables, rows, lookups }: BlankCopy, withLists: boolean): ClearInCopy {
  return { areas: [], blocks: [], tables: [...tables], rows: [...lookups, ...(withLists ? rows : [])] };
}

function tabsOf(areas: readonly { readonly tab: string }[]): readonly string[] {
  return [...new Set(areas.map(({ tab }) => tab))];
}
