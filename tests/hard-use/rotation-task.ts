/**
 * The rotation task from the tabs to the written table, by the very functions that the sidebar's panel calls and in
 * the same order: read the file, find and read the lists, read the rules from the form, plan, write.
 */
import { bookOf } from '../../shared/block/book';
import type { BlockInfo, WriteDone } from '../../shared/contract';
import { dayFromIso } from '../../shared/core/calendar/day';
import { decimalComma } from '../../shared/locale/decimal-comma';
import { unitsOfLocale } from '../../shared/locale/units-of-locale';
import { explainPlan } from '../../shared/plan/explain-plan';
import type { Plan, PlanProblem, PlanRules } from '../../shared/plan/model';
import { planRotation } from '../../shared/plan/plan-rotation';
import type { OldRotation } from '../../shared/table/model';
import type { RebuildInput } from '../../shared/table/rebuild-input';
import type { rotationBlock } from '../../shared/table/rotation-block';
import { growerLists } from '../../shared/tasks/grower-lists';
import { type OldTable, oldTable } from '../../shared/tasks/rotation/old-table';
import { readRules } from '../../shared/tasks/rotation/read-rules';
import { rulesFormOf, startingRules } from '../../shared/tasks/rotation/rules-form';
import { seasonOf } from '../../shared/tasks/rotation/season';
import { tableInput } from '../../shared/tasks/rotation/table-input';
import type { UnitSystem } from '../../shared/units/units';
import type { Workbook } from '../../src/headless';
import type { Lists } from '../../src/sidebar/lists/use-lists';
import { rotationRequest } from '../../src/sidebar/panels/rotation/rotation-request';
import type { Book } from '../../src/sidebar/parts/use-book';

export interface Wish {
  /** Absent: what the form starts with, or the rules of the table that stands there. */
  readonly rules?: PlanRules;
  readonly units?: UnitSystem;
  /** Says above the table what would mend it; takes seconds. */
  readonly explain?: boolean;
  /** A table that stands there already is written over in its place. */
  readonly place?: { at: 'new-tab'; tab: string } | { at: 'area'; tab: string; row: number; column: number };
}

export type Outcome =
  | {
      readonly kind: 'written';
      readonly info: BlockInfo;
      readonly note: string;
      readonly problem: PlanProblem;
      readonly plan: Plan;
      readonly units: UnitSystem;
      readonly rules: PlanRules;
      readonly old: OldRotation | undefined;
      readonly rebuild: RebuildInput | undefined;
    }
  /** Something in the sheet or the form is wrong: sentences, each with its cell where it is the sheet. */
  | { readonly kind: 'refused'; readonly sentences: readonly string[] }
  | {
      readonly kind: 'no plan';
      readonly problem: PlanProblem;
      readonly reason: string;
      readonly mend: string;
    };

/** Asks the script; an error comes back as its sentence. */
export function asked<Reply>(book: Workbook, call: string, request: unknown = {}): Reply {
  const reply = book.ask(call, request);
  if (!reply.ok) throw new Error(reply.error);
  return reply.data as Reply;
}

export function readBook(workbook: Workbook): Book {
  return bookOf(asked(workbook, 'readFile'));
}

/** The lists as the page proposes them, nothing corrected by hand. */
export function readLists(book: Book, units: UnitSystem): Lists {
  return { ...growerLists(book, units), choose: () => undefined };
}

/** Builds the table, or rebuilds the one that stands there. Two people at once: read with one, write with another. */
export function buildRotation(workbook: Workbook, wish: Wish = {}): Outcome {
  return writeRotation(workbook, readBook(workbook), wish);
}

export function writeRotation(workbook: Workbook, book: Book, wish: Wish = {}): Outcome {
  const { locale, today } = book.overview;
  const old = oldTable(book);
  const settings = old?.rotation.settings;
  const units = wish.units ?? settings?.unitSystem ?? unitsOfLocale(locale);
  const lists = readLists(book, units);
  const comma = decimalComma(locale);
  const day = dayFromIso(today)!;
  const given = wish.rules ?? settings?.rules;
  const form = given ? rulesFormOf(given, units, comma) : startingRules(lists.paddocks, lists.groups, day);
  const read = readRules(form, units, comma);
  const season = seasonOf({ lists, rules: read.rules, old, today: day, countPlannedAsDone: false });
  if ('missing' in season) {
    const told = [...lists.problems, ...season.problems].map(({ sentence }) => sentence);
    return { kind: 'refused', sentences: [season.missing, ...told, ...Object.values(read.problems)] };
  }
  const { problem, rules, rebuild } = season;
  const plan = planRotation(problem);
  if ('reason' in plan) return { kind: 'no plan', problem, reason: plan.reason, mend: plan.mend ?? '' };
  const input = tableInput({
    book,
    lists,
    made: { problem, plan, words: wish.explain ? explainPlan(problem, plan) : undefined },
    rules,
    unitSystem: units,
    old,
    rebuild,
  });
  const done = write(workbook, input, wish, old);
  if (typeof done === 'string') return { kind: 'refused', sentences: [done] };
  return {
    kind: 'written',
    info: done.block,
    note: done.note,
    problem,
    plan,
    units,
    rules,
    old: old?.rotation,
    rebuild,
  };
}

function write(
  workbook: Workbook,
  input: Parameters<typeof rotationBlock>[0] extends infer Input ? Omit<Input, 'corner'> : never,
  { place = { at: 'new-tab', tab: 'Rotation' } }: Wish,
  old: OldTable | undefined,
): WriteDone | string {
  const corner = old ? old.info : place.at === 'area' ? place : { tab: place.tab, row: 1, column: 1 };
  const { tab, row, column } = corner;
  const request = rotationRequest(input as never, { tab, row, column }, old ? { old } : { place });
  const reply = workbook.ask('writeBlock', request);
  return reply.ok ? (reply.data as WriteDone) : reply.error;
}
