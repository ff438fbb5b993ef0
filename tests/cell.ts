/** Calls a cell function by name, as a cell would, with date cells read in UTC. */
import { CATALOGUE } from '../shared/catalogue';
import type { AnyEntry } from '../shared/catalogue/define';
import { type Answer, call } from '../shared/door/call';
import type { Edge } from '../shared/door/edge';

const MILLISECONDS_PER_DAY = 86_400_000;

export const UTC_EDGE: Edge = {
  dayOfDate: (date) => Math.floor((date as Date).getTime() / MILLISECONDS_PER_DAY),
};

const BY_NAME = new Map(CATALOGUE.map((entry) => [entry.name, entry]));

export function entryNamed(name: string): AnyEntry {
  const entry = BY_NAME.get(name);
  if (!entry) throw new Error(`no cell function ${name}`);
  return entry;
}

export function cell(name: string, ...args: readonly unknown[]): Answer {
  return call(entryNamed(name), args, UTC_EDGE);
}

/** The same, for functions that answer one number. */
export function numberOf(name: string, ...args: readonly unknown[]): number {
  const answer = cell(name, ...args);
  if (typeof answer !== 'number') throw new Error(`${name} answered ${JSON.stringify(answer)}`);
  return answer;
}

/** The numbers of an answer of one row. */
export function rowOf(name: string, ...args: readonly unknown[]): readonly number[] {
  const answer = cell(name, ...args);
  if (!Array.isArray(answer) || answer.length !== 1) throw new Error(`${name} did not answer one row`);
  return (answer[0] ?? []).map(Number);
}
