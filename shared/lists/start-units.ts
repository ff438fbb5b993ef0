import type { Book } from '../block/book';
import { unitsOfLocale } from '../locale/units-of-locale';
import type { UnitSystem } from '../units/units';
import { foundLists } from './found-lists';
import { unitSystemOfLists } from './unit-system-of-lists';

/** Units to begin with: those of the grower's own headings, else those of the spreadsheet's locale. */
export function startUnits(book: Book): UnitSystem {
  return unitSystemOfLists(foundLists(book)) ?? unitsOfLocale(book.overview.locale);
}
