/** The rotation table as a person at the page has it built: the form, the plan, the button. */
import { cellA1 } from '../../shared/block/a1';
import { bookOf } from '../../shared/block/book';
import type { BlockInfo } from '../../shared/contract';
import { decimalComma } from '../../shared/locale/decimal-comma';
import { explainPlan } from '../../shared/plan/explain-plan';
import type { Plan, PlanProblem, PlanRules } from '../../shared/plan/model';
import { planRotation } from '../../shared/plan/plan-rotation';
import type { OldRotation } from '../../shared/table/model';
import type { RebuildInput } from '../../shared/table/rebuild-input';
import { UNITS_LEGEND, UNITS_OPTIONS } from '../../shared/tasks/ask';
import { type GrowerLists, growerLists } from '../../shared/tasks/grower-lists';
import { PLACES, placeLegend, TAB_LABEL } from '../../shared/tasks/place';
import {
  PLAN_LABEL,
  type Planned,
  ROTATION_TASK,
  RULES_LABEL,
} from '../../shared/tasks/rotation/rotation-task';
import { rulesFormOf } from '../../shared/tasks/rotation/rules-form';
import { type Written, writeTask } from '../../shared/tasks/run-task';
import type { Answers } from '../../shared/tasks/task';
import type { UnitSystem } from '../../shared/units/units';
import { portOf, type Workbook } from '../../src/headless';
import type { Book } from '../../src/sidebar/parts/use-book';
import { soonPlanned } from '../soon-planned';

export interface Wish {
  /** Absent: what the form starts with, or the rules of the table that stands there. */
  readonly rules?: PlanRules;
  readonly units?: UnitSystem;
  /** Says above the table what would mend it; takes seconds. */
  readonly explain?: boolean;
  /** Searched for as long as on the page, for whoever compares the two. */
  readonly fully?: boolean;
  /** A table that stands there already is written over in its place. */
  readonly place?: { at: 'new-tab'; tab: string } | { at: 'area'; tab: string; row: number; column: number };
}

export type Outcome =
  | {
      readonly kind: 'written';
      readonly info: BlockInfo;
      readonly note: string;
      readonly done: Written;
      readonly changes: readonly string[];
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
export function readLists(book: Book, units: UnitSystem): GrowerLists {
  return growerLists(book, units);
}

/** Builds the table, or rebuilds the one that stands there. Two people at once: read with one, write with another. */
export function buildRotation(workbook: Workbook, wish: Wish = {}): Promise<Outcome> {
  return writeRotation(workbook, readBook(workbook), wish);
}

export async function writeRotation(workbook: Workbook, book: Book, wish: Wish = {}): Promise<Outcome> {
  const { place } = wish;
  if (place?.at === 'area') workbook.select(place.tab, cellA1(place.row, place.column));
  const answers = answersOf(book, wish);
  const asking = ROTATION_TASK.read(book, answers);
  const { season, lists, units } = asking;
  if ('missing' in season) {
    const told = [...lists.problems, ...season.problems].map(({ sentence }) => sentence);
    return { kind: 'refused', sentences: [season.missing, ...told, ...Object.values(asking.ruleProblems)] };
  }
  const { problem, rules, rebuild } = season;
  const planned = quickPlan(problem, wish);
  const { outcome: plan } = planned;
  if ('reason' in plan) return { kind: 'no plan', problem, reason: plan.reason, mend: plan.mend ?? '' };
  const all = { ...answers, [PLAN_LABEL]: planned };
  const form = ROTATION_TASK.read(book, all);
  try {
    const done = await writeTask(portOf(workbook), ROTATION_TASK, book, form, all);
    return {
      kind: 'written',
      info: done.block,
      note: done.note,
      done,
      changes: form.changes ?? [],
      problem,
      plan,
      units,
      rules,
      old: form.old?.rotation,
      rebuild,
    };
  } catch (error) {
    return { kind: 'refused', sentences: [(error as Error).message] };
  }
}

/** Without looking for what would mend the plan, which takes long. */
export function quickPlan(problem: PlanProblem, { explain, fully }: Wish = {}): Planned {
  const outcome = fully ? planRotation(problem) : soonPlanned(problem);
  return { problem, outcome, words: explain ? explainPlan(problem, outcome) : undefined };
}

function answersOf(book: Book, { rules, units, place }: Wish): Answers {
  const asked = units ? { [UNITS_LEGEND]: UNITS_OPTIONS[units] } : {};
  const inUnits = ROTATION_TASK.read(book, asked).units;
  return {
    ...asked,
    ...(rules && { [RULES_LABEL]: rulesFormOf(rules, inUnits, decimalComma(book.overview.locale)) }),
    ...(place?.at === 'new-tab' && { [TAB_LABEL]: place.tab }),
    ...(place?.at === 'area' && { [placeLegend(ROTATION_TASK)]: PLACES.area }),
  };
}
