/** Where a first block goes: onto a new tab, by default under a name that no tab has yet, or into an empty area. */
import type { Book } from '../block/book';
import { TAB_ORDER } from '../block/own-words';
import type { TabInfo } from '../contract';
import type { Answers, Task } from './task';
import * as words from './words';

export const PLACES = {
  'new-tab': 'On a new tab',
  area: words.AT_CELL,
} as const;
export const TAB_LABEL = 'Name of the new tab';

export interface Place {
  readonly at: keyof typeof PLACES;
  /** Name of the new tab, and as it was typed. */
  readonly tab: string;
  readonly typed: string;
  /** What is wrong with the name, as a sentence. */
  readonly problem: string | undefined;
}

export function placeLegend({ what }: Pick<Task, 'what'>): string {
  return `Where to put ${what}`;
}

/** `tabs`: those that there are. A blank one is as good as none. */
export function placeOf(
  of: Pick<Task, 'what' | 'tabName' | 'ownTab'>,
  tabs: readonly TabInfo[],
  answers: Answers,
): Place {
  const taken = tabs.filter(({ rows }) => rows > 0).map(({ name }) => name);
  const at = !of.ownTab && answers[placeLegend(of)] === PLACES.area ? 'area' : 'new-tab';
  const answer = answers[TAB_LABEL];
  const typed = typeof answer === 'string' ? answer : freeTabName(of.tabName, taken);
  const tab = typed.trim();
  return { at, tab, typed, problem: at === 'new-tab' ? tabProblem(tab, taken) : undefined };
}

/** The name, or the name with the first number that no tab has yet: "Rotation", "Rotation 2". */
function freeTabName(name: string, tabs: readonly string[]): string {
  const taken = new Set(tabs.map((tab) => tab.toLowerCase()));
  let free = name;
  for (let i = 2; taken.has(free.toLowerCase()); i++) free = `${name} ${i}`;
  return free;
}

function tabProblem(tab: string, tabs: readonly string[]): string | undefined {
  if (tab === '') return words.NAME_NEEDED;
  const taken = tabs.some((name) => name.toLowerCase() === tab.toLowerCase());
  return taken ? words.NAME_TAKEN : undefined;
}

/** Our tabs stand together at the end, in their order: the tab of ours in front of which a new one goes, if any. */
export function tabBehind({ overview }: Book, name: string): string | undefined {
  const order = (one: string): number =>
    TAB_ORDER.includes(one) ? TAB_ORDER.indexOf(one) : TAB_ORDER.length;
  const later = overview.blocks.filter(
    (block) => block.row === 1 && block.column === 1 && order(block.name) > order(name),
  );
  return overview.tabs.find((tab) => later.some((block) => block.tab === tab.name))?.name;
}
