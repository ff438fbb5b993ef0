import type { TabContent, WireCell } from '../../../shared/contract';
import type { DateOrder } from '../../../shared/locale/date-order';
import type { UnitSystem } from '../../../shared/units/units';

/** A farm's own book, invented, with what its grower means by it. */
export interface Book {
  readonly name: string;
  readonly locale: string;
  readonly order: DateOrder;
  readonly system: UnitSystem;
  readonly comma: boolean;
  readonly today: string;
  readonly tabs: readonly TabContent[];
}

/** Text that begins with "=" is a formula whose value stands behind "→"; "2026-04-10" behind "@" is a date cell. */
export function tab(name: string, rows: readonly (readonly (string | number)[])[]): TabContent {
  const width = Math.max(...rows.map((row) => row.length));
  const even = rows.map((row) => Array.from({ length: width }, (_, c) => row[c] ?? ''));
  const parts = even.map((row) => row.map((cell) => String(cell).split('→')));
  return {
    name,
    values: even.map((row, r) => row.map((cell, c) => cellValue(cell, parts[r]![c]![1]))),
    formulas: parts.map((row) => row.map(([formula = '', value]) => (value === undefined ? '' : formula))),
  };
}

function cellValue(cell: string | number, ofFormula: string | undefined): WireCell {
  if (ofFormula !== undefined) return Number(ofFormula);
  return typeof cell === 'string' && cell.startsWith('@') ? { d: cell.slice(1) } : cell;
}
