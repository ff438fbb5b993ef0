import { BLANK_MARK, bareMark, markOfStanding } from '../block/memory';
import type { BlockContent } from '../block/read-block';

/**
 * For each column that stands, the column it was written as; undefined for one that was put in. Columns keep their
 * order: of all ways to pair them the one in which most cells stand as marked. Without a memory they are as they stand.
 */
export function alignColumns(block: BlockContent, wanted: number): readonly (number | undefined)[] {
  const { values, formulas, memory } = block;
  const standing = values[0]?.length ?? 0;
  const written = Math.max(0, ...(memory?.rows ?? []).map((row) => row?.marks.length ?? 0));
  const all = Array.from({ length: standing }, (_, c) => c);
  if (!memory || standing === written) return all.map((c) => (c < Math.max(wanted, written) ? c : undefined));
  const alike = (c: number, w: number): number =>
    values.filter((row, r) => {
      const mark = bareMark(memory.rows[r]?.marks[w] ?? '');
      return mark !== BLANK_MARK && mark === markOfStanding(row[c] ?? '', formulas[r]?.[c] ?? '');
    }).length;
  // best[c][w]: most cells alike among the first c standing and the first w written columns.
  const best = Array.from({ length: standing + 1 }, () => Array<number>(written + 1).fill(0));
  const pair = all.map((c) => Array.from({ length: written }, (_, w) => alike(c, w)));
  for (const c of all) {
    for (let w = 0; w < written; w++) {
      best[c + 1]![w + 1] = Math.max(best[c]![w + 1]!, best[c + 1]![w]!, best[c]![w]! + pair[c]![w]!);
    }
  }
  const found: (number | undefined)[] = all.map(() => undefined);
  for (let [c, w] = [standing, written]; c > 0 && w > 0; ) {
    const isPair = pair[c - 1]![w - 1]! > 0 && best[c]![w] === best[c - 1]![w - 1]! + pair[c - 1]![w - 1]!;
    if (isPair) found[--c] = --w;
    else if (best[c]![w] === best[c - 1]![w]) c--;
    else w--;
  }
  return found;
}
