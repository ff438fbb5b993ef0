/** FNV-1a, 32 bits (offset basis and prime of G. Fowler, L. C. Noll and K.-P. Vo, from memory). Not cryptographic. */
export const BASIS = 0x811c9dc5;
const PRIME = 0x01000193;

/** A whole number from 0 to 2³² − 1 over the UTF-16 units of a text. */
export function hashText(text: string, basis = BASIS): number {
  let hash = basis;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), PRIME);
  return hash >>> 0;
}
