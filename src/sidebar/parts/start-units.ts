import { findLists } from '../../../shared/lists/find-lists';
import { unitSystemOfLists } from '../../../shared/lists/unit-system-of-lists';
import type { UnitSystem } from '../../../shared/units/units';
import { unitsOfLocale } from '../numbers/units-of-locale';
import type { Book } from './use-book';

/** Units to begin with: those of the grower's own headings, else those of the spreadsheet's locale. */
export function startUnits({ tabs, overview }: Book): UnitSystem {
  return unitSystemOfLists(findLists(tabs, overview.blocks)) ?? unitsOfLocale(overview.locale);
}
