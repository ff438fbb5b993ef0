/**
 * Judges a written table against the plan it stands for, from what shows in the sheet alone. Rests are walked through
 * anew, weights grown anew, the hard rules read by the planner tests' own judge.
 */
import type { BlockInfo, TabContent, WireCell } from '../../shared/contract';
import type { Plan, PlanGroup, PlanProblem, Stay } from '../../shared/plan/model';
import type { UnitSystem } from '../../shared/units/units';
import type { Workbook } from '../../src/headless';
import { checkPlan } from '../plan/check-plan';
import { dueAfter } from '../plan/stay-rules';
import { asked } from './rotation-task';

/** Exact by definition: pound and acre. */
const KG_IN_LB = 0.45359237;
const M2_IN_ACRE = 4046.8564224;

export interface ShownMove {
  readonly cell: (heading: string) => WireCell;
  readonly formula: (heading: string) => string;
  readonly row: number;
}

/** The moves as they stand under the headings of a block, rows without a group left out. */
export function shownMoves(workbook: Workbook, info: BlockInfo): ShownMove[] {
  const [tab] = asked<TabContent[]>(workbook, 'readTabs', { tabs: [info.tab] });
  const cut = <Cell>(grid: readonly (readonly Cell[])[]) =>
    grid
      .slice(info.row - 1, info.row - 1 + info.rows)
      .map((row) => row.slice(info.column - 1, info.column - 1 + info.columns));
  const [values, formulas] = [cut(tab!.values), cut(tab!.formulas)];
  const at = values.findIndex((row) => row.includes('Group') && row.includes('Planned in'));
  const headings = values[at]!.map((cell) => String(cell).replace(/ \(.*/, ''));
  const moves: ShownMove[] = [];
  for (let r = at + 2; r < values.length && values[r]![headings.indexOf('Group')] !== ''; r++) {
    moves.push({
      cell: (heading) => values[r]![headings.indexOf(heading)]!,
      formula: (heading) => formulas[r]![headings.indexOf(heading)]!,
      row: info.row + r,
    });
  }
  return moves;
}

/** Everything that is wrong with a table, in words; empty where all is well. Works for a table without a past. */
export function tableFaults(
  workbook: Workbook,
  info: BlockInfo,
  problem: PlanProblem,
  plan: Plan,
  units: UnitSystem,
): string[] {
  const faults = [...checkPlan(problem, plan.stays).faults];
  const moves = shownMoves(workbook, info);
  const stays = [...plan.stays].sort((a, b) => a.inDay - b.inDay || a.group - b.group || a.outDay - b.outDay);
  if (moves.length !== stays.length) return [...faults, `${moves.length} rows for ${stays.length} stays`];
  stays.forEach((stay, i) => {
    const { cell, formula, row } = moves[i]!;
    const must = (what: string, is: unknown, wanted: unknown): void => {
      const same =
        typeof wanted === 'number' && typeof is === 'number'
          ? Math.abs(is - wanted) <= 1e-6 * Math.max(1, Math.abs(wanted))
          : is === wanted;
      if (!same) faults.push(`row ${row}: ${what} is ${JSON.stringify(is)}, not ${JSON.stringify(wanted)}`);
    };
    const group = problem.groups[stay.group]!;
    const paddock = problem.paddocks[stay.paddock]!;
    must('group', cell('Group'), group.name);
    must('paddock', cell('Paddock'), paddock.name);
    must('formula of the group', formula('Group') + formula('Paddock'), '');
    must('planned in', iso(cell('Planned in')), isoOf(stay.inDay));
    must('out', iso(cell('Out')), isoOf(stay.outDay));
    must('days', cell('Days'), stay.outDay - stay.inDay);
    must('head', cell('Head'), group.head);
    const weight = grownWeight(group, stay.inDay) / (units === 'US' ? KG_IN_LB : 1);
    const area = paddock.areaSquareMeters / (units === 'US' ? M2_IN_ACRE : 10_000);
    must('weight', cell('Weight in'), weight);
    must('density', cell('Liveweight'), (group.head * weight) / area);
    // The table lets the pigs grow from the weight that it shows at the beginning of the stay.
    const shown = { ...group, weightKg: grownWeight(group, stay.inDay), weighedOn: stay.inDay };
    const out = grownWeight(shown, stay.outDay) / (units === 'US' ? KG_IN_LB : 1);
    const days = stay.outDay - stay.inDay;
    must('load', cell('Load'), (group.head * ((weight + out) / 2) * days) / area);
    const left = latest(
      stays
        .filter((other) => other.paddock === stay.paddock && other.outDay <= stay.inDay)
        .map(({ outDay }) => outDay),
      paddock.lastUsed,
      stay.inDay,
    );
    const due = left === undefined ? undefined : dueAfter(problem, paddock, left);
    must('rest before', cell('Rest before'), left === undefined ? '' : stay.inDay - left);
    const short = left === undefined || due === undefined ? 0 : due - (stay.inDay - left);
    const check = cell('Check');
    const over = overLimit(problem, group, stay);
    if (short > 0) must('check', check, `Rest ${stay.inDay - left!} of ${due} ${due === 1 ? 'day' : 'days'}`);
    else if (over !== 'near') must('check', check, over);
    for (const amount of ['Feed for the stay', 'Water']) {
      const value = cell(amount);
      if (!(typeof value === 'number' && value > 0 && Number.isFinite(value)))
        faults.push(`row ${row}: ${amount} is ${JSON.stringify(value)}`);
    }
  });
  return faults;
}

/**
 * What the sheet says of the ground limit: head × weight at the middle of the stay × days over limit × area. Close to
 * the limit either answer is right.
 */
function overLimit(problem: PlanProblem, group: PlanGroup, stay: Stay): string {
  const { groundLimit } = problem.rules;
  if (groundLimit === undefined) return '';
  const days = stay.outDay - stay.inDay;
  const middle = grownWeight(group, stay.inDay + days / 2);
  const load = (group.head * middle * days) / problem.paddocks[stay.paddock]!.areaSquareMeters / groundLimit;
  if (Math.abs(load - 1) < 0.03) return 'near';
  return load > 1 ? 'Over the ground limit' : '';
}

function latest(days: readonly number[], lastUsed: number | undefined, before: number): number | undefined {
  const all = lastUsed !== undefined && lastUsed <= before ? [...days, lastUsed] : days;
  return all.length > 0 ? Math.max(...all) : undefined;
}

function iso(cell: WireCell): string {
  return typeof cell === 'object' ? cell.d : `no date: ${JSON.stringify(cell)}`;
}

export function isoOf(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}

/**
 * Mean daily gain by weight band, kg: National Research Council, Nutrient Requirements of Swine (2012), Table 16-1
 * (from memory). Before the weighing the weighed weight counts.
 */
const BANDS: readonly [number, number][] = [
  [7, 0.21],
  [11, 0.335],
  [25, 0.585],
  [50, 0.758],
  [75, 0.9],
  [100, 0.917],
  [Infinity, 0.867],
];

export function grownWeight(group: PlanGroup, day: number): number {
  let days = Math.max(0, day - group.weighedOn);
  if (group.dailyGainKg !== undefined) return group.weightKg + days * group.dailyGainKg;
  let weight = group.weightKg;
  while (days > 1e-12) {
    const [edge, gain] = BANDS.find(([upTo]) => weight < upTo - 1e-12)!;
    const step = Math.min(days, (edge - weight) / gain);
    weight += step * gain;
    days -= step;
  }
  return weight;
}
