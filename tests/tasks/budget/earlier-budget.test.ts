/** A budget of an earlier season is kept as a record. No source: invented days. */
import { expect, test } from 'vitest';
import type { WireCell } from '../../../shared/contract';
import { dayFromIso } from '../../../shared/core/calendar/day';
import type { BudgetStay } from '../../../shared/tasks/budget/budget-model';
import { earlierBudget } from '../../../shared/tasks/budget/earlier-budget';
import { STAY_HEADINGS } from '../../../shared/tasks/budget/stay-columns';

const OUT = STAY_HEADINGS.indexOf('Out');
const stay = (out: WireCell): WireCell[] => STAY_HEADINGS.map((_, c) => (c === OUT ? out : 'x'));
const values: WireCell[][] = [
  [...STAY_HEADINGS],
  stay(''),
  stay({ d: '2026-06-02' }),
  stay({ d: '2026-10-05' }),
  stay({ d: '2026-07-01' }),
];
const info = { name: 'SOUNDER_BUDGET', tab: 'Feed', row: 1, column: 1, rows: 5, columns: values[0]!.length };
const old = { info, values, formulas: values.map((row) => row.map(() => '')) };
const from = (iso: string): BudgetStay[] => [{ inDay: dayFromIso(iso) } as BudgetStay];

test('where its last stay ends before the new ones begin', () => {
  expect(earlierBudget(old, from('2027-04-10'))).toContain(
    '“Feed” is of an earlier season, up to 2026-10-05',
  );
  expect(earlierBudget(old, from('2026-10-05'))).toBeDefined();
});

test('not while the season goes on, nor where no stays are planned', () => {
  expect(earlierBudget(old, from('2026-10-04'))).toBeUndefined();
  expect(earlierBudget(old, [])).toBeUndefined();
});
