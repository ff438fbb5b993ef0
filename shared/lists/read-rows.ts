import { cellOnTab } from '../block/cell-on-tab';
import type { TabContent } from '../contract';
import { isBlankCell, rowKind } from './list-rows';
import { plainWords } from './match-heading';
import { missingFields } from './missing-fields';
import { FIELD_LABELS, type GroupField, type GrowerList, type ListProblem, type PaddockField } from './model';
import { isWeightOfAll } from './other-meanings';
import { otherTableNotes } from './other-table-below';
import { nameKey, nameOf, type RowReader } from './read-list-cell';
import { unitDoubts } from './unit-doubts';
import * as words from './words';
import { writingOfList } from './writing-of-list';

/** A row left out because it adds up the others. */
export interface LeftOut {
  readonly cell: string;
  readonly text: string;
}

interface RowsRead<Item> {
  readonly items: Item[];
  readonly readers: RowReader[];
  /** Of rows that gave no item. */
  readonly itemless: RowReader[];
  readonly problems: ListProblem[];
  readonly notes: readonly string[];
  readonly leftOut: LeftOut[];
  readonly unread: ListProblem[];
}

/** Everything the two list readers share: which rows to read, totals, missing columns, units, twins. */
export function readRows<Item extends { name: string }>(
  tab: TabContent,
  list: GrowerList,
  { system, ...locale }: Pick<RowReader, 'system' | 'comma' | 'dates'>,
  readItem: (reader: RowReader) => Item | undefined,
): RowsRead<Item> {
  const problems = missingColumns(tab, list, (locale.dates.weighings?.size ?? 0) > 0);
  const leftOut: LeftOut[] = [];
  const totals: number[] = [];
  const nameColumn = list.columns.name;
  const { notes: unitNotes, ...doubts } = unitDoubts(tab, list, system);
  const notes = [...unitNotes, ...otherTableNotes(tab, list)];
  const items: Item[] = [];
  const readers: RowReader[] = [];
  const itemless: RowReader[] = [];
  const readings: string[] = [];
  const writing = writingOfList(tab, list, locale);
  const unread: ListProblem[] = [];
  const read: RowsRead<Item> = { items, readers, itemless, problems, notes, leftOut, unread };
  if (problems.length > 0 || nameColumn === undefined) return read;
  problems.push(...doubts.problems);
  for (let row = list.firstRow; row <= Math.min(list.lastRow, tab.values.length); row++) {
    const kind = rowKind({ tab, row: list.headingRow, columns: list.columns }, row);
    if (kind === 'total') {
      totals.push(row);
      const cell = tab.values[row - 1]?.[nameColumn - 1];
      leftOut.push({ cell: cellOnTab(tab.name, row, nameColumn), text: String(cell ?? '') });
    }
    if (kind === 'lone') notes.push(loneNote(tab, list, row));
    if (kind !== 'item') continue;
    const reader: RowReader = { tab, list, row, system, ...writing, problems, readings, notes, unread };
    const item = readItem(reader);
    if (item) items.push(item);
    (item ? readers : itemless).push(reader);
  }
  const lastTotal = Math.max(0, ...totals);
  notes.push(...readers.filter(({ row }) => totals.length > 0 && row > lastTotal).map(belowTotalNote));
  if (readings.length > 0) notes.push(words.readFromText(readings));
  refuseTwins(items, readers, nameColumn, problems);
  if (items.length === 0 && problems.length === 0) problems.push(noItems(list, nameColumn));
  return read;
}

/** What stands below the total may be meant to be left out. */
function belowTotalNote(reader: RowReader): string {
  const cell = cellOnTab(reader.tab.name, reader.row, reader.list.columns.name ?? 1);
  return words.belowTotal(cell, nameOf(reader));
}

/** A name alone may head some rows, or be an item of which nothing is known yet: nothing can be planned for it. */
function loneNote(tab: TabContent, list: GrowerList, row: number): string {
  const columns = Object.values(list.columns).filter((column) => column !== undefined);
  const column = columns.find((one) => !isBlankCell(tab.values[row - 1]?.[one - 1])) ?? 1;
  const text = String(tab.values[row - 1]?.[column - 1]).trim();
  return words.loneName(cellOnTab(tab.name, row, column), text, list.kind);
}

function missingColumns(tab: TabContent, list: GrowerList, isWeighed: boolean): ListProblem[] {
  const columns: Partial<Record<PaddockField | GroupField, number>> = list.columns;
  const first = Math.min(...Object.values(columns), Infinity);
  const cell = cellOnTab(list.tab, list.headingRow, Number.isFinite(first) ? first : 1);
  return missingFields(list.kind, (field) => field in columns || (field === 'weight' && isWeighed)).map(
    (field) => {
      const said = words.noColumn(cell, list.kind, FIELD_LABELS[field], field === 'area');
      return { cell, sentence: field === 'weight' ? `${said}${weightOfAll(tab, list)}` : said };
    },
  );
}

/** Says why "Total weight" was not taken, where it stands in the row of headings. */
function weightOfAll(tab: TabContent, { headingRow }: GrowerList): string {
  const cells = tab.values[headingRow - 1] ?? [];
  const column = cells.findIndex((cell) => typeof cell === 'string' && isWeightOfAll(plainWords(cell)));
  if (column < 0) return '';
  const text = JSON.stringify(String(cells[column]).trim());
  return words.weightOfAll(text, cellOnTab(tab.name, headingRow, column + 1));
}

function noItems(list: GrowerList, nameColumn: number): ListProblem {
  const cell = cellOnTab(list.tab, list.firstRow, nameColumn);
  return {
    cell,
    sentence: words.emptyList(cell, list.kind),
  };
}

function refuseTwins(
  items: readonly { name: string }[],
  readers: readonly RowReader[],
  nameColumn: number,
  problems: ListProblem[],
): void {
  const seen = new Map<string, RowReader>();
  for (const [i, { name }] of items.entries()) {
    const reader = readers[i]!;
    const first = seen.get(nameKey(name));
    if (!first) {
      seen.set(nameKey(name), reader);
      continue;
    }
    const cell = cellOnTab(reader.tab.name, reader.row, nameColumn);
    const other = cellOnTab(reader.tab.name, first.row, nameColumn);
    problems.push({
      cell,
      sentence: words.sameName(cell, other, JSON.stringify(name)),
    });
  }
}
