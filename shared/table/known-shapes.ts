import { formulaShape } from '../block/formula-shape';
import { checkFormula } from './check-formula';
import type { ColumnKey } from './columns';
import { herdFormulas } from './herd-formulas';
import { ifFilled } from './list-lookup';
import {
  densityFormula,
  dueOutFormula,
  growthDaysFormula,
  inDayFormula,
  keyFormula,
  lastOutFormula,
  outFormula,
  plannedInFormula,
  restBeforeFormula,
  restDueFormula,
  stayDaysFormula,
  type TableFrame,
} from './move-formulas';

const ROW = 5;
const FRAME: TableFrame = {
  letters: () => 'A',
  anchorRow: 2,
  lastRow: 20,
  groupWindow: 3,
  paddockWindow: 3,
};
const SETTINGS = { seasonStart: 'A30', seasonEnd: 'A31' };
const FIRST_ROW = FRAME.anchorRow + 1;

/** The shapes of the formulas that a move has in a column of ours; undefined for columns without one. */
export function knownShapes(key: ColumnKey): ReadonlySet<string> | undefined {
  const known = worked.get(key) ?? new Set(FORMULAS[key]?.().map(formulaShape));
  worked.set(key, known);
  return known.size > 0 ? known : undefined;
}

/** Every row of a table asks for them, and they never change. */
const worked = new Map<ColumnKey, ReadonlySet<string>>();

const LOOKUP = 'INDEX(A1:A9;MATCH(A5;A1:A9;0))';
const A_DAY = 'DATE(2000;1;1)';
/** As tables of version 0.1.0 have them, and as they are written now. */
const lookup = (): string[] => [LOOKUP, ifFilled(LOOKUP)];

/** With a herd log, over what the list or a number says. */
const LOG = herdFormulas(
  { units: 'US', keys: 'A1:A9', days: 'A1:A9', heads: 'A1:A9', weights: 'A1:A9', says: '' },
  'A5',
  'A6',
);
const A_NUMBER = '7/10^6';
const logged = (of: (otherwise: string) => string): string[] =>
  [ifFilled(LOOKUP).slice(1), A_NUMBER].map((one) => `=${of(one)}`);

const FORMULAS: Partial<Record<ColumnKey, () => string[]>> = {
  out: () => [undefined, ROW + 1, ROW + 2].map((next) => outFormula(FRAME, ROW, next)),
  density: () => [densityFormula(FRAME, ROW)],
  restBefore: () => [restBeforeFormula(FRAME, ROW)],
  check: () =>
    [FIRST_ROW, ROW].flatMap((row) =>
      [undefined, 'A32'].map((groundLimit) => checkFormula(FRAME, row, { ...SETTINGS, groundLimit })),
    ),
  inDay: () => [inDayFormula(FRAME, ROW)],
  dueOut: () => [dueOutFormula(FRAME, ROW)],
  stayDays: () => [stayDaysFormula(FRAME, ROW)],
  lastOut: () => [lastOutFormula(FRAME, ROW)],
  groupKey: () => [keyFormula('A5')],
  paddockKey: () => [keyFormula('A5')],
  growthDays: () => [
    growthDaysFormula(FRAME, ROW, A_DAY),
    growthDaysFormula(FRAME, ROW, LOOKUP),
    growthDaysFormula(FRAME, ROW, LOOKUP, true),
    growthDaysFormula(FRAME, ROW, LOG.weighedOn(A_DAY)),
    growthDaysFormula(FRAME, ROW, LOG.weighedOn(LOOKUP), true),
  ],
  plannedIn: () => [A_DAY, plannedInFormula(FRAME, ROW, A_DAY)],
  restDue: () => [false, true].map((monthly) => restDueFormula(FRAME, ROW, 'A33', monthly)),
  head: () => [...lookup(), ...logged(LOG.head)],
  startWeight: () => [...lookup(), ...logged(LOG.weight)],
  dailyGain: lookup,
  area: lookup,
  openFrom: lookup,
  openUntil: lookup,
  lastUsed: lookup,
};
