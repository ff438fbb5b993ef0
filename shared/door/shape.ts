import type { AnyEntry, Param } from '../catalogue/define';
import { Refusal } from '../refusals';

export type Cells = readonly (readonly unknown[])[];

export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

interface MaybeRange {
  readonly param: Param;
  readonly cells: Cells | undefined;
}

/** The shape that all ranges of a call share, or undefined where there is no range. Refuses unequal ranges. */
export function rangeShape(entry: AnyEntry, args: readonly MaybeRange[]): Shape | undefined {
  let first: string | undefined;
  let shape: Shape | undefined;
  for (const { param, cells } of args) {
    if (!cells) continue;
    const columns = cells[0]?.length ?? 0;
    if (!isRectangle(cells, columns)) {
      throw new Refusal(param.name, 'be a whole rectangle of cells', 'rows of different lengths');
    }
    if (!shape) {
      first = param.name;
      shape = { rows: cells.length, columns };
    } else if (cells.length !== shape.rows || columns !== shape.columns) {
      throw new Refusal(
        param.name,
        `have the same shape as ${first} (${shape.rows} × ${shape.columns})`,
        `${cells.length} × ${columns}`,
      );
    }
  }
  if (first && shape) refuseTooWide(entry, first, shape);
  return shape;
}

/** A plain loop: this is one of the few things done for every row before any arithmetic. */
function isRectangle(cells: Cells, columns: number): boolean {
  for (let r = 0; r < cells.length; r++) {
    const row = cells[r];
    if (!Array.isArray(row) || row.length !== columns) return false;
  }
  return true;
}

function refuseTooWide(entry: AnyEntry, argument: string, { rows, columns }: Shape): void {
  const { kind } = entry.result;
  if (kind === 'lines') {
    throw new Refusal(argument, 'be a single value', `a range of ${rows} × ${columns}`);
  }
  if (kind !== 'value' && columns !== 1) {
    throw new Refusal(
      argument,
      'be one column, because the answer takes several cells a row',
      `${columns} columns`,
    );
  }
}
