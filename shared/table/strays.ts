/** Things typed inside the block where we write nothing: they belong to no move, and a rebuild keeps them as lines. */
import { isFilled } from '../block/is-filled';
import type { BlockContent } from '../block/read-block';
import type { WireCell } from '../contract';
import { CALLS } from './cell-function-calls';
import type { ColumnKey } from './columns';
import { HINT, WARNING } from './head-rows';
import { keptAt } from './kept-at';
import { cellWords } from './kept-lines';
import type { KeptCell } from './model';
import { settingOfLabel } from './read-settings';
import { KEPT_TITLE } from './rotation-block';
import type { SettingKey } from './settings-rows';

interface StrayPlace {
  readonly block: BlockContent;
  readonly headingRow: number;
  readonly columns: ReadonlyMap<ColumnKey, number>;
}

/** Rows of the lines that an earlier rebuild kept below the table, and their column, from 0. */
function keptPlace({ values }: BlockContent, endRow: number): { column: number; rows: number[] } {
  const at = values.findIndex((row, r) => r >= endRow && row.includes(KEPT_TITLE));
  const column = values[at]?.indexOf(KEPT_TITLE) ?? -1;
  const rows: number[] = [];
  for (let r = at + 1; at >= 0 && r < values.length && cellWords(values[r]![column]!) !== ''; r++)
    rows.push(r);
  return { column, rows };
}

/** Lines that an earlier rebuild kept below the table. */
export function keptAlready(block: BlockContent, endRow: number): string[] {
  const { column, rows } = keptPlace(block, endRow);
  return rows.map((r) => String(block.values[r]![column]!));
}

/** Things typed into a row of the table that is no move: a remark between the rows. */
export function strayCells(reading: StrayPlace, r: number): string[] {
  const { block, headingRow, columns } = reading;
  const spills = new Set((Object.keys(CALLS) as ColumnKey[]).map((key) => columns.get(key)));
  // Cell functions answer in the rest of a move whose group or paddock was cleared, too.
  const hasAnswers = r !== headingRow + 1 && block.formulas[r]!.some((formula) => formula !== '');
  const words = block.values[r]!.flatMap((value, c) => {
    const isOurs = block.formulas[r]![c] !== '' || (hasAnswers && spills.has(c));
    return isOurs || cellWords(value) === '' ? [] : [cellWords(value)];
  });
  const isAnchor = r === headingRow + 1;
  return words.length === 0
    ? []
    : [`${isAnchor ? 'Under the headings' : `Row ${block.info.row + r}`}: ${words.join('; ')}`];
}

/** Cells typed above the headings beside our sentences: they stay where they are. */
export function headCells(block: BlockContent, headingRow: number): KeptCell[] {
  return block.values
    .slice(0, Math.max(0, headingRow))
    .flatMap((row, r) =>
      row.flatMap((_, c) => (c > 0 && isFilled(block, r, c) ? [keptAt(block, r, c)] : [])),
    );
}

/** Things typed over our sentences above the headings, and below the moves where we write nothing. */
export function straysAround({ block, headingRow }: StrayPlace, endRow: number, titleRow: number): string[] {
  const kept = keptPlace(block, endRow);
  return block.values.flatMap((row, r) => {
    // Formulas are told by their cells, see strayFormulas.
    const isValue = (_: WireCell, c: number): boolean => block.formulas[r]![c] === '';
    const typed =
      r < headingRow
        ? typedOver(row.slice(0, 1).filter(isValue), r)
        : r < endRow
          ? []
          : typedBelow(row, isValue, r, titleRow, kept);
    return typed.length === 0 ? [] : [`Row ${block.info.row + r}: ${typed.map(cellWords).join('; ')}`];
  });
}

/** Title, hint and warnings stand in the first column; the title that was typed over stays the title. */
function typedOver([first = '']: readonly WireCell[], row: number): WireCell[] {
  const words = cellWords(first);
  const isOurs = row === 0 || first === HINT || words.startsWith(WARNING.trim());
  return words === '' || isOurs ? [] : [first];
}

function typedBelow(
  row: readonly WireCell[],
  isValue: (cell: WireCell, column: number) => boolean,
  r: number,
  titleRow: number,
  kept: { readonly column: number; readonly rows: readonly number[] },
): WireCell[] {
  const isKept = kept.rows.includes(r) || row.includes(KEPT_TITLE);
  const places = row.flatMap((cell, c) =>
    cellWords(cell) !== '' && !(isKept && c === kept.column) ? [{ cell, isTyped: isValue(cell, c) }] : [],
  );
  const filled = places.map(({ cell }) => cell);
  const typedFrom = (first: number): WireCell[] =>
    places.slice(first).flatMap(({ cell, isTyped }) => (isTyped ? [cell] : []));
  if (titleRow < 0 || r < titleRow) return typedFrom(0);
  const key = filled[0] === undefined ? undefined : settingOfLabel(filled[0]);
  // Label and tab; then how the list is described.
  if (LISTS.includes(key)) return typedFrom(2).filter((cell) => !isListPart(cell));
  return typedFrom(r === titleRow ? 1 : ownSettingCells(filled));
}

const SEVERAL_VALUES: readonly (SettingKey | undefined)[] = ['restByMonth', 'growthByMonth', 'noMoves'];
/** Settings that only describe: where a list stands. */
export const LISTS: readonly (SettingKey | undefined)[] = ['paddockList', 'groupList'];

/** "headings in row 1, list in rows 2 to 9" or "area = C, ac: Acres". */
function isListPart(cell: WireCell): boolean {
  return typeof cell === 'string' && /^(headings in row \d|[a-zA-Z]+ = [A-Z]+\b)/.test(cell);
}

/** How many cells of a settings row are the setting's own. */
export function ownSettingCells(filled: readonly WireCell[]): number {
  const key = filled[0] === undefined ? undefined : settingOfLabel(filled[0]);
  if (key === undefined) return 0;
  return SEVERAL_VALUES.includes(key) || LISTS.includes(key) ? filled.length : 2;
}
