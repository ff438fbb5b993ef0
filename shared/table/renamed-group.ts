import { nameKey } from '../lists/read-list-cell';
import type { OldRotation } from './model';

/** A group that may have got another name in the list. */
export interface RenamedGroup {
  readonly was: string;
  readonly is: string;
}

/**
 * The one name that the list does not have, and the one of the list that is not among `names`. With several of either
 * nothing is supposed.
 */
export function renamedGroup(
  names: readonly string[],
  groups: readonly { readonly name: string }[],
): RenamedGroup | undefined {
  const listed = new Map(groups.map(({ name }) => [nameKey(name), name]));
  // As it is written first.
  const there = new Map([...names].reverse().map((name) => [nameKey(name), name]));
  const [gone, fresh] = [othersThan(there, listed), othersThan(listed, there)];
  return gone.length === 1 && fresh.length === 1 ? { was: gone[0]!, is: fresh[0]! } : undefined;
}

/** The same for a table, where figures of moves are lost by it: they were looked up by the name. */
export function renamedInTable(
  { rows }: OldRotation,
  groups: readonly { readonly name: string }[],
): RenamedGroup | undefined {
  const renamed = renamedGroup(
    rows.map(({ group }) => group),
    groups,
  );
  const ofGone = rows.filter(({ group }) => group === renamed?.was);
  const isLost =
    ofGone.some(({ movedIn }) => movedIn !== undefined) &&
    ofGone.some(({ head, isLive }) => isLive && head === undefined);
  return isLost ? renamed : undefined;
}

function othersThan(names: ReadonlyMap<string, string>, others: ReadonlyMap<string, string>): string[] {
  return [...names].flatMap(([key, name]) => (others.has(key) ? [] : [name]));
}

/** The table as if it had been written with the new name. */
export function withRenamed(rotation: OldRotation, { was, is }: RenamedGroup): OldRotation {
  const rows = rotation.rows.map((row) =>
    nameKey(row.group) === nameKey(was) ? { ...row, group: is } : row,
  );
  return { ...rotation, rows };
}
