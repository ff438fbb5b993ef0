import { headingRow } from '../../block/heading-row';
import type { BlockContent } from '../../block/read-block';
import { isoFromDay } from '../../core/calendar/day';
import type { BudgetStay } from './budget-model';
import { STAY_HEADINGS } from './stay-columns';
import * as words from './words';

/** Says that a budget ends before the stays of a new one begin, so that it is kept; undefined where it does not. */
export function earlierBudget(old: BlockContent, stays: readonly BudgetStay[]): string | undefined {
  const at = headingRow(old.values, STAY_HEADINGS);
  const column = old.values[at]?.indexOf('Out') ?? -1;
  const days = old.values.slice(at + 1).flatMap((row) => {
    const out = row[column];
    return typeof out === 'object' ? [out.d.slice(0, 10)] : [];
  });
  const last = days.sort()[days.length - 1];
  if (last === undefined || stays.length === 0) return undefined;
  if (last > isoFromDay(Math.min(...stays.map(({ inDay }) => inDay)))) return undefined;
  return words.earlierStays(old.info.tab, last);
}
