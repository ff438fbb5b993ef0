/** The stays' part of the budget block: one row a stay under the cell functions. */
import { answer, BLANK, formula, text } from '../../block/cells';
import type { BlockCell } from '../../contract';
import { symbolOf, type UnitSystem } from '../../units/units';
import type { BudgetStay } from './budget-model';
import { addStay } from './stay-cells';
import {
  AT,
  COUNTED_AT,
  COUNTED_HEADINGS,
  FORMATS,
  SPILLED,
  STAY_HEADINGS,
  type StayColumns,
  type StayHeading,
  type StaysOn,
  UNITS,
} from './stay-columns';

/**
 * Cell functions stand once a column, in the blank row above the first stay, where their own answer is a blank, and
 * spill over the stays: sorting the stays does not tear them off.
 */
export function addStays(stays: readonly BudgetStay[], on: StaysOn): StayColumns {
  const { draft, units } = on;
  draft.add([text('Stay by stay')], 'heading');
  draft.add(
    STAY_HEADINGS.map((heading) => text(unitOf(heading, units))),
    'muted',
  );
  draft.add([...STAY_HEADINGS, ...COUNTED_HEADINGS].map(text), 'heading');
  const anchor = draft.next();
  const last = anchor + stays.length;
  const functions = functionBodies((heading) => draft.down(anchor, last, AT[heading]), on);
  // The answer about nutrients is wider than its function: it fills the row of functions too.
  const spilled: readonly StayHeading[] = SPILLED;
  const beside = (heading: StayHeading): BlockCell => (spilled.includes(heading) ? answer() : BLANK);
  draft.add(STAY_HEADINGS.map((heading) => functions[heading] ?? beside(heading)));
  for (const stay of stays) addStay(stay, on, (column) => draft.down(anchor, last, column));
  // From the blank row of the cell functions on: a single stay would be a range of one cell.
  return Object.fromEntries(
    Object.entries({ ...AT, ...COUNTED_AT }).map(([heading, at]) => [heading, draft.down(anchor, last, at)]),
  ) as StayColumns;
}

function unitOf(heading: StayHeading, units: UnitSystem): string {
  const quantity = UNITS[heading];
  return quantity ? symbolOf(quantity, units) : '';
}

function functionBodies(
  column: (heading: StayHeading) => string,
  { units, set }: StaysOn,
): Partial<Record<StayHeading, BlockCell>> {
  const system = `"${units}"`;
  const [head, gain, days] = [column('Head'), column('Daily gain'), column('Days')];
  const kept = column('Mean head');
  const [first, out, mean] = [column('Weight in'), column('Weight out'), column('Mean weight')];
  const started = column('Weighed');
  const since = column('Since weighed');
  return {
    'Weight in': formula(`=PIG_WEIGHT(${started};${since};${gain};${system})`, FORMATS['Weight in']),
    'Weight out': formula(`=PIG_WEIGHT(${first};${days};${gain};${system})`, FORMATS['Weight out']),
    Feed: formula(`=FEED_NEEDED(${kept};${first};${days};${gain};${set.outdoor};${system})`, FORMATS.Feed),
    'Water a day': formula(`=WATER_NEEDED(${head};${out};${set.mild};${system})`, FORMATS['Water a day']),
    'Hot day': formula(`=WATER_NEEDED(${head};${out};${set.hot};${system})`, FORMATS['Hot day']),
    'Shelter floor': formula(
      `=SHELTER_AREA(${head};${out};${set.shelter};${system})`,
      FORMATS['Shelter floor'],
    ),
    N: formula(`=NUTRIENT_LOAD(${kept};${mean};${days};${column('Area')};${system})`, FORMATS.N),
  };
}
