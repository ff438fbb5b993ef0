import highsLoader from 'highs';
import type { PlanProblem, Stay } from '../../shared/plan/model';
import { checkPlan } from './check-plan';
import {
  changeCost,
  dueAfter,
  isFarMove,
  overDaysOf,
  spanOf,
  stayFaults,
  tooLongOf,
  unevenPoints,
} from './stay-rules';

/**
 * The exact optimum of the planning model, from HiGHS (MILP solver, dev dependency), written independently of
 * the planner.
 *
 * One binary for each lawful stay (group, paddock, in, out). For each group the stays are a path from its entry
 * to its end. For each paddock the stays and the gaps between them are one path in time, which keeps groups
 * apart and gives every entry its exact rest: an arc for each gap short of the rest due, at 10 points a day, and
 * a chain of days "rested" for all longer gaps. Whether a stay is lawful and how many days it is over the limit is
 * asked of the independent checker's rules, not of the planner.
 */
export interface Optimum {
  readonly total: number;
  readonly stays: readonly Stay[];
}

interface Column extends Stay {
  readonly name: string;
  readonly points: number;
}

/** Time ran out: no plan costs less than `atLeast`; the best that was found costs `found`, Infinity where none was. */
export interface Unproven {
  readonly atLeast: number;
  readonly found: number;
}

type Highs = Awaited<ReturnType<typeof highsLoader>>;
let solver: Promise<Highs> | undefined;

/** The optimum; "infeasible" where no plan exists; what is known of it where the seconds did not suffice. */
export async function planOptimum(
  problem: PlanProblem,
  seconds = 60,
): Promise<Optimum | Unproven | 'infeasible'> {
  solver ??= highsLoader();
  const highs = await solver;
  const program = writeProgram(problem);
  if (program === 'infeasible') return 'infeasible';
  const first = solve(problem, highs, program, seconds, 'choose');
  // Presolve has called programs infeasible that are not, so that verdict is asked for again without it.
  return first === 'infeasible' ? solve(problem, highs, program, seconds, 'off') : first;
}

function solve(
  problem: PlanProblem,
  highs: Highs,
  program: Exclude<ReturnType<typeof writeProgram>, 'infeasible'>,
  seconds: number,
  presolve: 'choose' | 'off',
): Optimum | Unproven | 'infeasible' {
  const model = highs.createModel({ format: 'lp', data: program.text });
  try {
    if (model.getDimensions().numCols !== program.names.size) throw new Error('HiGHS read another program');
    model.options.set({
      output_flag: false,
      mip_rel_gap: 0,
      mip_abs_gap: 1e-6,
      time_limit: seconds,
      presolve,
    });
    model.run();
    const { optimal, infeasible, timeLimit } = highs.constants.modelStatus;
    const status = model.getModelStatus();
    if (status === infeasible) return 'infeasible';
    if (status !== optimal && status !== timeLimit) throw new Error(`HiGHS ends with status ${status}`);
    const cost = Number(model.info.get('objective_function_value'));
    if (status === timeLimit) {
      const { feasible } = highs.constants.solutionStatus;
      const isFound = Number(model.info.get('primal_solution_status')) === feasible;
      return { atLeast: Number(model.info.get('mip_dual_bound')), found: isFound ? cost : Infinity };
    }
    const values = model.getSolution().colValue;
    const stays = program.stays.filter((stay) => values[model.getColByName(stay.name)]! > 0.5);
    const verdict = checkPlan(problem, stays);
    if (verdict.faults.length > 0) throw new Error(`HiGHS plan breaks a rule: ${verdict.faults.join('; ')}`);
    if (Math.abs(verdict.score.total - cost) > 1e-4)
      throw new Error(`HiGHS counts ${cost}, the checker ${verdict.score.total}`);
    return { total: verdict.score.total, stays };
  } finally {
    model.dispose();
  }
}

function lawfulStays(problem: PlanProblem): Column[] {
  const columns: Column[] = [];
  const uneven = unevenPoints(problem);
  problem.groups.forEach((group, g) => {
    const [entry, end] = spanOf(problem, problem.groups[g]!);
    for (let inDay = entry; inDay < end; inDay++) {
      for (let outDay = inDay + 1; outDay <= end; outDay++) {
        problem.paddocks.forEach((_, paddock) => {
          const stay = { group: g, paddock, inDay, outDay };
          if (stayFaults(problem, stay).length > 0) return;
          const points =
            1 +
            10 * tooLongOf(problem, stay) +
            10 * overDaysOf(problem, group, problem.paddocks[paddock]!, inDay, outDay - inDay) +
            uneven(stay) +
            changeCost(problem, stay);
          columns.push({ ...stay, points, name: `x${columns.length}` });
        });
      }
    }
  });
  return columns;
}

class Program {
  readonly names = new Set<string>();
  readonly #cost: string[] = [];
  readonly #rows: string[] = [];
  readonly #binaries: string[] = [];
  #count = 0;

