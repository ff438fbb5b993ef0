import { cellA1 } from '../block/a1';
import type { BlockContent } from '../block/read-block';
import type { BlockCell, WireCell } from '../contract';
import { plainNumber } from '../refusals';

/**
 * Cells of a block that somebody typed and that would be gone after a rebuild: each as `A7 ("ring Bea")`.
 *
 * A typed text, date or tick counts as kept if the new block holds it as often. A typed number too, but numbers
 * beside a label of ours (second to fourth column) are settings and sizes, which the sidebar has read and may
 * have changed on purpose.
 */
export function lostCells(old: BlockContent, next: readonly (readonly BlockCell[])[]): readonly string[] {
  const left = new Map<string, number>();
  for (const cell of next.flat()) {
    const key =
      cell.k === 'blank' || cell.k === 'f' ? undefined : keyOf(cell.k === 'd' ? { d: cell.v } : cell.v);
    if (key !== undefined) left.set(key, (left.get(key) ?? 0) + 1);
  }
  const known = new Set(next.map((row) => (row[0]?.k === 't' ? row[0].v : '')));
  return old.values.flatMap((row, r) =>
    row.flatMap((value, c) => {
      if (value === '' || (old.formulas[r]?.[c] ?? '') !== '') return [];
      const isSetting = typeof value === 'number' && c >= 1 && c <= 3 && known.has(String(row[0]));
      const count = left.get(keyOf(value)) ?? 0;
      left.set(keyOf(value), count - 1);
      if (count > 0 || isSetting) return [];
      return [`${cellA1(old.info.row + r, old.info.column + c)} (${shown(value)})`];
    }),
  );
}

function keyOf(value: WireCell): string {
  return JSON.stringify(value);
}

function shown(value: WireCell): string {
  if (typeof value === 'object') return value.d;
  return typeof value === 'number' ? plainNumber(value) : `“${value}”`;
}
