import { dayFromIso } from '../../../../shared/core/calendar/day';
import { readTyped } from '../../../../shared/locale/read-typed';
import type { HerdEntry } from '../../../../shared/tasks/herd/herd-block';
import { toInside, type UnitSystem } from '../../../../shared/units/units';

export interface TypedChange {
  readonly group: string;
  readonly day: string;
  readonly head: string;
  readonly weight: string;
  readonly note: string;
}

/** The row that the form stands for; none where neither head nor weight was typed. */
export function readChange(
  typed: TypedChange,
  units: UnitSystem,
  comma: boolean,
): { readonly entry: HerdEntry } | { readonly problem: string } | { readonly none: true } {
  const head = numberIn(typed.head, comma);
  const weight = numberIn(typed.weight, comma);
  if (head === undefined && weight === undefined) return { none: true };
  if (head !== undefined && !(Number.isInteger(head) && head >= 0)) {
    return { problem: `head must be a whole number, 0 or more, got ${typed.head}` };
  }
  if (weight !== undefined && !(weight > 0)) {
    return { problem: `the weight must be a number above 0, got ${typed.weight}` };
  }
  const day = dayFromIso(typed.day);
  if (day === undefined) return { problem: 'the change needs a day' };
  const amounts = {
    ...(head !== undefined && { head }),
    ...(weight !== undefined && { weightKg: toInside(weight, 'mass', units) }),
  };
  return { entry: { group: typed.group, day, ...amounts } };
}

/** NaN for what is typed and no number. */
function numberIn(typed: string, comma: boolean): number | undefined {
  if (typed.trim() === '') return undefined;
  const read = readTyped(typed, comma);
  return 'value' in read && typeof read.value === 'number' ? read.value : Number.NaN;
}
