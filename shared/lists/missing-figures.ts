/** Areas and weights that the grower's lists lack, and the cells that they go into. */
import { cellOnTab } from '../block/cell-on-tab';
import { BLANK, date, number, text } from '../block/cells';
import type { BlockCell, CellChange } from '../contract';
import type { Day } from '../core/calendar/day';
import { readAmount } from '../locale/read-amount';
import { farmUnit, type ListUnit } from '../units/unit-words';
import type { UnitSystem } from '../units/units';
import { freeColumn } from './free-column';
import { isBlankCell, rowKind } from './list-rows';
import { MADE_HEADINGS } from './made-headings';
import type { GrowerList, ListSource } from './model';
import { DASH, describeWire } from './read-list-cell';
import * as words from './words';

export interface MissingFigures {
  readonly tab: string;
  /** "area" or "weight". */
  readonly field: 'area' | 'weight';
  readonly unit: ListUnit;
  readonly column: number;
  readonly headingRow: number;
  /** The column has no heading yet: this one is written with the first figure. */
  readonly heading?: { readonly row: number; readonly text: string };
  /** For weights: where the day of weighing stands, or a column for it that is yet to be begun. */
  readonly weighedOn?: { readonly column: number; readonly isNew: boolean };
  /** Rows of the list without the figure, by their names. */
  readonly rows: readonly RowWithout[];
}

export interface RowWithout {
  readonly row: number;
  readonly name: string;
  readonly cell: string;
  /** What stands as its day of weighing already, as text: a weight that is typed is of that day. */
  readonly weighed?: string;
  /** What stands there and cannot be read: it is written over. */
  readonly unread?: string;
  /** A name with nothing beside it may also head the rows below it; several such in a row do not. */
  readonly isLone: boolean;
}

const HEADINGS = { area: 'Area', weight: 'Weight' } as const;

/** What is missing in a list, or cannot be read; undefined: nothing. */
export function missingFigures(
  { tab, list }: ListSource<GrowerList>,
  system: UnitSystem,
  {
    isKnown,
    isWrong,
  }: {
    /** The figure of that row comes from elsewhere, or none is needed. */
    readonly isKnown: (name: string) => boolean;
    /** Something is wrong with the cell. */
    readonly isWrong: (cell: string) => boolean;
  },
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
    const cell = cellOnTab(tab.name, row, column);
    const figure = cells[column - 1];
    const isTyped = (tab.formulas[row - 1]?.[column - 1] ?? '') === '';
    const unread = typeof figure === 'string' && isTyped && !lacks && isWrong(cell) ? figure : undefined;
    const weighed = columns.weighedOn === undefined ? '' : describeWire(cells[columns.weighedOn - 1] ?? '');
    const isWeighed = field === 'weight' && !isBlank(columns.weighedOn);
    if (!isItem || !((lacks && !isKnown(name)) || unread !== undefined)) return [];
    return [
      {
        row,
        name,
        cell,
        ...(isWeighed && { weighed }),
        ...(unread !== undefined && { unread }),
        isLone: kind === 'lone' && ![row - 1, row + 1].some((beside) => rowKind(under, beside) === 'lone'),
      },
    ];
  });
  if (rows.length === 0) return undefined;
  const heading = { row: list.headingRow, text: `${HEADINGS[field]} (${unit})` };
  const isMade = columns[field] === undefined;
  // Another list may stand right beside the first free column.
  const weighedOn = {
    column: columns.weighedOn ?? freeColumn(tab, list, isMade ? column : undefined),
    isNew: columns.weighedOn === undefined,
  };
  return {
    tab: tab.name,
    field,
    unit,
    column,
    headingRow: list.headingRow,
    rows,
    ...(isMade && { heading }),
    ...(field === 'weight' && { weighedOn }),
  };
}

export interface FilledFigures {
  readonly cells: readonly CellChange[];
}

/**
 * The cells to fill with what was typed, by row; a sentence where something typed is no figure. A weight without a day
 * of weighing is of today: else it would be taken as of the day on which it is read, whenever that is.
 */
export function filledFigures(
  { tab, field, column, heading, headingRow, weighedOn, rows }: MissingFigures,
  typed: Readonly<Record<number, string>>,
  { comma, today }: { readonly comma: boolean; readonly today: Day },
): FilledFigures | { readonly problem: string } {
  const fill = (row: number, after: BlockCell, at = column, before = BLANK): CellChange => ({
    tab,
    row,
    column: at,
    before,
    after,
  });
  const cells: CellChange[] = [];
  for (const { row, name, weighed, unread = '' } of rows) {
    if (DASH.test(typed[row] ?? '')) {
      cells.push(fill(row, text('-'), column, text(unread)));
      continue;
    }
    const read = readAmount(typed[row] ?? '', comma);
    if ('problem' in read) return { problem: words.figureMust(name, field, read.problem) };
    if (read.value === undefined) continue;
    if (read.value <= 0)
      return { problem: words.figureMust(name, field, `be more than 0, got ${read.value}`) };
    cells.push(fill(row, number(read.value), column, text(unread)));
    if (weighedOn && weighed === undefined) cells.push(fill(row, date(today), weighedOn.column));
  }
  if (cells.length === 0) return { problem: words.typeOne(field) };
  const isDated = weighedOn?.isNew && cells.some((cell) => cell.column === weighedOn.column);
  const headings = [
    ...(heading ? [fill(heading.row, text(heading.text))] : []),
    ...(isDated ? [fill(headingRow, text(MADE_HEADINGS.weighedOn), weighedOn.column)] : []),
  ];
  return { cells: [...headings, ...cells] };
}
