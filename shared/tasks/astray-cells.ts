import { formulaShape } from '../block/formula-shape';
import type { PointingCell } from '../block/pointing-cells';
import type { BlockContent } from '../block/read-block';
import { referencesIn } from '../block/references';
import type { BlockCell } from '../contract';

type Cells = readonly (readonly BlockCell[])[];

/**
 * Cells of the grower's that point at another row of the block once `next` is written over `old`: the first or the
 * last row that each refers to is not where it was. A range that ends below the block only has to hold all of the
 * new one.
 */
export function astrayCells(
  pointing: readonly PointingCell[],
  old: BlockContent,
  next: Cells,
): readonly string[] {
  if (pointing.length === 0) return [];
  const { row: top } = old.info;
  const stays = rowsThatStay(old, next);
  const isAstray = ({ firstRow, lastRow, reachesRow }: PointingCell): boolean => {
    if (!stays[firstRow - top]) return true;
    return reachesRow > lastRow ? reachesRow < top + next.length - 1 : !stays[lastRow - top];
  };
  return [...new Set(pointing.filter(isAstray).map(({ cell }) => cell))];
}

/**
 * Whether each row of the old block is again in its place. The first is, as the corner of a block never moves. A row
 * without a label goes with the labelled one above it.
 */
function rowsThatStay(old: BlockContent, next: Cells): readonly boolean[] {
  const again = rowsAgain(old, next);
  let withLabel = true;
  return old.values.map(([first = ''], r) => {
    if (r === 0) return true;
    const now = next[r]?.[0];
    const formula = old.formulas[r]?.[0] ?? '';
    const hasLabel = formula !== '' || (typeof first === 'string' && first !== '');
    if (!hasLabel) return withLabel && now !== undefined && !isLabel(now);
    withLabel = again[r] === r || (now?.k === 'f' && isSameFormula(formula, now.v));
    return withLabel;
  });
}

/** A row without a label of its own has not stayed where a labelled one comes to stand. */
function isLabel(cell: BlockCell): boolean {
  return cell.k === 't' || cell.k === 'f';
}

/** A label by formula shows its text only when it is written: the same formula is the same row. */
function isSameFormula(one: string, other: string): boolean {
  const key = (formula: string): string => JSON.stringify([formulaShape(formula), referencesIn(formula)]);
  return key(one) === key(other);
}

/**
 * Row of a new block, from 0, that stands for each row of the old one: the same text in the first column, the first
 * row of that text for the first, the second for the second. Undefined where there is none.
 */
function rowsAgain(
  old: BlockContent,
  next: readonly (readonly BlockCell[])[],
): readonly (number | undefined)[] {
  const rows = new Map(
    counted(next.map((row) => (row[0]?.k === 't' ? row[0].v : ''))).map((key, r) => [key, r]),
  );
  const labels = old.values.map(([first]) => (typeof first === 'string' ? first : ''));
  return counted(labels).map((key) => (key === '' ? undefined : rows.get(key)));
}

/** "label" and which one of that label it is; '' for no label. */
function counted(labels: readonly string[]): string[] {
  const counts = new Map<string, number>();
  return labels.map((label) => {
    if (label === '') return '';
    const count = (counts.get(label) ?? 0) + 1;
    counts.set(label, count);
    return JSON.stringify([label, count]);
  });
}
