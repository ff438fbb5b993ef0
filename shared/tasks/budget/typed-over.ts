/**
 * Cells of a budget's months and stays where the builder wrote a formula and a typed value stands now. Their rows have
 * no label of their own, as typedOverCells() needs one.
 */
import { headingRow } from '../../block/heading-row';
import type { BlockContent } from '../../block/read-block';
import type { Place } from '../typed-over-cells';
import { rowOfLabel } from '../without-own';
import { MONTH_HEADINGS } from './budget-block';
import { COUNTED_HEADINGS, STAY_HEADINGS, type StayHeading } from './stay-columns';

interface TypedOver {
  readonly surely: readonly Place[];
  /** Values in a column of formulas that the builder may have written as values, where no lookup was safe. */
  readonly perhaps: readonly Place[];
}

const OF_GROUP: readonly StayHeading[] = ['Head', 'Weighed', 'Since weighed', 'Daily gain'];
const LINKED: readonly StayHeading[] = ['Group', 'Stay in', 'In', 'Days', ...OF_GROUP, 'Area'];

export function typedOver(old: BlockContent): TypedOver {
  const stays = tableOf(old, STAY_HEADINGS);
  const linked = linkedCells(old, stays);
  const surely = [
    ...valuesUnder(old, tableOf(old, MONTH_HEADINGS, 'On the ground'), MONTH_HEADINGS),
    ...valuesUnder(old, stays, ['Out', 'Mean weight', ...COUNTED_HEADINGS]),
    ...linked.surely,
  ];
  return { surely, perhaps: linked.perhaps };
}

interface Table {
  readonly rows: readonly number[];
  readonly columnOf: (heading: string) => number;
}

function tableOf(old: BlockContent, headings: readonly string[], end?: string): Table {
  const at = headingRow(old.values, headings);
  const last = end === undefined ? old.values.length : rowOfLabel(old, end);
  const rows = at < 0 ? [] : Array.from({ length: Math.max(0, last - at - 1) }, (_, i) => at + 1 + i);
  return { rows, columnOf: (heading) => old.values[at]?.indexOf(heading) ?? -1 };
}

const isFormula = (old: BlockContent, row: number, column: number): boolean =>
  (old.formulas[row]?.[column] ?? '') !== '';
const isValue = (old: BlockContent, [row, column]: Place): boolean =>
  (old.values[row]?.[column] ?? '') !== '' && !isFormula(old, row, column);

function valuesUnder(old: BlockContent, { rows, columnOf }: Table, headings: readonly string[]): Place[] {
  return headings
    .flatMap((heading) => rows.map((row): Place => [row, columnOf(heading)]))
    .filter((place) => isValue(old, place));
}

/**
 * Links to the rotation table stand in the whole row; lookups in the grower's lists in every row of the same group
 * or paddock.
 */
function linkedCells(old: BlockContent, { rows, columnOf }: Table): TypedOver {
  const surely: Place[] = [];
  const perhaps: Place[] = [];
  const rowIsLinked = (row: number): boolean =>
    LINKED.slice(0, 4).some((heading) => isFormula(old, row, columnOf(heading)));
  for (const heading of LINKED) {
    const column = columnOf(heading);
    const nameColumn = columnOf(OF_GROUP.includes(heading) ? 'Group' : 'Stay in');
    const withFormula = rows.filter((row) => isFormula(old, row, column));
    const names = new Set(withFormula.map((row) => old.values[row]?.[nameColumn]));
    for (const row of rows) {
      if (!isValue(old, [row, column])) continue;
      if (rowIsLinked(row) || names.has(old.values[row]?.[nameColumn])) surely.push([row, column]);
      else if (withFormula.length > 0) perhaps.push([row, column]);
    }
  }
  return { surely, perhaps };
}
