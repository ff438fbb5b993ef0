/** What the plan is made from once something is recorded: the file as it will stand, and the rest of the season. */
import type { Book } from '../../block/book';
import type { BlockCell, CellChange, TabContent, WireCell } from '../../contract';
import { nameKey } from '../../lists/read-list-cell';
import { FIELDS, type Lists, listedFigures } from '../../table/listed-figures';
import type { OldRow } from '../../table/model';
import { growerLists } from '../grower-lists';
import { planProblem } from '../rotation/plan-problem';
import { standingRotation } from '../rotation/rotation-standing';
import { type Season, seasonOf } from '../rotation/season';
import type { FarmNow } from './farm-now';

export function seasonAfter({ book, old, settings, today }: FarmNow, changes: readonly CellChange[]): Season {
  const after = changedBook(book, changes);
  const table = standingRotation(after)!;
  const known = table.rotation.settings ?? settings;
  const lists = growerLists(after, known.unitSystem, {}, known.lists);
  const says = planProblem(lists.paddocks, lists.groups, known.rules);
  const rows = shiftedDays(old.rotation.rows, table.rotation.rows).map((row) => lookedUp(row, says));
  return seasonOf({
    lists,
    rules: known.rules,
    old: { ...table, rotation: { ...table.rotation, rows } },
    today,
    countPlannedAsDone: false,
  });
}

/** The file with other contents in some cells; formulas that look there still show what they did. */
export function changedBook(book: Book, changes: readonly CellChange[]): Book {
  return {
    ...book,
    tabs: book.tabs.map((tab) =>
      changedTab(
        tab,
        changes.filter((one) => one.tab === tab.name),
      ),
    ),
  };
}

function changedTab(tab: TabContent, changes: readonly CellChange[]): TabContent {
  if (changes.length === 0) return tab;
  const width = Math.max(...changes.map(({ column }) => column), ...tab.values.map((row) => row.length));
  const height = Math.max(...changes.map(({ row }) => row), tab.values.length);
  const grown = <Cell>(rows: readonly (readonly Cell[])[], none: Cell): Cell[][] =>
    Array.from({ length: height }, (_, r) => Array.from({ length: width }, (__, c) => rows[r]?.[c] ?? none));
  const values = grown<WireCell>(tab.values, '');
  const formulas = grown(tab.formulas, '');
  for (const { row, column, after } of changes) {
    values[row - 1]![column - 1] = wireOf(after);
    formulas[row - 1]![column - 1] = after.k === 'f' ? after.v : '';
  }
  return { ...tab, values, formulas };
}

function wireOf(cell: BlockCell): WireCell {
  if (cell.k === 'd') return { d: cell.v };
  return cell.k === 'blank' || cell.k === 'f' ? '' : cell.v;
}

/**
 * Days planned, as the sheet will work them out: a move that followed on the stay before it still does. `was`: before
 * anything was typed.
 */
function shiftedDays(was: readonly OldRow[], is: readonly OldRow[]): OldRow[] {
  const shifted: OldRow[] = [];
  for (const row of is) {
    const old = was.find(({ id }) => id === row.id);
    const followed = old?.plannedIn !== undefined && dueBefore(old, was) === old.plannedIn;
    const due = followed ? dueBefore(row, shifted) : undefined;
    const plannedIn = due ?? row.plannedIn;
    const inDay = row.movedIn ?? plannedIn;
    shifted.push({
      ...row,
      ...(plannedIn !== undefined && { plannedIn }),
      ...(inDay !== undefined && { inDay }),
    });
  }
  return shifted;
}

/** Formulas still show the figures of the day before: they will look up those of the new one. */
function lookedUp(row: OldRow, lists: Lists): OldRow {
  if (row.inDay === undefined) return row;
  const { listed } = listedFigures({ ...row, inDay: row.inDay }, lists);
  return { ...row, ...Object.fromEntries(row.lookups.map((key) => [FIELDS[key], listed[FIELDS[key]]])) };
}

/** The end of the group's latest stay above a row. */
function dueBefore({ group, sheetRow }: OldRow, rows: readonly OldRow[]): number | undefined {
  const above = rows.filter(
    (row) => row.sheetRow < sheetRow && nameKey(row.group) === nameKey(group) && row.inDay !== undefined,
  );
  const latest = Math.max(...above.map(({ inDay }) => inDay!));
  const last = above.filter(({ inDay }) => inDay === latest).pop();
  return last?.days === undefined ? undefined : latest + last.days;
}
