import { nameKey } from '../lists/read-list-cell';
import type { OldRotation } from './model';

/** A group that may have got another name in the list. */
export interface RenamedGroup {
  readonly was: string;
  readonly is: string;
}

/**
 * The one group of the table that the list does not have, and the one of the list that the table does not have, where
 * figures of moves are lost by it: they were looked up by the name. With several of either nothing is supposed.
 */
export function renamedGroup(
  { rows }: OldRotation,
  groups: readonly { readonly name: string }[],
): RenamedGroup | undefined {
  const listed = new Map(groups.map(({ name }) => [nameKey(name), name]));
  const inTable = new Map(rows.map(({ group }) => [nameKey(group), group]));
  const [gone, fresh] = [othersThan(inTable, listed), othersThan(listed, inTable)];
  const ofGone = rows.filter(({ group }) => group === gone[0]);
  const isLost =
    ofGone.some(({ movedIn }) => movedIn !== undefined) &&
    ofGone.some(({ head, isLive }) => isLive && head === undefined);
  return isLost && gone.length === 1 && fresh.length === 1 ? { was: gone[0]!, is: fresh[0]! } : undefined;
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
