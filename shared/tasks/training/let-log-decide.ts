/** Puts the day from which the training log says a group is ready into the group list itself. */
import { cellA1 } from '../../block/a1';
import { BLANK, formula, text } from '../../block/cells';
import { isFilled } from '../../block/is-filled';
import { markOfStanding } from '../../block/memory';
import type { BlockContent } from '../../block/read-block';
import type { CellChange } from '../../contract';
import { freeColumn } from '../../lists/free-column';
import { MADE_HEADINGS } from '../../lists/made-headings';
import type { GroupList, ListSource, ReadGroup } from '../../lists/model';
import { nameKey } from '../../lists/read-list-cell';
import { shownCell } from '../cell-value';
import { typedRows } from '../end-line';
import { LOG_HEADINGS } from './log-headings';
import { readyLookup } from './ready-lookup';
import * as words from './words';

export interface LogDecides {
  readonly tab: string;
  /** Blank cells of the list and what goes into them. */
  readonly cells: readonly CellChange[];
  /** What will be done, and what stays as it is, in sentences. */
  readonly told: readonly string[];
}

/** Only groups that the log names; a day that was typed in the list stays. */
export function letLogDecide(
  log: BlockContent,
  { tab, list }: ListSource<GroupList>,
  groups: readonly ReadGroup[],
): LogDecides {
  const named = namesIn(log);
  const [inLog, others] = [true, false].map((is) =>
    groups.filter(({ name, cells }) => cells.name && named.has(nameKey(name)) === is),
  ) as [ReadGroup[], ReadGroup[]];
  const made = list.columns.from === undefined;
  const column = list.columns.from ?? freeColumn(tab, list);
  const told: string[] = [];
  const fill = (row: number, after: CellChange['after']): CellChange => ({
    tab: tab.name,
    row,
    column,
    before: BLANK,
    after,
  });
  const cells = inLog.flatMap(({ name, cells: { name: at } }) => {
    const { row, column: nameColumn } = at!;
    const value = readyLookup(log, cellA1(row, nameColumn));
    if (value === undefined) return [];
    if (!isFilled(tab, row - 1, column - 1)) return [fill(row, formula(value))];
    const standing = tab.formulas[row - 1]?.[column - 1] ?? '';
    if (markOfStanding('', standing) !== markOfStanding('', value)) {
      const stands = standing || shownCell(tab.values[row - 1]![column - 1]!);
      told.push(words.stays(cellA1(row, column), stands, name));
    }
    return [];
  });
  if (others.length > 0) {
    told.push(words.notInLog(others.map(({ name }) => name).join(', ')));
  }
  if (cells.length === 0) return { tab: tab.name, cells, told };
  if (!made) return { tab: tab.name, cells, told };
  told.unshift(words.columnMade(MADE_HEADINGS.from, cellA1(list.headingRow, column)));
  return { tab: tab.name, cells: [fill(list.headingRow, text(MADE_HEADINGS.from)), ...cells], told };
}

function namesIn(log: BlockContent): ReadonlySet<string> {
  const { headings, rows } = typedRows(log, LOG_HEADINGS);
  const column = headings.indexOf('Group');
  return new Set(
    rows.flatMap((row) => {
      const cell = row[column];
      return cell?.k === 't' || cell?.k === 'n' ? [nameKey(String(cell.v))] : [];
    }),
  );
}
