/** A heading without the unit in brackets behind it. */
export function withoutUnit<Cell>(cell: Cell): Cell | string {
  return typeof cell === 'string' ? cell.replace(/\s*\([^)]*\)\s*$/, '') : cell;
}
