/** "Budget feed, water and ground": for the season and stay by stay. */
import { WithBook } from '../../parts/with-book';
import { BudgetSteps } from './budget-steps';

export function BudgetPanel() {
  return <WithBook>{(book, reread) => <BudgetSteps book={book} onReread={reread} />}</WithBook>;
}
