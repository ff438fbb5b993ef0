import type { Book } from '../block/book';
import { foundLists } from './found-lists';
import { headingsAt } from './headings-at';
import type { FoundList, GrowerList } from './model';
import { withRows } from './pointed-list';
import { recalledList } from './recalled-list';

/** A list that was used before, as it stands in this reading of the file; undefined where it is gone. */
export function listAgain(book: Book, before: GrowerList | FoundList | undefined): FoundList | undefined {
  const found = foundLists(book).filter(({ kind }) => kind === before?.kind);
  const isFound = found.some(
    ({ tab, headingRow }) => tab === before?.tab && headingRow === before.headingRow,
  );
  const pointed = isFound ? undefined : pointedAt(book, before);
  return pointed ?? recalledList(found, before) ?? pointedAt(book, before);
}

/** A list that only the grower saw, while its headings stand where they stood. */
function pointedAt({ tabs }: Book, own: GrowerList | FoundList | undefined): FoundList | undefined {
  const tab = tabs.find(({ name }) => name === own?.tab);
  if (!own || !('headings' in own) || !tab) return undefined;
  const now = headingsAt(tab, own.headingRow);
  const isThere = own.headings.every((heading) =>
    now.some(({ column, text }) => column === heading.column && text === heading.text),
  );
  return isThere ? withRows(own, tab) : undefined;
}
