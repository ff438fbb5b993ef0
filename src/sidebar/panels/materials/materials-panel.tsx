/** "List the fence materials": what is fenced, how many paddocks at a time, what it takes, into the sheet. */
import { WithBook } from '../../parts/with-book';
import { MaterialsSteps } from './materials-steps';

export function MaterialsPanel() {
  return <WithBook>{(book, reread) => <MaterialsSteps book={book} onReread={reread} />}</WithBook>;
}
