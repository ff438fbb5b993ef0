import { isMemory } from '../shared/block/memory';

/** Rows of a tab without the memory of our tables: its stamp differs at every write. */
export function withoutMemory<Value>(rows: readonly (readonly Value[])[]): Value[][] {
  return rows.map((row) => row.filter((value) => !isMemory(String(value))));
}
