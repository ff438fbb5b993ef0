/** Things typed inside the block where we write nothing: they belong to no move, and a rebuild keeps them as lines. */
import type { BlockContent } from '../block/read-block';
import type { WireCell } from '../contract';
import type { ColumnKey } from './columns';
import { cellWords } from './kept-lines';
import { settingOfLabel } from './read-settings';
import { HINT, KEPT_TITLE } from './rotation-block';
import type { SettingKey } from './settings-rows';

interface StrayPlace {
  readonly block: BlockContent;
  readonly headingRow: number;
  readonly columns: ReadonlyMap<ColumnKey, number>;
}

/** Lines that an earlier rebuild kept below the table. */
export function keptAlready({ values }: BlockContent, endRow: number): string[] {
  const at = values.findIndex((row, r) => r >= endRow && row.includes(KEPT_TITLE));
  if (at < 0) return [];
  const column = values[at]!.indexOf(KEPT_TITLE);
  const lines: string[] = [];
  for (let r = at + 1; r < values.length && cellWords(values[r]![column]!) !== ''; r++) {
    lines.push(String(values[r]![column]!));
  }
  return lines;
}

/** Things typed into a row of the table that is no move: a remark between the rows. */
export function strayCells(reading: StrayPlace, r: number): string[] {
  const { block, headingRow, columns } = reading;
  const spills = new Set([columns.get('weightIn'), columns.get('feed'), columns.get('water')]);
  const words = block.values[r]!.flatMap((value, c) => {
    const isOurs = block.formulas[r]![c] !== '' || spills.has(c);
    return isOurs || cellWords(value) === '' ? [] : [cellWords(value)];
  });
  const isAnchor = r === headingRow + 1;
  return words.length === 0
    ? []
    : [`${isAnchor ? 'Under the headings' : `Row ${block.info.row + r}`}: ${words.join('; ')}`];
}

/** Things typed beside the title, the warnings and the settings, where we write nothing. */
export function straysAround({ block, headingRow }: StrayPlace, titleRow: number): string[] {
  const lines: string[] = [];
  for (const [r, row] of block.values.entries()) {
    const isAbove = r < headingRow;
    const isBelow = titleRow >= 0 && r > titleRow;
    if (!isAbove && !isBelow) continue;
    const filled = row.filter((cell) => cellWords(cell) !== '');
    const ours = isAbove ? ownCells(row, r) : settingCells(filled);
    const typed = filled.slice(ours);
    if (typed.length === 0) continue;
    lines.push(`Row ${block.info.row + r}: ${typed.map(cellWords).join('; ')}`);
  }
  return lines;
}

/** Title, hint and warnings stand in the first column; the title that was typed over stays the title. */
function ownCells([first]: readonly WireCell[], row: number): number {
  if (first === undefined || cellWords(first) === '') return 0;
  return row === 1 && first !== HINT ? 0 : 1;
}

const SEVERAL_VALUES: readonly (SettingKey | undefined)[] = [
  'restByMonth',
  'growthByMonth',
  'noMoves',
  'paddockList',
  'groupList',
];

/** How many cells of a settings row are the setting's own. */
function settingCells(filled: readonly WireCell[]): number {
  const key = filled[0] === undefined ? undefined : settingOfLabel(filled[0]);
  if (key === undefined) return 0;
  return SEVERAL_VALUES.includes(key) ? filled.length : 2;
}
