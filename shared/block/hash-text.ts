/** FNV-1a, 32 bits (offset basis and prime of G. Fowler, L. C. Noll and K.-P. Vo, from memory). Not cryptographic. */
const BASIS = 0x811c9dc5;
const PRIME = 0x01000193;

/** A whole number from 0 to 2³² − 1 over the UTF-16 units of a text. */
export function hashText(text: string, basis = BASIS): number {
  let hash = basis;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), PRIME);
  return hash >>> 0;
}

/** A text of 16 digits, from two such numbers: the second basis is the first with its bits turned over. */
export function fingerprint(text: string): string {
  return [BASIS, ~BASIS].map((basis) => hashText(text, basis).toString(16).padStart(8, '0')).join('');
}
