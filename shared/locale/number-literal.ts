/**
 * A number as it may stand in a formula of any spreadsheet locale.
 *
 * Where people write a decimal comma, a decimal point in a formula is refused or read as a date. A fraction of
 * whole numbers means the same everywhere: 5.333 becomes 5333/1000.
 */
export function numberLiteral(value: number, comma: boolean): string {
  const [mantissa = '0', exponent = '0'] = String(value).toLowerCase().split('e');
  if (!comma) return String(value).toUpperCase();
  const [whole = '0', decimals = ''] = mantissa.split('.');
  const digits = `${whole}${decimals}`.replace(/^(-?)0+(?=\d)/, '$1');
  const shift = Number(exponent) - decimals.length;
  return shift >= 0 ? digits + '0'.repeat(shift) : `${digits}/1${'0'.repeat(-shift)}`;
}
