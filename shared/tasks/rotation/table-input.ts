/** What the table is built from: the plan, the settings it was made with, the grower's lists, and what to keep. */

import type { Book } from '../../block/book';
import type { ListSources } from '../../lists/model';
import { fallsShort, type PlanWords } from '../../plan/explain-plan';
import { growthNotes } from '../../plan/growth-notes';
import type { Plan, PlanProblem, PlanRules } from '../../plan/model';
import { DEFAULT_TEMPERATURE_C, type RotationBlockInput } from '../../table/model';
import type { RebuildInput } from '../../table/rebuild-input';
import { OUTDOOR_FACTOR } from '../../tables/nrc-intake';
import type { UnitSystem } from '../../units/units';
import type { GrowerLists } from '../grower-lists';
import { herdSource } from '../herd/herd-log';
import type { StandingRotation } from './rotation-standing';

/** A plan and the problem that it answers. Without words nothing is said above the table of how good it is. */
export interface Made {
  readonly problem: PlanProblem;
  readonly plan: Plan;
  readonly words: PlanWords | undefined;
}

interface Given {
  readonly book: Book;
  readonly lists: GrowerLists;
  readonly made: Made;
  /** Of the whole season, also where only the rest of it was planned. */
  readonly rules: PlanRules;
  readonly unitSystem: UnitSystem;
  readonly old: StandingRotation | undefined;
  readonly rebuild: RebuildInput | undefined;
}

export function tableInput(given: Given): Omit<RotationBlockInput, 'corner'> {
  const { book, lists, made, old, rebuild } = given;
  const before = old?.rotation.settings;
  const herd = herdSource(book);
  return {
    problem: made.problem,
    plan: made.plan,
    settings: {
      unitSystem: given.unitSystem,
      rules: given.rules,
      temperatureC: before?.temperatureC ?? DEFAULT_TEMPERATURE_C,
      outdoorFactor: before?.outdoorFactor ?? OUTDOOR_FACTOR,
      lists: listsOf(lists.sources),
    },
    warnings: warningsOf(made, rebuild),
    sources: { ...lists.sources, ...(herd && { herd }) },
    ...(rebuild && {
      past: rebuild.past,
      future: rebuild.future,
      skipped: rebuild.skipped,
      headRows: rebuild.headRows,
    }),
  };
}

/** What stands above the table in the sheet: where the plan falls short, and what was taken for granted. */
function warningsOf({ problem, plan, words }: Made, rebuild: RebuildInput | undefined): string[] {
  const short = words && fallsShort(plan) ? [...words.score, ...(words.mend ? [words.mend] : [])] : [];
  return [...short, ...growthNotes(problem, plan), ...(rebuild?.notes ?? [])];
}

function listsOf({ paddocks, groups }: ListSources): RotationBlockInput['settings']['lists'] {
  return { ...(paddocks && { paddocks: paddocks.list }), ...(groups && { groups: groups.list }) };
}
