/**
 * Looked for once for each thing that never changes (a file, tab or block as it was read), however many tasks and keystrokes
 * ask, and for each `about`, which tells by its JSON text what else it hangs on. Forgotten with the thing.
 */
export function oncePer<Thing extends object, About extends readonly unknown[], Found>(
  look: (thing: Thing, ...about: About) => Found,
): (thing: Thing, ...about: About) => Found {
  const known = new WeakMap<Thing, Map<string, Found>>();
  return (thing, ...about) => {
    const all = known.get(thing) ?? new Map<string, Found>();
    known.set(thing, all);
    const key = about.length === 0 ? '' : JSON.stringify(about);
    if (!all.has(key)) all.set(key, look(thing, ...about));
    return all.get(key) as Found;
  };
}
