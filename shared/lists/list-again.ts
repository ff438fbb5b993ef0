import type { Book } from '../block/book';
import type { TabContent } from '../contract';
import { foundLists } from './found-lists';
import { headingsAt } from './headings-at';
import type { FoundList, GrowerList } from './model';
import { listUnder, withRows } from './pointed-list';
import { headingTexts, recalledList } from './recalled-list';

/** A list that was used before, as it stands in this reading of the file; undefined where it is gone. */
export function listAgain(book: Book, before: GrowerList | FoundList | undefined): FoundList | undefined {
  if (!before) return undefined;
  const found = foundLists(book).filter(({ kind }) => kind === before.kind);
  const pointed = pointedAgain(book, before, found);
  return recalledList(pointed ? [pointed] : found, before);
}

/** A list that only the grower saw, and the finder does not, where all its headings stand. */
function pointedAgain(
  { tabs }: Book,
  before: GrowerList | FoundList,
  found: readonly FoundList[],
): FoundList | undefined {
  const tab = tabs.find(({ name }) => name === before.tab);
  const texts = 'headings' in before ? headingTexts(before) : (before.texts ?? {});
  const row = tab && rowOf(tab, before.headingRow, Object.values(texts));
  const isFound = found.some(({ tab: name, headingRow }) => name === before.tab && headingRow === row);
  if (!tab || row === undefined || isFound) return undefined;
  const columns: Partial<Record<string, number>> = before.columns;
  const first = headingsAt(tab, row).find(({ text }) => text === Object.values(texts)[0]);
  return withRows(listUnder(before.kind, tab, row, first?.column ?? columns.name ?? 1), tab);
}

/** The row in which all these headings stand: where they stood, else the first. */
function rowOf(tab: TabContent, was: number, texts: readonly string[]): number | undefined {
  if (texts.length === 0) return undefined;
  const rows = [was, ...tab.values.map((_, r) => r + 1)];
  return rows.find((row) => {
    const now = headingsAt(tab, row).map(({ text }) => text);
    return texts.every((text) => now.includes(text));
  });
}
