/** A farm whose table is written through the built script into the preview's engine and recalculated there. */
import type { BlockInfo, TabContent, WriteBlock } from '../../shared/contract';
import { findLists } from '../../shared/lists/find-lists';
import type { GroupList, PaddockList } from '../../shared/lists/model';
import { readGroups } from '../../shared/lists/read-groups';
import { readPaddocks } from '../../shared/lists/read-paddocks';
import type { Plan, PlanProblem, PlanRules } from '../../shared/plan/model';
import type { RotationBlockInput, RotationSettings } from '../../shared/table/model';
import { rotationBlock } from '../../shared/table/rotation-block';
import { mergeBlock } from '../../shared/tasks/merge/merge-block';
import type { UnitSystem } from '../../shared/units/units';
import { openWorkbook, type StartCell, type Workbook } from '../../src/headless';
import { soonPlanned } from '../soon-planned';
import { scriptText } from '../tasks/script-text';

export const BLOCK_NAME = 'SOUNDER_ROTATION';

export interface FarmSheet {
  readonly book: Workbook;
  readonly tabs: readonly string[];
  readonly system: UnitSystem;
  readonly rules: PlanRules;
}

export async function openFarm(
  tabs: Record<string, StartCell[][]>,
  rules: PlanRules,
  system: UnitSystem,
  locale = 'en_US',
): Promise<FarmSheet> {
  const book = await openWorkbook({ tabs, codeJs: await scriptText(), locale, today: '2026-03-01' });
  return { book, tabs: Object.keys(tabs), system, rules };
}

export function ask<Reply>(book: Workbook, call: string, request: unknown): Reply {
  const reply = book.ask(call, request);
  if (!reply.ok) throw new Error(reply.error);
  return reply.data as Reply;
}

export function readTab(book: Workbook, tab: string): TabContent {
  return ask<TabContent[]>(book, 'readTabs', { tabs: [tab] })[0]!;
}

export interface ReadFarm {
  readonly problem: PlanProblem;
  readonly settings: RotationSettings;
  readonly sources: NonNullable<RotationBlockInput['sources']>;
}

/** The first paddock list and the first group list of the farm, read. */
export function readFarm(
  { book, tabs, system, rules }: FarmSheet,
  blocks: readonly BlockInfo[] = [],
): ReadFarm {
  const contents = tabs.map((tab) => readTab(book, tab));
  const found = findLists(contents, blocks);
  const paddockList = found.find((list) => list.kind === 'paddocks') as PaddockList;
  const groupList = found.find((list) => list.kind === 'groups') as GroupList;
  const tabOf = (name: string): TabContent => contents.find((tab) => tab.name === name)!;
  const paddocks = readPaddocks(tabOf(paddockList.tab), paddockList, system, false);
  const groups = readGroups(tabOf(groupList.tab), groupList, system, false);
  const problems = [...paddocks.problems, ...groups.problems];
  if (problems.length > 0) throw new Error(problems.map((problem) => problem.sentence).join('\n'));
  return {
    problem: {
      paddocks: paddocks.paddocks,
      groups: groups.groups.map((group) => ({ from: rules.seasonStart, ...group })),
      rules,
    },
    settings: {
      unitSystem: system,
      rules,
      temperatureC: 20,
      outdoorFactor: 1.15,
      lists: { paddocks: paddockList, groups: groupList },
    },
    sources: {
      paddocks: { tab: tabOf(paddockList.tab), list: paddockList },
      groups: { tab: tabOf(groupList.tab), list: groupList },
    },
  };
}

export function planned(problem: PlanProblem): Plan {
  const plan = soonPlanned(problem);
  if ('reason' in plan) throw new Error(plan.reason);
  return plan;
}

export function writeBlock(
  book: Workbook,
  block: Omit<WriteBlock, 'place' | 'name'>,
  place: WriteBlock['place'],
): BlockInfo {
  return ask<{ block: BlockInfo }>(book, 'writeBlock', { ...block, name: BLOCK_NAME, place }).block;
}

/** Plans the farm and writes its table onto a new tab. */
export function buildTable(farm: FarmSheet, tab = 'Rotation') {
  const read = readFarm(farm);
  const plan = planned(read.problem);
  const block = rotationBlock({ ...read, plan, corner: { row: 1, column: 1 }, warnings: [] });
  const { cells, styles, rules, widths, stamp } = mergeBlock(BLOCK_NAME, block);
  const { freezeRows } = block;
  const request = { cells, styles, rules, widths, stamp, freezeRows };
  const info = writeBlock(farm.book, request, { at: 'new-tab', tab });
  return { ...read, plan, info };
}
