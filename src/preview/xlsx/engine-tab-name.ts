/** The name of a tab without the characters that Sheets allows in it and the engine does not. */
export function engineTabName(name: string): string {
  return name.replace(/['*?/\\[\]]/g, '_');
}
