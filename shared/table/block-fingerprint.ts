/**
 * A short text that changes when anything that was typed in a block changes.
 *
 * The page takes it when it reads the block, the script takes it again before writing over the block. A cell
 * with a formula counts by its formula, not by its value: values of formulas move by themselves (a list was
 * corrected, a function is still calculating) and nothing typed is lost by writing over them.
 *
 * Not cryptographic: two 32-bit FNV-1a hashes (offset basis and prime of G. Fowler, L. C. Noll and K.-P. Vo,
 * from memory; the second basis is the first with its bits turned over) over the UTF-16 units of the JSON text.
 */
import type { WireCell } from '../contract';

const BASIS = 0x811c9dc5;
const PRIME = 0x01000193;

/** Fingerprint of a block's values and formulas (same shape; formula '' where the cell holds none). */
export function blockFingerprint(
  values: readonly (readonly WireCell[])[],
  formulas: readonly (readonly string[])[],
): string {
  const cells = values.map((row, r) => row.map((value, c) => formulas[r]?.[c] || [value]));
  const text = JSON.stringify(cells);
  return hashText(text, BASIS) + hashText(text, ~BASIS);
}

function hashText(text: string, basis: number): string {
  let hash = basis;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), PRIME);
  return (hash >>> 0).toString(16).padStart(8, '0');
}
