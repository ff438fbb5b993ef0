/** Colours as scripts write them: "#rrggbb", a few names, or null for the default. */
const NAMED: Readonly<Record<string, string>> = {
  black: '#000000',
  white: '#ffffff',
  gray: '#808080',
  red: '#ff0000',
  green: '#008000',
  blue: '#0000ff',
  yellow: '#ffff00',
  orange: '#ffa500',
};

export function cssColor(color: string | null | undefined): string | undefined {
  if (color === null || color === undefined) return undefined;
  if (/^#([0-9a-f]{3}|[0-9a-f]{6})$/i.test(color)) return color;
  const named = NAMED[color];
  if (!named) throw new Error(`Invalid color: ${color}`);
  return named;
}
