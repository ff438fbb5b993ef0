import type { Book } from '../../block/book';
import { startUnits } from '../../lists/start-units';
import type { UnitSystem } from '../../units/units';
import { standingRotation } from './rotation-standing';

/** Units of a formula that is put into a cell: those of the rotation table, else those of the lists or the locale. */
export function farmUnits(book: Book): UnitSystem {
  return standingRotation(book)?.rotation.settings?.unitSystem ?? startUnits(book);
}