  variable(prefix: string, points: number): string {
    const name = `${prefix}${this.#count++}`;
    this.named(name, points, false);
    return name;
  }
  named(name: string, points: number, binary: boolean): void {
    this.names.add(name);
    this.#cost.push(`${points} ${name}`);
    if (binary) this.#binaries.push(name);
  }
  row(plus: readonly string[], minus: readonly string[], sign: '=' | '<=', right: number): void {
    if (plus.length + minus.length === 0) {
      if (sign === '=' && right !== 0) this.#rows.push(`${this.never()} >= 2`);
      return;
    }
    this.#rows.push(
      `${[...plus.map((v) => `+ ${v}`), ...minus.map((v) => `- ${v}`)].join('\n ')} ${sign} ${right}`,
    );
  }
  never(): string {
    const name = this.variable('never', 0);
    this.#binaries.push(name);
    return name;
  }
  text(): string {
    return [
      'Minimize',
      this.#cost.join('\n + '),
      'Subject To',
      ...this.#rows,
      'Binary',
      ...this.#binaries,
      'End',
    ].join('\n');
  }
}

function writeProgram(
  problem: PlanProblem,
): { text: string; names: Set<string>; stays: Column[] } | 'infeasible' {
  const stays = lawfulStays(problem);
  const program = new Program();
  for (const stay of stays) program.named(stay.name, stay.points, true);
  problem.groups.forEach((_, g) => {
    groupPath(
      problem,
      program,
      stays.filter((stay) => stay.group === g),
      g,
    );
  });
  problem.paddocks.forEach((_, p) => {
    paddockPath(
      problem,
      program,
      stays.filter((stay) => stay.paddock === p),
      p,
    );
  });
  return stays.length === 0 && program.names.size === 0
    ? 'infeasible'
    : { text: program.text(), names: program.names, stays };
}

const namesOf = (stays: readonly Column[]): string[] => stays.map((stay) => stay.name);

function groupPath(problem: PlanProblem, program: Program, own: Column[], g: number): void {
  const [entry, end] = spanOf(problem, problem.groups[g]!);
  if (entry >= end) return;
  program.row(namesOf(own.filter((stay) => stay.inDay === entry)), [], '=', 1);
  for (let day = entry + 1; day < end; day++) {
    const ins = own.filter((stay) => stay.inDay === day);
    const outs = own.filter((stay) => stay.outDay === day);
    program.row(namesOf(ins), namesOf(outs), '=', 0);
    if (ins.length === 0 || outs.length === 0) continue;
    const stride = program.variable('s', 0.5);
    problem.paddocks.forEach((_, p) => {
      const outHere = namesOf(outs.filter((stay) => stay.paddock === p));
      if (outHere.length === 0) return;
      program.row([...outHere, ...namesOf(ins.filter((stay) => stay.paddock === p))], [], '<=', 1);
      const far = ins.filter((stay) => isFarMove(problem, p, stay.paddock));
      if (far.length > 0) program.row([...outHere, ...namesOf(far)], [stride], '<=', 1);
    });
  }
}

function paddockPath(problem: PlanProblem, program: Program, uses: Column[], p: number): void {
  /* Where a group already stands its entry is past and costs nothing. */
  const stoodIn = problem.groups.some((group) => group.standing?.paddock === p);
  const lastUsed = stoodIn ? undefined : problem.paddocks[p]!.lastUsed;
  const ins = [...new Set(uses.map((stay) => stay.inDay))].sort((a, b) => a - b);
  const outs = [...new Set(uses.map((stay) => stay.outDay))].sort((a, b) => a - b);
  const lastIn = ins[ins.length - 1];
  const firstIn = ins[0];
  if (firstIn === undefined || lastIn === undefined) return;
  const gapsInto = new Map<number, string[]>(ins.map((day) => [day, []]));
  const joins = new Map<number, string[]>();
  const join = (day: number, name: string): void => {
    joins.set(day, [...(joins.get(day) ?? []), name]);
  };
  const leave = (left: number | undefined, supply: readonly string[]): void => {
    const arcs: string[] = [];
    const rested = left === undefined ? firstIn : left + dueAfter(problem, problem.paddocks[p]!, left);
    const floor = left ?? Number.NEGATIVE_INFINITY;
    for (const day of ins) {
      if (day >= rested || (day < floor && supply.length > 0)) continue;
      const arc = program.variable('z', 10 * (rested - day));
      gapsInto.get(day)!.push(arc);
      arcs.push(arc);
    }
    const arc = program.variable('r', 0);
    join(Math.max(rested, firstIn), arc);
    arcs.push(arc, program.variable('e', 0));
    if (supply.length > 0) program.row(arcs, supply, '=', 0);
    else program.row(arcs, [], '=', 1);
  };
  leave(lastUsed, []);
  for (const day of outs) leave(day, namesOf(uses.filter((stay) => stay.outDay === day)));
  let carried: string | undefined;
  for (let day = firstIn; day <= lastIn; day++) {
    const from = [...(joins.get(day) ?? []), ...(carried ? [carried] : [])];
    const away: string[] = [];
    if (gapsInto.has(day)) {
      const arc = program.variable('w', 0);
      gapsInto.get(day)!.push(arc);
      away.push(arc);
    }
    carried = program.variable('c', 0);
    away.push(carried);
    program.row(away, from, '<=', 0);
  }
  for (const day of ins) {
    program.row(gapsInto.get(day)!, namesOf(uses.filter((stay) => stay.inDay === day)), '=', 0);
  }
}
