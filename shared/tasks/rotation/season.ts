/** What is to be planned: the whole season, or what is left of it after the moves that really happened. */
import type { Day } from '../../core/calendar/day';
import type { ListProblem } from '../../lists/model';
import { nameKey } from '../../lists/read-list-cell';
import { evenShare } from '../../plan/even-share';
import { groupsLeftOut } from '../../plan/groups-left-out';
import type { PlanPaddock, PlanProblem, PlanRules } from '../../plan/model';
import type { OldRow } from '../../table/model';
import { type RebuildInput, rebuildInput } from '../../table/rebuild-input';
import type { GrowerLists } from '../grower-lists';
import { fromToday, planProblem } from './plan-problem';
import type { StandingRotation } from './rotation-standing';
import * as words from './words';

export type Season =
  /** Why nothing can be planned yet. */
  | { readonly missing: string; readonly problems: readonly ListProblem[] }
  | { readonly problem: PlanProblem; readonly rules: PlanRules; readonly rebuild: RebuildInput | undefined };

interface Given {
  readonly lists: GrowerLists;
  readonly rules: PlanRules | undefined;
  readonly old: StandingRotation | undefined;
  readonly today: Day;
  readonly countPlannedAsDone: boolean;
}

export function seasonOf({ lists, rules, old, today, countPlannedAsDone }: Given): Season {
  const missing = whatIsMissing(lists, rules);
  const problems = old?.rotation.problems ?? [];
  if (missing) return { missing, problems };
  if (problems.length > 0) return { missing: words.TABLE_FIRST, problems };
  if (!rules) return { missing: words.RULES_FIRST, problems };
  const listed = planProblem(lists.paddocks, lists.groups, rules);
  // Of the whole season, so that what was planned first holds for the rest of it too.
  const whole = { ...listed, evenShare: evenShare(listed) };
  if (old && isNewSeason(old, rules)) {
    const paddocks = afterLastSeason(whole.paddocks, old.rotation.rows);
    const fresh = fromToday({ ...whole, paddocks }, today);
    return nobodyIn(fresh) ?? { problem: fresh, rules, rebuild: undefined };
  }
  const begun = fromToday(whole, today);
  if (!old) return nobodyIn(begun) ?? { problem: begun, rules, rebuild: undefined };
  const rebuild = rebuildInput(old.rotation, { ...whole, today, countPlannedAsDone });
  const isUnderWay = rebuild.past.length > 0;
  const rest = { ...rebuild.problem, evenShare: whole.evenShare };
  const problem = isUnderWay ? rest : { ...rest, rules: begun.rules };
  const season: Season = { problem, rules, rebuild: { ...rebuild, problem } };
  return isUnderWay ? season : (nobodyIn(begun) ?? season);
}

/** Rules that begin after the season of the table that stands: that table is last season's, and stays. */
export function isNewSeason({ rotation }: StandingRotation, rules: PlanRules | undefined): boolean {
  const before = rotation.settings?.rules;
  return before !== undefined && rules !== undefined && rules.seasonStart >= before.seasonEnd;
}

/** A table without a move would be of no use. */
function nobodyIn(problem: PlanProblem): Season | undefined {
  const leftOut = groupsLeftOut(problem);
  if (leftOut.length < problem.groups.length) return undefined;
  return { missing: words.nothingToPlan(leftOut.join(' ')), problems: [] };
}

function whatIsMissing(lists: GrowerLists, rules: PlanRules | undefined): string | undefined {
  if (!lists.chosen.paddocks || !lists.chosen.groups) return words.FIND_LISTS;
  if (lists.problems.length > 0) return words.LISTS_FIRST;
  if (lists.paddocks.length === 0 || lists.groups.length === 0) return words.FILL_LISTS;
  return rules ? undefined : words.RULES_FIRST;
}

/** Paddocks for a new season: used last as the list says or as the moves of the season before really were. */
function afterLastSeason(paddocks: readonly PlanPaddock[], rows: readonly OldRow[]): readonly PlanPaddock[] {
  const left = new Map<string, Day>();
  for (const { paddock, movedIn, out, days } of rows) {
    if (movedIn === undefined) continue;
    const key = nameKey(paddock);
    left.set(key, Math.max(left.get(key) ?? -Infinity, out ?? movedIn + (days ?? 1)));
  }
  return paddocks.map((paddock) => {
    const day = left.get(nameKey(paddock.name));
    return day === undefined ? paddock : { ...paddock, lastUsed: Math.max(day, paddock.lastUsed ?? day) };
  });
}
