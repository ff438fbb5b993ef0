import type { BlockContent } from '../block/read-block';
import type { BlockCell } from '../contract';

/**
 * Row of a new block, from 0, that stands for each row of the old one: the same text in the first column, the first
 * row of that text for the first, the second for the second. Undefined where there is none.
 */
export function rowsAgain(
  old: BlockContent,
  next: readonly (readonly BlockCell[])[],
): readonly (number | undefined)[] {
  const rows = new Map(
    counted(next.map((row) => (row[0]?.k === 't' ? row[0].v : ''))).map((key, r) => [key, r]),
  );
  const labels = old.values.map(([first]) => (typeof first === 'string' ? first : ''));
  return counted(labels).map((key) => (key === '' ? undefined : rows.get(key)));
}

/** "label" and which one of that label it is; '' for no label. */
function counted(labels: readonly string[]): string[] {
  const counts = new Map<string, number>();
  return labels.map((label) => {
    if (label === '') return '';
    const count = (counts.get(label) ?? 0) + 1;
    counts.set(label, count);
    return JSON.stringify([label, count]);
  });
}
