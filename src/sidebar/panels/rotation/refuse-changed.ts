import { bindLists } from '../../../../shared/lists/bind-lists';
import type { RotationBlockInput } from '../../../../shared/table/model';
import { boundHerdLog } from '../../../../shared/tasks/herd/herd-log';
import { type OldTable, oldTable, refuseTyped } from '../../../../shared/tasks/rotation/old-table';
import { type Book, readBook } from '../../parts/use-book';

/**
 * The file as it stands now. Throws where the table or a list in the sheet is no longer the one that the page knows:
 * what was typed there since would be missing in what is made of the plan.
 */
export async function refuseChanged(
  known: OldTable | undefined,
  sources: RotationBlockInput['sources'],
): Promise<Book> {
  const book = await readBook();
  bindLists(sources ?? {}, book);
  boundHerdLog(sources?.herd, book);
  const now = oldTable(book);
  if (known && now) refuseTyped(known, now);
  return book;
}
