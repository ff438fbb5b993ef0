import type { UnitSystem } from '../../../../shared/units/units';
import type { Book } from './use-book';
import type { Lists } from './use-lists';
import type { Made } from './use-plan';

interface Props {
  readonly book: Book;
  readonly lists: Lists;
  readonly made: Made;
  readonly units: UnitSystem;
  readonly onReread: () => void;
}

export function WriteSection(_: Props) {
  return <p>Writing the table is not built yet.</p>;
}
