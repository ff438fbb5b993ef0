/**
 * What google.script.run lets through between page and script: numbers, texts, TRUE/FALSE, null, and plain arrays
 * and objects of these.
 */

/** Path of the first thing that may not cross, or undefined. `allowUndefined` is for whole arguments only. */
function illegalPath(value: unknown, path: string, seen: readonly unknown[]): string | undefined {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return undefined;
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : path;
  if (typeof value !== 'object' || seen.includes(value)) return path;
  const tag = Object.prototype.toString.call(value);
  if (tag !== '[object Object]' && tag !== '[object Array]') return path;
  for (const [key, inner] of Object.entries(value as object)) {
    const found = illegalPath(inner, path === '' ? key : `${path}.${key}`, [...seen, value]);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Copies the page's arguments for the script, or throws as the real page-side object does. */
export function argumentsForScript(values: readonly unknown[]): unknown[] {
  return values.map((value, index) => {
    if (value === undefined) return null;
    const found = illegalPath(value, String(index), []);
    if (found !== undefined) throw new TypeError(`Failed due to illegal value in property: ${found}`);
    return JSON.parse(JSON.stringify(value)) as unknown;
  });
}

/** Copies what the script returned for the page. One illegal part and the page gets null, without any message. */
export function resultForPage(returned: unknown): unknown {
  if (returned === undefined || illegalPath(returned, '', []) !== undefined) return null;
  return JSON.parse(JSON.stringify(returned)) as unknown;
}
