import { columnLetters } from '../block/a1';
import { BLANK, date, number, text } from '../block/cells';
import { type BlockRow, composeBlock } from '../block/compose-block';
import type { ComposedBlock } from '../block/composed-block';
import type { BlockCell, BlockRule, BlockStyle, WriteBlock } from '../contract';
import { CHECKS } from './check-formula';
import { COLUMNS, type ColumnKey, FROZEN_COLUMNS, headingOf } from './columns';
import { functionCells } from './function-cells';
import { rowsAbove, rowsBelow } from './head-rows';
import type { OldRow, RotationBlockInput } from './model';
import { moveCells } from './move-cells';
import type { TableFrame } from './move-formulas';
import { ANCHOR, HEADINGS, SPACE } from './move-rows';
import { settingsRows } from './settings-rows';
import { SKIPPED } from './skipped';
import { type TableRow, tableRows, wishesIn } from './table-rows';

export type Block = ComposedBlock & Pick<WriteBlock, 'freezeRows' | 'freezeColumns'>;

/**
 * The rotation table as one block: title, hint and warnings; headings; a blank row that holds the cell functions
 * (so that any move can be deleted); one row a move; a blank row; the settings. Each move keeps the id of its row.
 *
 * Formulas refer to the place where the block will stand, `corner`. They are plain spreadsheet formulas but for
 * weight, feed and water, one cell function each over the whole column.
 */
export function rotationBlock(input: RotationBlockInput): Block {
  const rows = tableRows(input);
  const { corner, settings } = input;
  const above = rowsAbove(input);
  const headingRow = corner.row + above.length;
  const frame = frameOf(rows, headingRow + 1, corner.column);
  const skipped = input.skipped ?? [];
  const below = settingsRows(settings, frame.lastRow + skipped.length + 2, corner.column);
  const moves = rows.map(({ id }, i): BlockRow => {
    const cells = moveCells({ input, frame, rows, i, setting: below.address });
    return { cells: COLUMNS.map(({ key }) => cells[key]), style: STYLES, id };
  });
  const calls = functionCells(frame, settings.unitSystem, below.address);
  const headings = COLUMNS.map((column) => text(headingOf(column, settings.unitSystem)));
  const first = above.length + 2;
  return {
    ...composeBlock([
      ...above,
      { cells: headings, style: 'heading', id: HEADINGS },
      { cells: COLUMNS.map(({ key }) => calls[key] ?? BLANK), style: 'muted', id: ANCHOR },
      ...moves,
      ...skipped.map(skippedRow),
      { cells: [], id: SPACE },
      ...below.rows,
      ...rowsBelow(input),
    ]),
    rules: rulesOf(frame, corner, rows.length),
    widths: COLUMNS.map(({ width }) => width),
    records: true,
    typed: rows.flatMap((row, i) => wishesIn(row).map((key) => [first + i, placeOf(key)] as const)),
    freezeRows: headingRow,
    freezeColumns: FROZEN_COLUMNS,
  };
}

/** A move that was left out stands below the others, outside of all that formulas of the table look at. */
function skippedRow({ group, paddock, plannedIn, days, id }: OldRow): BlockRow {
  const cells: Partial<Record<ColumnKey, BlockCell>> = {
    group: text(group),
    paddock: text(paddock),
    ...(plannedIn !== undefined && { plannedIn: date(plannedIn) }),
    movedIn: text(SKIPPED),
    ...(days !== undefined && { days: number(days, '0') }),
  };
  return { cells: COLUMNS.map(({ key }) => cells[key] ?? BLANK), style: STYLES, id };
}

const STYLES: readonly BlockStyle[] = COLUMNS.map(({ style }) => style);

function placeOf(key: ColumnKey): number {
  return COLUMNS.findIndex((column) => column.key === key);
}

/** Rows added to the longest distance seen, so that windows still hold after rows are inserted. */
const SPARE_ROWS = 10;
const SHORTEST_WINDOW = 30;

function frameOf(rows: readonly TableRow[], anchorRow: number, left: number): TableFrame {
  const lettersOf = new Map(COLUMNS.map(({ key }, c) => [key as ColumnKey, columnLetters(left + c)]));
  const groups = longestGap(rows.map((row) => row.group));
  const paddocks = longestGap(rows.map((row) => row.paddock));
  return {
    letters: (key) => lettersOf.get(key) ?? 'A',
    anchorRow,
    lastRow: anchorRow + rows.length,
    // Twice the gap: the move before the one before, should that be skipped or deleted.
    groupWindow: Math.max(SHORTEST_WINDOW, 2 * groups + SPARE_ROWS),
    paddockWindow: Math.max(SHORTEST_WINDOW, 2 * paddocks + SPARE_ROWS),
  };
}

/** Longest distance between two rows of one name that follow each other. */
function longestGap(names: readonly string[]): number {
  const last = new Map<string, number>();
  let longest = 0;
  for (const [i, name] of names.entries()) {
    longest = Math.max(longest, i - (last.get(name) ?? i));
    last.set(name, i);
  }
  return longest;
}

const COLOURS = { wrong: '#f4cccc', shortRest: '#fff2cc', today: '#d9ead3' } as const;

/** Colours beside the words of the check column: wrong, short rest, and where the pigs stand today. */
function rulesOf(frame: TableFrame, corner: { row: number }, count: number): BlockRule[] {
  if (count === 0) return [];
  const first = frame.anchorRow + 1;
  const at = (key: ColumnKey): string => `$${frame.letters(key)}${first}`;
  const place = (key: ColumnKey, width = 1) => ({
    row: first - corner.row,
    column: placeOf(key),
    rows: count,
    columns: width,
  });
  const isShort = `LEFT(${at('check')};${CHECKS.short.length})="${CHECKS.short}"`;
  const all = (key: ColumnKey): string => {
    const letters = frame.letters(key);
    return `$${letters}$${frame.anchorRow}:$${letters}$${frame.lastRow}`;
  };
  // As today's page has it: a day that is typed wins over what was due, until the last stay of the group is over.
  const own = `${all('groupKey')};${at('groupKey')}`;
  const recorded = `MAXIFS(${all('inDay')};${own};${all('movedIn')};">0";${all('inDay')};"<="&TODAY())`;
  const isOver = `IF(${at('out')}<=TODAY();COUNTIFS(${own};${all('inDay')};">"&${at('inDay')})=0;FALSE)`;
  const isPlanned = `AND(${at('inDay')}<=TODAY();${at('out')}>TODAY())`;
  const isThere = `IF(${recorded}>0;IF(${at('inDay')}=${recorded};NOT(${isOver});FALSE);${isPlanned})`;
  const isNow = `IF(ISNUMBER(${at('inDay')});${isThere};FALSE)`;
  return [
    { ...place('check'), formula: `=${isShort}`, background: COLOURS.shortRest },
    { ...place('check'), formula: `=${at('check')}<>""`, background: COLOURS.wrong },
    { ...place('group', 2), formula: `=${isNow}`, background: COLOURS.today },
  ];
}
