import { readTyped } from './read-typed';

/** `undefined` for nothing typed; a problem is the end of "… must": "be a number, got “0,5 m”". */
export type Amount = { readonly value: number | undefined } | { readonly problem: string };

/**
 * A number typed into a field whose unit stands beside it. In a field of per cent "10" and "10%" are both ten; in any
 * other a per cent sign is refused, for 20 % of what?
 */
export function readAmount(typed: string, comma: boolean, unit = ''): Amount {
  const text = typed.trim();
  if (text === '') return { value: undefined };
  const isPercent = text.endsWith('%');
  const read = readTyped(isPercent && unit === '%' ? text.slice(0, -1) : text, comma);
  if ('problem' in read) return read;
  if (typeof read.value === 'number' && (!isPercent || unit === '%')) return { value: read.value };
  return { problem: `be a number, got “${text}”` };
}
