/** "Plan the moves": lists, rules, plan, table, one after the other on one screen. */
import { WithBook } from '../../parts/with-book';
import { RotationSteps } from './rotation-steps';

export function RotationPanel() {
  return <WithBook>{(book, reread) => <RotationSteps book={book} onReread={reread} />}</WithBook>;
}
