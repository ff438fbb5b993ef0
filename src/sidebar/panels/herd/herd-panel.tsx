/** "Keep the herd log": head and weights that change, a row each. */
import { WithBook } from '../../parts/with-book';
import { HerdSteps } from './herd-steps';

export function HerdPanel() {
  return <WithBook>{(book, reread) => <HerdSteps book={book} onReread={reread} />}</WithBook>;
}
