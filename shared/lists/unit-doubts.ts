import { cellOnTab } from '../block/cell-on-tab';
import type { TabContent } from '../contract';
import { farmUnit, type ListQuantity } from '../units/unit-words';
import type { UnitSystem } from '../units/units';
import { headingDoubt } from './heading-unit';
import { FIELD_QUANTITIES } from './headings';
import { FIELD_LABELS, type GroupField, type ListOf, type ListProblem, type PaddockField } from './model';
import * as words from './words';

/** Units that every grower of either system knows how to write into a heading. */
const TO_WRITE: Readonly<Record<ListQuantity, string>> = {
  area: 'ac, ha, m² or ft²',
  length: 'ft, yd or m',
  mass: 'lb or kg',
  massPerDay: 'lb/day, kg/day or g/day',
  time: 'days or weeks',
};

/**
 * What the headings of a list say in the place of a unit that cannot be read: a problem where it is a unit, for the
 * numbers would be taken in another one; a note where it may be any remark.
 */
export function unitDoubts(
  tab: TabContent,
  list: ListOf<string>,
  system: UnitSystem,
): { problems: ListProblem[]; notes: string[] } {
  const problems: ListProblem[] = [];
  const notes: string[] = [];
  for (const [name, column] of Object.entries(list.columns)) {
    const field = name as PaddockField | GroupField;
    const quantity = FIELD_QUANTITIES[field];
    const text = column === undefined ? '' : tab.values[list.headingRow - 1]?.[column - 1];
    if (!quantity || column === undefined || list.units[field] || typeof text !== 'string') continue;
    const doubt = headingDoubt(text, field);
    if (!doubt) continue;
    const cell = cellOnTab(tab.name, list.headingRow, column);
    const heading = JSON.stringify(text.trim().replace(/\s+/g, ' '));
    if (doubt.kind === 'unit') {
      const unit = JSON.stringify(doubt.text);
      const sentence = words.unknownUnit(cell, unit, heading, FIELD_LABELS[field], TO_WRITE[quantity]);
      problems.push({ cell, sentence });
    } else {
      const read = farmUnit(quantity, system);
      notes.push(words.noUnit(cell, heading, read));
    }
  }
  return { problems, notes };
}
