import type { BlockInfo, TabContent } from '../contract';
import { isHead, readMemory } from './memory';

/**
 * Blocks found by the head of their memory: where a first write was cut short before the block got its name, or the
 * name was deleted. Of two of one kind the first counts.
 */
export function stampedBlocks(tabs: readonly TabContent[]): readonly BlockInfo[] {
  const found = tabs.flatMap(({ name: tab, values }) =>
    values.flatMap((row, r) =>
      row.flatMap((text, c): BlockInfo[] => {
        if (!isHead(text)) return [];
        const memory = readMemory([text]);
        const columns = (memory?.rows[0]?.marks.length ?? 0) + 1;
        if (!memory || columns > c + 1) return [];
        return [
          { name: `SOUNDER_${memory.kind}`, tab, row: r + 1, column: c + 2 - columns, rows: 1, columns },
        ];
      }),
    ),
  );
  return found.filter((block, i) => found.findIndex(({ name }) => name === block.name) === i);
}

/** Named blocks, and of other kinds those that are only stamped. */
export function allBlocks(named: readonly BlockInfo[], tabs: readonly TabContent[]): BlockInfo[] {
  const others = stampedBlocks(tabs).filter(({ name }) => named.every((block) => block.name !== name));
  return [...named, ...others.map((block) => ({ ...block, rows: rowsOf(block, tabs) }))];
}

/** Rows down to the last that the memory's column holds. */
function rowsOf({ tab, row, column, columns }: BlockInfo, tabs: readonly TabContent[]): number {
  const values = tabs.find(({ name }) => name === tab)?.values ?? [];
  const texts = values.slice(row - 1).map((cells) => cells[column + columns - 2] ?? '');
  const next = texts.findIndex((text, r) => r > 0 && isHead(text));
  const own = next < 0 ? texts : texts.slice(0, next);
  return own.map((text) => readMemory([text]) !== undefined).lastIndexOf(true) + 1;
}
