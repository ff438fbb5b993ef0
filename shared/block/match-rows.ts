import { alignColumns } from './align-columns';
import { isRecordId, NAMING_CELLS } from './compose-block';
import { BLANK_MARK, bareMark, isLeftOver, isYours, type Memory, markIn, type RowMemory } from './memory';
import type { BlockContent } from './read-block';
import { numberedId } from './row-ids';

/**
 * What is remembered of each row that stands. A sort that left the memory behind shows in the first cells: a row whose
 * first cell is that of another row is that row. A first cell that is new is another name of the row where the grower
 * types the first cell, else a label that was typed over. Records are known by their first cells together. A row that
 * stands twice is remembered once. Rows that a write which was cut short has left stay as they are.
 */
export function matchRows(block: BlockContent & { readonly memory: Memory }): Memory['rows'] {
  const { memory } = block;
  const { rows } = memory;
  const columns = alignColumns(block);
  const byId = new Map(
    rows.flatMap((row) => (row && !isLeftOver(memory, row) ? [[row.id, row] as const] : [])),
  );
  const byName = new Map([...byId.values()].filter(isRecord).map((row) => [nameOf(row.marks), row]));
  const byLabel = rowsByLabel([...byId.values()]);
  const counts = new Map<string, number>();
  const taken = new Set<string>();
  const once = (row: RowMemory | undefined): RowMemory | undefined => {
    if (!row || taken.has(row.id)) return undefined;
    taken.add(row.id);
    return row;
  };
  const naming = Array.from({ length: NAMING_CELLS }, (_, w) => columns.indexOf(w));
  const firstOf = (r: number): string => markIn(block, r, naming[0] ?? -1);
  // Where no row begins as it was written, the first column is not the first any more: it says nothing.
  const isFirstThere = rows.some(
    (row, r) => row && isNamed(row) && bareMark(row.marks[0] ?? '') === firstOf(r),
  );
  return rows.map((row, r) => {
    const first = isFirstThere ? firstOf(r) : BLANK_MARK;
    const count = (counts.get(first) ?? 0) + 1;
    counts.set(first, count);
    if (row && isLeftOver(memory, row)) return row;
    if (row && isRecord(row) && isFirstThere) {
      const name = nameOf(naming.map((c) => markIn(block, r, c)));
      return once((nameOf(row.marks) === name ? undefined : byName.get(name)) ?? row);
    }
    const written = row?.marks[0] ?? BLANK_MARK;
    if (!row || bareMark(written) === first) return once(row);
    const name = numberedId(first, count);
    const same = first === BLANK_MARK ? undefined : (byId.get(name) ?? byLabel.get(name));
    if (same) return once(same);
    // A free row that was filled in, or a name that was changed: the row is the same, under another id.
    const id = first === BLANK_MARK || !isYours(written) ? row.id : name;
    return once({ ...row, id });
  });
}

/** Rows with a label of ours by its mark, and which one of that label it is: a setting goes by another id. */
function rowsByLabel(rows: readonly RowMemory[]): ReadonlyMap<string, RowMemory> {
  const counts = new Map<string, number>();
  return new Map(
    rows.flatMap((row) => {
      const [marked = BLANK_MARK] = row.marks;
      const label = bareMark(marked);
      if (isRecord(row) || isYours(marked) || label === BLANK_MARK) return [];
      const count = (counts.get(label) ?? 0) + 1;
      counts.set(label, count);
      return [[numberedId(label, count), row] as const];
    }),
  );
}

function isNamed({ marks }: RowMemory): boolean {
  return bareMark(marks[0] ?? BLANK_MARK) !== BLANK_MARK;
}

function nameOf(marks: readonly string[]): string {
  return marks.slice(0, NAMING_CELLS).join();
}

function isRecord({ id }: RowMemory): boolean {
  return isRecordId(id);
}
