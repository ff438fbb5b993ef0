/** A number for reading: about five significant digits, thousands parted, in the browser's own language. */
export function formatNumber(value: number): string {
  const size = Math.abs(value);
  const decimals = size === 0 || size >= 10_000 ? 0 : Math.max(0, 4 - Math.floor(Math.log10(size)));
  return value.toLocaleString(undefined, { maximumFractionDigits: Math.min(decimals, 12) });
}
