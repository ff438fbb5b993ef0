import { formulaShape } from '../block/formula-shape';
import { checkFormula } from './check-formula';
import type { ColumnKey } from './columns';
import { ifFilled } from './list-lookup';
import {
  densityFormula,
  dueOutFormula,
  growthDaysFormula,
  inDayFormula,
  keyFormula,
  lastOutFormula,
  loadFormula,
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

const FORMULAS: Partial<Record<ColumnKey, () => string[]>> = {
  out: () => [undefined, ROW + 1, ROW + 2].map((next) => outFormula(FRAME, ROW, next)),
  density: () => [densityFormula(FRAME, ROW)],
  load: () => [loadFormula(FRAME, ROW)],
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
  ],
  plannedIn: () => [A_DAY, plannedInFormula(FRAME, ROW, A_DAY)],
  restDue: () => [false, true].map((monthly) => restDueFormula(FRAME, ROW, 'A33', monthly)),
  head: lookup,
  startWeight: lookup,
  dailyGain: lookup,
  area: lookup,
  openFrom: lookup,
  openUntil: lookup,
  lastUsed: lookup,
};
