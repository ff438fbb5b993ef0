import type { BlockInfo, TabContent } from '../contract';
import { alignColumns } from './align-columns';
import { isOurs } from './is-ours';
import {
  BLANK_MARK,
  bareMark,
  columnsWritten,
  isHead,
  markIn,
  ownTexts,
  readMemory,
  rememberedRows,
} from './memory';
import { MARK_NAME } from './own-words';
import { cut, cutBlock } from './read-block';

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

/**
 * Named blocks in which a table of ours stands, and of other kinds those that are only stamped; not so the mark of an
 * original, which its name makes.
 */
export function allBlocks(named: readonly BlockInfo[], tabs: readonly TabContent[]): BlockInfo[] {
  const standing = named.filter((block) => stands(block, tabs)).map((block) => fromFirstColumn(block, tabs));
  const others = stampedBlocks(tabs)
    .filter(({ name }) => !name.startsWith(MARK_NAME) && standing.every((block) => block.name !== name))
    .map((block) => ({ ...block, rows: rowsOf(block, tabs) }));
  return [...standing, ...others.filter((block) => stands(block, tabs))];
}

/** Its name may lag behind: a table that was moved or grown has its memory right of it. */
function stands({ tab, row, column, rows, columns }: BlockInfo, tabs: readonly TabContent[]): boolean {
  const values = tabs.find(({ name }) => name === tab)?.values ?? [];
  const head = (values[row - 1] ?? []).findIndex((text, c) => c >= column && isHead(text));
  const end = Math.max(column - 1 + columns, head + 1);
  return isOurs(values.slice(row - 1, row - 1 + rows).map((line) => line.slice(column - 1, end)));
}

/**
 * A name may begin too far right: one of the block's columns was dragged in front of its first. It is one that the
 * memory knows and the block does not have, with most of it as it was written.
 */
function fromFirstColumn(block: BlockInfo, tabs: readonly TabContent[]): BlockInfo {
  const tab = tabs.find(({ name }) => name === block.tab);
  if (!tab || block.column === 1) return block;
  const content = cutBlock(tab, block);
  if (!content.memory) return block;
  const { rows } = content.memory;
  const known = new Set(alignColumns(content));
  const left = cut(tab, { ...block, column: block.column - 1, rows: rows.length, columns: 1 });
  const isIt = (w: number): boolean => {
    const marks = rows.map((row) => bareMark(row?.marks[w] ?? BLANK_MARK));
    const filled = marks.flatMap((mark, r) => (mark === BLANK_MARK ? [] : [mark === markIn(left, r, 0)]));
    return filled.filter(Boolean).length > filled.length / 2;
  };
  const all = Array.from({ length: columnsWritten(content.memory) }, (_, w) => w);
  if (!all.some((w) => !known.has(w) && isIt(w))) return block;
  return fromFirstColumn({ ...block, column: block.column - 1, columns: block.columns + 1 }, tabs);
}

/** Rows down to the last that the memory's column holds. */
function rowsOf({ tab, row, column, columns }: BlockInfo, tabs: readonly TabContent[]): number {
  const values = tabs.find(({ name }) => name === tab)?.values ?? [];
  const texts = values.slice(row - 1).map((cells) => cells[column + columns - 2] ?? '');
  return rememberedRows(ownTexts(texts));
}
