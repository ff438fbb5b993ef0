import { formulaShape } from '../block/formula-shape';
import { headingRow } from '../block/heading-row';
import { isFilled } from '../block/is-filled';
import type { BlockContent } from '../block/read-block';
import type { WireCell } from '../contract';

/** A part of a block that its builder writes throughout, by rows and columns counted from 0 in the block. */
export interface OwnPart {
  readonly firstRow: number;
  /** Row after the last. */
  readonly endRow: number;
  readonly columns: (column: number) => boolean;
  /** Only rows with something in their first cell are the builder's. */
  readonly namedRowsOnly?: true;
  /** Which of its values are the builder's; absent: all. */
  readonly isOurs?: (value: WireCell, formula: string) => boolean;
  /** The builder's formulas there differ from row to row. */
  readonly manyFormulas?: true;
}

/**
 * A block as it stands, less what its builder wrote and writes anew: names, dates and sentences that change when
 * the lists or the plan change. What is left must not get lost: also a formula that most rows of its column do not
 * have, which the grower may have typed there.
 */
export function withoutOwn(old: BlockContent, parts: readonly OwnPart[]): BlockContent {
  const isOwn = (row: number, column: number): boolean =>
    parts.some(
      ({ firstRow, endRow, columns, namedRowsOnly, isOurs, manyFormulas }) =>
        (!namedRowsOnly || isFilled(old, row, 0)) &&
        row >= firstRow &&
        row < endRow &&
        columns(column) &&
        (isOurs === undefined ||
          isOurs(old.values[row]?.[column] ?? '', old.formulas[row]?.[column] ?? '')) &&
        (manyFormulas || isValueOrUsual(old, firstRow, endRow, row, column)),
    );
  const less = <Cell>(grid: readonly (readonly Cell[])[]) =>
    grid.map((row, r) => row.map((cell, c) => (isOwn(r, c) ? '' : cell)));
  return { ...old, values: less(old.values), formulas: less(old.formulas) };
}

function isValueOrUsual(old: BlockContent, first: number, end: number, row: number, column: number): boolean {
  const formula = old.formulas[row]?.[column] ?? '';
  if (formula === '') return true;
  const shape = formulaShape(formula);
  const filled = old.formulas.slice(first, end).filter((_, i) => isFilled(old, first + i, column));
  const alike = filled.filter(({ [column]: one = '' }) => one !== '' && formulaShape(one) === shape);
  return alike.length > 1 && 2 * alike.length > filled.length;
}

/** Row whose first cell is that label, from 0; the end of the block where there is none. */
export function rowOfLabel({ values }: BlockContent, label: string): number {
  const at = values.findIndex((row) => row[0] === label);
  return at < 0 ? values.length : at;
}

/** The rows under some headings, down to a label or the end of the block, in the columns of `own` headings. */
export function ownTable(
  old: BlockContent,
  headings: readonly string[],
  own: readonly string[],
  end?: string,
): OwnPart {
  const at = headingRow(old.values, headings);
  const head = old.values[at];
  const columns = new Set(own.map((heading) => head?.indexOf(heading) ?? -1));
  return {
    firstRow: at < 0 ? old.values.length : at + 1,
    endRow: end === undefined ? old.values.length : rowOfLabel(old, end),
    columns: (column) => columns.has(column),
    namedRowsOnly: true,
  };
}
