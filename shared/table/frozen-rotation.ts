import type { WireCell } from '../contract';
import type { PlanProblem } from '../plan/model';
import { warningIn } from './head-rows';
import type { OldRotation, PastRow, RotationBlockInput } from './model';

/** Moves of the table that follow the lists still. */
export function liveMoves({ rows }: OldRotation): number {
  return rows.filter(({ lookups }) => lookups.length > 0).length;
}

/**
 * The table as it stands, with the figures that it looks up in the lists as values: a record that does not change when
 * the lists are made ready for the next season. Nothing is planned.
 */
export function frozenRotation(
  old: OldRotation,
  cells: readonly WireCell[],
  { paddocks, groups }: Pick<PlanProblem, 'paddocks' | 'groups'>,
): Omit<RotationBlockInput, 'corner'> | undefined {
  const { settings, headRows, rows, skipped } = old;
  const past = rows.flatMap((row): PastRow[] => {
    const { inDay, days = 1 } = row;
    return inDay === undefined ? [] : [{ ...row, inDay, outDay: row.out ?? inDay + days }];
  });
  if (!settings || past.length < rows.length) return undefined;
  const warnings = cells.flatMap((words) => warningIn(words) ?? []);
  return {
    problem: { paddocks, groups, rules: settings.rules },
    plan: { stays: [], score: { total: 0, restShortDays: 0, overLimitDays: 0, moves: 0, strides: 0 } },
    settings,
    warnings,
    headRows,
    past,
    future: [],
    skipped,
  };
}
