import type { PlanProblem } from '../../../../shared/plan/model';
import { frozenRotation } from '../../../../shared/table/frozen-rotation';
import type { OldTable } from '../../../../shared/tasks/rotation/old-table';
import { writeTable } from './write-table';

/**
 * Writes the table that stands over itself with its figures as values, so that it no longer follows the lists. Says
 * whether it could: a table with moves that have no day is left as it is.
 */
export async function freezeTable(
  old: OldTable,
  lists: Pick<PlanProblem, 'paddocks' | 'groups'>,
): Promise<boolean> {
  const input = frozenRotation(old.rotation, old.firstColumn, lists);
  if (input) await writeTable(input, { at: 'own', old });
  return input !== undefined;
}
