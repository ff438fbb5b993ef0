/** Areas and weights that the grower's lists lack, and the cells that they go into. */
import { cellOnTab } from '../block/cell-on-tab';
import { BLANK, number, text } from '../block/cells';
import type { BlockCell, CellChange } from '../contract';
import { readAmount } from '../locale/read-amount';
import { farmUnit, type ListUnit } from '../units/unit-words';
import type { UnitSystem } from '../units/units';
import { freeColumn } from './free-column';
import { isBlankCell, rowKind } from './list-rows';
import type { GrowerList, ListSource } from './model';

export interface MissingFigures {
  readonly tab: string;
  /** "area" or "weight". */
  readonly field: 'area' | 'weight';
  readonly unit: ListUnit;
  readonly column: number;
  /** The column has no heading yet: this one is written with the first figure. */
  readonly heading?: { readonly row: number; readonly text: string };
  /** Rows of the list without the figure, by their names. */
  readonly rows: readonly RowWithout[];
}

export interface RowWithout {
  readonly row: number;
  readonly name: string;
  readonly cell: string;
  /** A name with nothing beside it may also head the rows below it. */
  readonly isLone: boolean;
}

const HEADINGS = { area: 'Area', weight: 'Weight' } as const;

/** What is missing in a list; undefined: nothing. `isKnown`: the figure of that row comes from elsewhere, or none is needed. */
export function missingFigures(
  { tab, list }: ListSource<GrowerList>,
  system: UnitSystem,
  isKnown: (name: string) => boolean = () => false,
): MissingFigures | undefined {
  const columns: Partial<Record<string, number>> = list.columns;
  const { name: nameColumn } = columns;
  const hasSides = columns.width !== undefined && columns.length !== undefined;
  if (nameColumn === undefined || (list.kind === 'paddocks' && columns.area === undefined && hasSides))
    return undefined;
  const field = list.kind === 'paddocks' ? 'area' : 'weight';
  const units: Partial<Record<string, ListUnit>> = list.units;
  const unit = units[field] ?? farmUnit(field === 'area' ? 'area' : 'mass', system);
  const column = columns[field] ?? freeColumn(tab, list);
  const under = { tab, row: list.headingRow, columns };
  const numbers = Array.from({ length: list.lastRow - list.firstRow + 1 }, (_, i) => list.firstRow + i);
  const rows = numbers.flatMap((row) => {
    const cells = tab.values[row - 1] ?? [];
    const isBlank = (at: number | undefined): boolean => at === undefined || isBlankCell(cells[at - 1]);
    const name = String(cells[nameColumn - 1] ?? '').trim();
    const kind = rowKind(under, row);
    const isItem = (kind === 'item' || kind === 'lone') && name !== '';
    const lacks = isBlank(columns[field]) && (!hasSides || isBlank(columns.width) || isBlank(columns.length));
    return isItem && lacks && !isKnown(name)
      ? [{ row, name, cell: cellOnTab(tab.name, row, column), isLone: kind === 'lone' }]
      : [];
  });
  if (rows.length === 0) return undefined;
  const heading = { row: list.headingRow, text: `${HEADINGS[field]} (${unit})` };
  return { tab: tab.name, field, unit, column, rows, ...(columns[field] === undefined && { heading }) };
}

export interface FilledFigures {
  readonly cells: readonly CellChange[];
}

/** The cells to fill with what was typed, by row; a sentence where something typed is no figure. */
export function filledFigures(
  { tab, field, column, heading, rows }: MissingFigures,
  typed: Readonly<Record<number, string>>,
  comma: boolean,
): FilledFigures | { readonly problem: string } {
  const fill = (row: number, after: BlockCell): CellChange => ({ tab, row, column, before: BLANK, after });
  const cells: CellChange[] = [];
  for (const { row, name } of rows) {
    const read = readAmount(typed[row] ?? '', comma);
    if ('problem' in read) return { problem: `${name}: ${field} must ${read.problem}` };
    if (read.value === undefined) continue;
    if (read.value <= 0) return { problem: `${name}: ${field} must be more than 0, got ${read.value}` };
    cells.push(fill(row, number(read.value)));
  }
  if (cells.length === 0) return { problem: `Type at least one ${field}.` };
  return { cells: heading ? [fill(heading.row, text(heading.text)), ...cells] : cells };
}
