import { cellOnTab } from '../../block/cell-on-tab';
import type { BlockContent } from '../../block/read-block';
import type { Day } from '../../core/calendar/day';
import { dayWords } from '../../core/calendar/day-words';
import type { ColumnKey } from '../../table/columns';
import { mostStayDays } from '../../table/model';
import { columnsOf } from '../../table/move-rows';
import type { StandingRotation } from './rotation-standing';
import * as words from './words';

/** What was typed under Days that cannot be the days of a stay, each with its cell. */
export function badDays({ block, rotation: { rows, settings } }: StandingRotation): string[] {
  return rows.flatMap(({ sheetRow, badDays: got, days }) => {
    if (got === undefined || !settings) return [];
    const cell = cellOf(block, 'days', sheetRow);
    return [words.badDays(cell, mostStayDays(settings.rules), got, days)];
  });
}

/** What was typed under Cover left that is no part of the ground, each with its cell. */
export function badCovers({ block, rotation: { rows } }: StandingRotation): string[] {
  return rows.flatMap(({ sheetRow, badCover: got }) =>
    got === undefined ? [] : [words.badCover(cellOf(block, 'cover', sheetRow), got)],
  );
}

/** Days moved in that are still to come, each with its cell: what is planned there, nobody has done yet. */
export function daysAhead({ block, rotation }: StandingRotation, today: Day): string[] {
  return rotation.rows.flatMap(({ sheetRow, movedIn = today, group, paddock }) => {
    if (movedIn <= today) return [];
    const cell = cellOf(block, 'movedIn', sheetRow);
    return [words.stillToCome(cell, dayWords(movedIn), group, paddock)];
  });
}

function cellOf(block: BlockContent, key: ColumnKey, sheetRow: number): string {
  return cellOnTab(block.info.tab, sheetRow, block.info.column + (columnsOf(block).get(key) ?? 0));
}
