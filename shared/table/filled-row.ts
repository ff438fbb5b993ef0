import { FIELDS, isOther, type Lists, listedFigures } from './listed-figures';
import type { LookedUp, PastRow } from './model';
import { moveName } from './move-name';
import * as words from './words';

export interface Filled {
  readonly row: PastRow;
  /** "Reds, Oak on Mon 13 Apr", where figures of the move were missing. */
  readonly move?: string;
  /** Names of it that are not in the lists. */
  readonly absent?: readonly string[];
  /** "area of Reds, Oak on Mon 13 Apr", where the table's formula showed something else than the list says. */
  readonly corrected?: string;
}

const WORDS: Readonly<Record<LookedUp, string>> = {
  head: 'head',
  startWeight: 'weight',
  growthDays: 'days since the weighing',
  dailyGain: 'daily gain',
  area: 'area',
};

const WEIGHING: readonly LookedUp[] = ['startWeight', 'growthDays'];

/**
 * A past move with head, weight and area: those that it was counted with, else, in a row that the grower added by
 * hand, what the lists say now. A figure that a formula looked up is what the list and the herd log say. Where it shows
 * neither that nor what the list says without the log, which may be younger than the table, it shows another column.
 */
export function filledRow(row: PastRow, lists: Lists): Filled {
  const { group, paddock, listed } = listedFigures(row, lists);
  const move = moveName(row);
  const othersThan = (says: Partial<PastRow>): LookedUp[] =>
    row.lookups.filter((key) => isOther(row[FIELDS[key]], says[FIELDS[key]]));
  const other = othersThan(listed);
  // Days are counted from the weighing that the weight is of: one is not taken without the other.
  const weighing = WEIGHING.some((key) => other.includes(key)) ? WEIGHING : [];
  const taken = [...other, ...weighing.filter((key) => !row.typed.includes(key))];
  const right = Object.fromEntries(taken.map((key) => [FIELDS[key], listed[FIELDS[key]]]));
  const wrong = other.length === 0 ? [] : othersThan(listedFigures(row, withoutLog(lists)).listed);
  const corrected =
    wrong.length > 0 ? { corrected: `${wrong.map((key) => WORDS[key]).join(', ')} of ${move}` } : {};
  const isWhole =
    row.head !== undefined && row.startWeightKg !== undefined && row.areaSquareMeters !== undefined;
  if (isWhole) return { row: { ...row, ...right }, ...corrected };
  return {
    row: { ...listed, ...row, ...right },
    move,
    absent: [...(group ? [] : [row.group]), ...(paddock ? [] : [row.paddock])],
    ...corrected,
  };
}

function withoutLog(lists: Lists): Lists {
  return { ...lists, groups: lists.groups.map(({ herd: _, ...unlogged }) => unlogged) };
}

/** What was filled in, and what cannot be because a name is not in the lists, in one sentence each. */
export function filledNotes(filled: readonly Filled[]): string[] {
  const moves = filled.flatMap(({ move, absent }) =>
    move !== undefined && absent?.length === 0 ? [move] : [],
  );
  const taken: string[] = moves.length === 0 ? [] : [words.takenFromLists(moves[0]!, moves.length - 1)];
  const wrong = filled.flatMap(({ corrected }) => corrected ?? []);
  if (wrong.length > 0) taken.push(words.otherColumn(wrong[0]!, wrong.length - 1));
  const names = [...new Set(filled.flatMap(({ absent }) => absent ?? []))];
  return [...taken, ...names.map((name) => absentNote(name, filled))];
}

function absentNote(name: string, filled: readonly Filled[]): string {
  const moves = filled.flatMap(({ move, absent }) =>
    move !== undefined && absent?.includes(name) ? [move] : [],
  );
  return words.notInLists(name, moves[0]!, moves.length - 1);
}
