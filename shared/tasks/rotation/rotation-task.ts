/** The rotation table: lists, rules and what really happened, planned and written. */
import { markIn, type RowMemory } from '../../block/memory';
import { ROTATION_NAME } from '../../block/own-words';
import type { BlockContent } from '../../block/read-block';
import { dayFromIso } from '../../core/calendar/day';
import { startUnits } from '../../lists/start-units';
import { explainPlan, type PlanWords } from '../../plan/explain-plan';
import type { NoPlan, Plan, PlanProblem } from '../../plan/model';
import { planRotation } from '../../plan/plan-rotation';
import { describeChanges } from '../../table/describe-changes';
import { frozenRotation, liveMoves } from '../../table/frozen-rotation';
import type { PastRow, RotationBlockInput } from '../../table/model';
import { columnsOf, keysOf } from '../../table/move-rows';
import { renamedInTable, withRenamed } from '../../table/renamed-group';
import { rotationBlock } from '../../table/rotation-block';
import { unitsChanged } from '../../table/units-changed';
import type { UnitSystem } from '../../units/units';
import { asking, UNITS_LEGEND, UNITS_OPTIONS } from '../ask';
import type { GrowerLists } from '../grower-lists';
import { askRenamed, type Renaming } from '../renaming';
import type { Task } from '../task';
import { trainingWords } from '../training/group-training';
import { plannedUntrained } from '../training/words';
import { badCovers, badDays, daysAhead } from './days-ahead';
import { planProblem } from './plan-problem';
import { type RuleProblems, readRules } from './read-rules';
import { type StandingRotation, standingRotation } from './rotation-standing';
import { type RulesForm, rulesFormOf, startingRules } from './rules-form';
import { isNewSeason, type Season, seasonOf } from './season';
import { tableInput } from './table-input';
import * as words from './words';

export const RULES_LABEL = 'Your rules';
export const PLAN_LABEL = 'The plan';
export const COUNT_OPTIONS = { no: 'No', yes: 'Yes' } as const;

/** What the planner found, as the answer to the form that had no plan yet: it may take seconds. */
export interface Planned {
  readonly problem: PlanProblem;
  readonly outcome: Plan | NoPlan;
  /** Absent: nothing is said above the table of how good the plan is. */
  readonly words?: PlanWords | undefined;
}

/** Takes seconds on a large farm: a page has it worked out beside it. */
export function plannedAtOnce(problem: PlanProblem): Planned {
  const outcome = planRotation(problem);
  return { problem, outcome, words: explainPlan(problem, outcome) };
}

export type RotationInput = Omit<RotationBlockInput, 'corner'>;

interface RotationView {
  /** The table that stands, last season's too. */
  readonly old: StandingRotation | undefined;
  readonly isNewSeason: boolean;
  readonly units: UnitSystem;
  readonly lists: GrowerLists;
  readonly rulesForm: RulesForm;
  readonly ruleProblems: RuleProblems;
  readonly season: Season;
  readonly countsPlanned: boolean;
  readonly renaming: Renaming | undefined;
}

const WHAT = { name: ROTATION_NAME, what: 'the table', tabName: 'Rotation' } as const;

