/**
 * The mark by which the script knows a copy from the original: the name of a block, made of the file's id, which the
 * original has before it is copied. A name comes along in a copy of the file, where it no longer fits, and never with
 * cells that are pasted from another file.
 *
 * The id itself is not written, so that a copy carries nothing that points back at the original.
 */
import { fingerprint } from '../../block/hash-text';
import { MARK_NAME } from '../../block/own-words';

/** The name of the mark in the file of that id. */
export function originalMark(fileId: string): string {
  const digits = [...fingerprint(`sounder sheet original ${fileId}`)];
  const letters = digits.map((digit) => String.fromCharCode(65 + Number.parseInt(digit, 16)));
  return MARK_NAME + letters.join('');
}

export function isMark({ name }: { readonly name: string }): boolean {
  return name.startsWith(MARK_NAME);
}
