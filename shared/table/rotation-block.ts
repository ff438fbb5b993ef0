import { columnLetters } from '../block/a1';
import { BLANK, text } from '../block/cells';
import { type BlockRow, composeBlock } from '../block/compose-block';
import type { BlockCell, BlockRule, BlockStyle, WriteBlock } from '../contract';
import { CHECKS } from './check-formula';
import { COLUMNS, type ColumnKey, headingOf } from './columns';
import { functionCells } from './function-cells';
import { rowsAbove } from './head-rows';
import { keptLinesOf } from './kept-lines';
import { missingColumns } from './missing-columns';
import type { BlockColumn, RotationBlockInput } from './model';
import { moveCells, shiftedExtra } from './move-cells';
import type { TableFrame } from './move-formulas';
import { movedCell } from './moved-cell';
import { settingsRows } from './settings-rows';
import { type TableRow, tableRows } from './table-rows';

export type Block = Pick<WriteBlock, 'cells' | 'styles' | 'rules' | 'widths' | 'freezeRows'>;

export const KEPT_TITLE = 'Kept from earlier tables';

/**
 * The rotation table as one block: title, hint and warnings; headings; a blank row that holds the cell functions
 * (so that any move can be deleted); one row a move; what was kept; the settings.
 *
 * Formulas refer to the place where the block will stand, `corner`. They are plain spreadsheet formulas but for
 * weight, feed and water, one cell function each over the whole column.
 */
export function rotationBlock(input: RotationBlockInput): Block {
  const { rows, lost } = tableRows(input);
  const { corner, settings } = input;
  const columns = blockColumns(input.own?.columns ?? []);
  const above = rowsAbove(input);
  const headingRow = corner.row + above.length;
  const frame = frameOf(rows, columns, headingRow + 1, corner.column);
  const kept = keptRows([...(input.keptLines ?? []), ...keptLinesOf(lost, input.own?.extraColumns)]);
  const below = settingsRows(
    settings,
    frame.lastRow + 2 + kept.length,
    corner.column,
    input.own?.settingCells,
  );
  const table = rows.map((row, i): BlockRow => {
    const ours = moveCells({ input, frame, rows, i, setting: below.address });
    const cellOf = (column: BlockColumn): BlockCell =>
      'key' in column ? ours[column.key] : shiftedExtra(row, rows, column.extra, frame.anchorRow + 1 + i);
    const old = row.past ?? row.kept;
    const looks = old && { row: old.sheetRow - corner.row, columns: input.own?.columns.length ?? 0 };
    return {
      cells: columns.map((column, c) => withLook(cellOf(column), looks, c)),
      style: columns.map(styleOf),
    };
  });
  const blockRows = [...above, headings(input, columns), anchor(input, frame, columns, below), ...table];
  const all = [...blockRows, { cells: [] }, ...kept, ...below.rows];
  return {
    ...composeBlock(all),
    rules: rulesOf(frame, columns, corner, rows.length),
    widths: columns.map((column) => widthOf(column)),
    freezeRows: headingRow,
  };
}

/** A cell with the look of the cell that stood there in the move's old row: a coloured row stays coloured. */
function withLook(
  cell: BlockCell,
  old: { readonly row: number; readonly columns: number } | undefined,
  column: number,
): BlockCell {
  return old && column < old.columns && !cell.from ? { ...cell, from: [old.row, column] } : cell;
}

/**
 * The columns as they stand, in the grower's order, so that formulas elsewhere still point at the right ones. Those of
 * ours that are not there come at the right end.
 */
function blockColumns(standing: readonly BlockColumn[]): BlockColumn[] {
  return [...standing, ...missingColumns(standing).map(({ key }) => ({ key }))];
}

