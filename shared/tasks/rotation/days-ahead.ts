import { cellOnTab } from '../../block/cell-on-tab';
import type { Day } from '../../core/calendar/day';
import { dayWords } from '../../core/calendar/day-words';
import { columnsOf } from '../../table/move-rows';
import type { StandingRotation } from './rotation-standing';
import * as words from './words';

/** Days moved in that are still to come, each with its cell: what is planned there, nobody has done yet. */
export function daysAhead({ block, rotation }: StandingRotation, today: Day): string[] {
  const column = columnsOf(block).get('movedIn') ?? 0;
  return rotation.rows.flatMap(({ sheetRow, movedIn = today, group, paddock }) => {
    if (movedIn <= today) return [];
    const cell = cellOnTab(block.info.tab, sheetRow, block.info.column + column);
    return [words.stillToCome(cell, dayWords(movedIn), group, paddock)];
  });
}