export const ROTATION_TASK: Task<RotationInput, RotationView> = {
  ...WHAT,
  next: words.PHONE_PAGE,
  read: (book, answers) => {
    const stands = standingRotation(book);
    const settings = stands?.rotation.settings;
    const ask = asking(book, answers, ROTATION_NAME, undefined, stands);
    const { comma } = ask;
    const today = dayFromIso(book.overview.today) ?? 0;
    const start = settings?.unitSystem ?? startUnits(book);
    const units = ask.choice(UNITS_LEGEND, UNITS_OPTIONS, start, settings?.unitSystem).value;
    const lists = ask.lists(['paddocks', 'groups'], units, settings?.lists);
    const renamed = stands && renamedInTable(stands.rotation, lists.groups);
    const renaming = askRenamed(ask, renamed, words.answerRenamed);
    const old =
      renaming?.value === 'yes' ? { ...stands!, rotation: withRenamed(stands!.rotation, renamed!) } : stands;
    const rulesForm =
      ask.other<RulesForm>(RULES_LABEL, settings?.rules) ??
      (settings
        ? rulesFormOf(settings.rules, units, comma)
        : startingRules(lists.paddocks, lists.groups, today));
    const { rules, problems: ruleProblems } = readRules(rulesForm, units, comma);
    const countsPlanned =
      old !== undefined && ask.choice(words.COUNT_LABEL, COUNT_OPTIONS, 'no').value === 'yes';
    const season = seasonOf({ lists, rules, old, today, countPlannedAsDone: countsPlanned });
    const isNew = old !== undefined && isNewSeason(old, rules);
    const rebuild = 'missing' in season ? undefined : season.rebuild;
    const planned = ask.other<Planned>(PLAN_LABEL);
    ask.wrongInSheet([...lists.problems, ...('missing' in season ? season.problems : [])].map(sentenceOf));
    if ('missing' in season) ask.wrong([season.missing, ...Object.values(ruleProblems)]);
    else ask.wrong(whatPlanLacks(season.problem, planned));
    const form = ask.form(
      () => {
        const { problem, outcome, words } = planned as Planned & { outcome: Plan };
        const made = { problem, plan: outcome, words };
        const { rules: whole } = season as Extract<Season, { problem: unknown }>;
        return tableInput({ book, lists, made, rules: whole, unitSystem: units, old, rebuild });
      },
      { old, isNewSeason: isNew, units, lists, rulesForm, ruleProblems, season, countsPlanned, renaming },
      {
        sources: { ...lists.sources, ...(old && { rotation: old.block }) },
        record: isNew ? lastSeasonStays(old) : undefined,
      },
    );
    const training = trainingWords(book);
    const untrained = lists.groups.flatMap(({ name }) => {
      const says = training(name);
      return says === undefined ? [] : [plannedUntrained(name, says)];
    });
    if (!old || isNew || !form.plan || !rebuild)
      return {
        ...form,
        warnings: untrained,
        ...(isNew && liveMoves(old.rotation) > 0 && { first: KEEP_FIGURES_TASK }),
      };
    return {
      ...form,
      standing: { ...old, block: daysSettled(old.block, rebuild.past) },
      changes: describeChanges(rebuild, form.plan.plan),
      warnings: [
        ...untrained,
        ...unitsChanged(settings?.unitSystem, units),
        ...daysAhead(old, today),
        ...badDays(old),
        ...badCovers(old),
      ],
    };
  },
  solve: ({ season }) => ('missing' in season ? {} : { [PLAN_LABEL]: plannedAtOnce(season.problem) }),
  compose: (plan, corner) => rotationBlock({ ...plan, corner }),
};

function sentenceOf({ sentence }: { readonly sentence: string }): string {
  return sentence;
}

function whatPlanLacks(problem: PlanProblem, planned: Planned | undefined): readonly string[] {
  if (!planned) return [words.STILL_PLANNING];
  if (JSON.stringify(planned.problem) !== JSON.stringify(problem)) return [words.OTHER_THAN_PLAN];
  const { outcome } = planned;
  return 'reason' in outcome ? [outcome.reason, ...(outcome.mend ? [outcome.mend] : [])] : [];
}

function lastSeasonStays({ block }: StandingRotation): string {
  return words.newSeason(block.info.tab);
}

/**
 * The table that stands over itself, with its figures as values: a record that does not change when the lists are made
 * ready for another season.
 */
export const KEEP_FIGURES_TASK: Task<RotationInput> = {
  ...WHAT,
  read: (book, answers) => {
    const old = standingRotation(book);
    const ask = asking(book, answers, ROTATION_NAME, undefined, old);
    const settings = old?.rotation.settings;
    const units = settings?.unitSystem ?? startUnits(book);
    const lists = ask.lists(['paddocks', 'groups'], units, settings?.lists);
    const input =
      old &&
      settings &&
      frozenRotation(
        old.rotation,
        old.block.values.flat(),
        planProblem(lists.paddocks, lists.groups, settings.rules),
      );
    if (!input) ask.wrong([words.giveDays(old?.block.info.tab)]);
    return ask.form(() => input as RotationInput, {}, { sources: { ...(old && { rotation: old.block }) } });
  },
  compose: ROTATION_TASK.compose,
};

/** Days of a past move that are set to what they were: what was typed there gives way, as the page says. */
function daysSettled(block: BlockContent, past: readonly PastRow[]): BlockContent {
  const set = new Set(past.flatMap(({ id, daysBefore }) => (daysBefore === undefined ? [] : [id])));
  const { memory } = block;
  if (!memory || set.size === 0) return block;
  const column = columnsOf(block).get('days') ?? -1;
  const days = keysOf(block).indexOf('days');
  const rows = memory.rows.map((row, r): RowMemory | undefined => {
    const mark = `+${markIn(block, r, column)}`;
    return row && set.has(row.id)
      ? { ...row, marks: row.marks.map((one, w) => (w === days ? mark : one)) }
      : row;
  });
  return { ...block, memory: { ...memory, rows } };
}
