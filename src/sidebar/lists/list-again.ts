import type { FoundList, GrowerList } from '../../../shared/lists/model';
import { foundLists } from '../parts/found-lists';
import type { Book } from '../parts/use-book';
import { recalledList } from './recalled-list';

/** A list that was used before, as it stands in this reading of the file; undefined where it is gone. */
export function listAgain(book: Book, before: GrowerList | FoundList | undefined): FoundList | undefined {
  const found = foundLists(book).filter(({ kind }) => kind === before?.kind);
  return recalledList(found, before) ?? pointedAt(book, before);
}

/** A list that only the grower saw, while its headings stand where they stood. */
function pointedAt({ tabs }: Book, own: GrowerList | FoundList | undefined): FoundList | undefined {
  const tab = tabs.find(({ name }) => name === own?.tab);
  if (!own || !('headings' in own) || !tab) return undefined;
  const cells = tab.values[own.headingRow - 1] ?? [];
  const isThere = own.headings.every(
    ({ column, text }) => String(cells[column - 1] ?? '').trim() === text.trim(),
  );
  return isThere ? { ...own, lastRow: tab.values.length } : undefined;
}
