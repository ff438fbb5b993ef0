/**
 * A short text that changes when anything that was typed in a block changes.
 *
 * The page takes it when it reads the block, the script takes it again before writing over the block. A cell
 * with a formula counts by its formula, not by its value: values of formulas move by themselves (a list was
 * corrected, a function is still calculating) and nothing typed is lost by writing over them.
 *
 * Answers that a cell function spills do not count either: the block's memory says which they are. What still
 * calculates counts as blank anywhere.
 */
import { fingerprint } from '../block/hash-text';
import { LOADING } from '../block/loading';
import { ANSWER_MARK, isMemory, readMemory } from '../block/memory';
import type { WireCell } from '../contract';

/** Fingerprint of a block's values and formulas (same shape; formula '' where the cell holds none). */
export function blockFingerprint(
  values: readonly (readonly WireCell[])[],
  formulas: readonly (readonly string[])[],
): string {
  const at = values[0]?.findIndex((_, c) => values.some((row) => isMemory(row[c] ?? ''))) ?? -1;
  const memory = readMemory(values.map((row) => row[at] ?? ''));
  const isAnswer = (r: number, c: number): boolean => memory?.rows[r]?.marks[c] === ANSWER_MARK;
  const cells = values.map((row, r) =>
    row.map((value, c) => formulas[r]?.[c] || (isAnswer(r, c) ? [] : [value === LOADING ? '' : value])),
  );
  return fingerprint(JSON.stringify(cells));
}
