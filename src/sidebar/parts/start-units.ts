import { unitSystemOfLists } from '../../../shared/lists/unit-system-of-lists';
import type { UnitSystem } from '../../../shared/units/units';
import { unitsOfLocale } from '../numbers/units-of-locale';
import { foundLists } from './found-lists';
import type { Book } from './use-book';

/** Units to begin with: those of the grower's own headings, else those of the spreadsheet's locale. */
export function startUnits(book: Book): UnitSystem {
  return unitSystemOfLists(foundLists(book)) ?? unitsOfLocale(book.overview.locale);
}
