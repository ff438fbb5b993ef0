import { LONGEST_NAME } from './limits';

/** Names on one line and of bearable length; repeats, in whatever letter case, get a number. */
export function uniqueNames(names: readonly string[]): readonly string[] {
  const taken = new Set<string>();
  return names.map((raw) => {
    const name = raw.replace(/\s+/g, ' ').trim().slice(0, LONGEST_NAME) || 'Unnamed';
    let unique = name;
    for (let i = 2; taken.has(unique.toLowerCase()); i++) unique = `${name} (${i})`;
    taken.add(unique.toLowerCase());
    return unique;
  });
}
