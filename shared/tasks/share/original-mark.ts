/**
 * The mark by which the script knows a copy from the original: a short text made of the file's id, written into
 * the original before it is copied. In a copy the id differs and the mark no longer fits.
 *
 * The id itself is not written, so that a copy carries nothing that points back at the original.
 */
import { type Memory, markOfStanding, readMemory } from '../../block/memory';
import type { WireCell } from '../../contract';
import { blockFingerprint } from '../../table/block-fingerprint';

export const MARK_BLOCK = 'SOUNDER_ORIGINAL';

const MARK_LABEL = 'Mark of the original';

/** 16 hexadecimal digits. */
export function originalMark(fileId: string): string {
  return blockFingerprint([[`sounder sheet original ${fileId}`]], [['']]);
}

/** The row that carries the mark. */
export function markRow(mark: string): readonly [label: string, mark: string] {
  return [MARK_LABEL, mark];
}

/**
 * The mark that stands in the block of the original; undefined where none does. What was typed or pasted over it says
 * nothing of the file: it must be what the block remembers. `memory`: where it is not the last column of the values.
 */
export function readMark(
  values: readonly (readonly WireCell[])[],
  memory: Memory | undefined = readMemory(values.map((row) => row[row.length - 1] ?? '')),
): string | undefined {
  const r = values.findIndex(([label]) => label === MARK_LABEL);
  const mark = values[r]?.[1];
  const isAsWritten = memory?.rows[r]?.marks[1] === markOfStanding(mark ?? '', '');
  return isAsWritten && typeof mark === 'string' && /^[0-9a-f]{16}$/.test(mark) ? mark : undefined;
}