function headings({ settings, own, corner }: RotationBlockInput, columns: readonly BlockColumn[]): BlockRow {
  const cells = columns.map((column) => {
    if ('extra' in column) return text(own?.extraColumns[column.extra]?.heading ?? '');
    const typed = own?.headings?.get(column.key);
    if (own && typed) return movedCell(typed, corner.row + own.headRows);
    return text(headingOf(COLUMNS.find((one) => one.key === column.key)!, settings.unitSystem));
  });
  return { cells, style: 'heading' };
}

function anchor(
  { settings }: RotationBlockInput,
  frame: TableFrame,
  columns: readonly BlockColumn[],
  below: ReturnType<typeof settingsRows>,
): BlockRow {
  const calls = functionCells(frame, settings.unitSystem, below.address);
  const cells = columns.map((column) => ('key' in column ? (calls[column.key] ?? BLANK) : BLANK));
  return { cells, style: 'muted' };
}

function keptRows(lines: readonly string[]): BlockRow[] {
  if (lines.length === 0) return [];
  const title: BlockRow = { cells: [text(KEPT_TITLE)], style: 'heading' };
  return [title, ...lines.map((line): BlockRow => ({ cells: [text(line)] })), { cells: [] }];
}

/** Rows added to the longest distance seen, so that windows still hold after rows are inserted. */
const SPARE_ROWS = 10;
const SHORTEST_WINDOW = 30;

function frameOf(
  rows: readonly TableRow[],
  columns: readonly BlockColumn[],
  anchorRow: number,
  left: number,
): TableFrame {
  const lettersOf = new Map<ColumnKey, string>();
  for (const [c, column] of columns.entries()) {
    if ('key' in column) lettersOf.set(column.key, columnLetters(left + c));
  }
  const groups = longestGap(rows.map((row) => row.group));
  const paddocks = longestGap(rows.map((row) => row.paddock));
  return {
    letters: (key) => lettersOf.get(key) ?? 'A',
    anchorRow,
    lastRow: anchorRow + rows.length,
    // Twice the gap: the move before the one before, should that be deleted.
    groupWindow: Math.max(SHORTEST_WINDOW, 2 * groups + SPARE_ROWS),
    paddockWindow: Math.max(SHORTEST_WINDOW, paddocks + SPARE_ROWS),
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

function styleOf(column: BlockColumn): BlockStyle {
  return 'key' in column ? COLUMNS.find((one) => one.key === column.key)!.style : 'plain';
}

function widthOf(column: BlockColumn): number {
  return 'key' in column ? COLUMNS.find((one) => one.key === column.key)!.width : 0;
}

const COLOURS = { wrong: '#f4cccc', shortRest: '#fff2cc', today: '#d9ead3' } as const;

/** Colours beside the words of the check column: wrong, short rest, and where the pigs stand today. */
function rulesOf(
  frame: TableFrame,
  columns: readonly BlockColumn[],
  corner: { row: number },
  count: number,
): BlockRule[] {
  if (count === 0) return [];
  const first = frame.anchorRow + 1;
  const at = (key: ColumnKey): string => `$${frame.letters(key)}${first}`;
  const columnOf = (key: ColumnKey): number =>
    columns.findIndex((column) => 'key' in column && column.key === key);
  const place = (key: ColumnKey, width = 1) => ({
    row: first - corner.row,
    column: columnOf(key),
    rows: count,
    columns: width,
  });
  const isShort = `LEFT(${at('check')};${CHECKS.short.length})="${CHECKS.short}"`;
  // Each rule costs service calls: one where the two columns stand as they were written.
  const names =
    columnOf('paddock') === columnOf('group') + 1 ? [place('group', 2)] : [place('group'), place('paddock')];
  const isNow = `AND(ISNUMBER(${at('inDay')});${at('inDay')}<=TODAY();${at('out')}>TODAY())`;
  return [
    { ...place('check'), formula: `=${isShort}`, background: COLOURS.shortRest },
    { ...place('check'), formula: `=${at('check')}<>""`, background: COLOURS.wrong },
    ...names.map((name) => ({ ...name, formula: `=${isNow}`, background: COLOURS.today })),
  ];
}
