import type { TabContent, WholeFile, WriteDone } from '../contract';
import { allBlocks } from './stamped-blocks';

/** Everything that is known of the file as it was read: what it is and what stands on its tabs. */
export type Book = Readonly<WholeFile>;

/** Blocks whose name is missing are found by the head of their memory. */
export function bookOf({ overview, tabs }: WholeFile): Book {
  return { overview: { ...overview, blocks: allBlocks(overview.blocks, tabs) }, tabs };
}

export function tabNamed({ tabs }: Book, name: string | undefined): TabContent | undefined {
  return tabs.find((tab) => tab.name === name);
}

/** The book once a block was written; undefined where its tab could not be read after that. */
export function bookAfter({ overview, tabs }: Book, { block, tab }: WriteDone): Book | undefined {
  if (!tab) return undefined;
  const info = { name: tab.name, rows: tab.values.length, columns: tab.values[0]?.length ?? 0 };
  return bookOf({
    overview: {
      ...overview,
      tabs: withOne(overview.tabs, info),
      blocks: withOne(overview.blocks, block),
    },
    tabs: withOne(tabs, tab),
  });
}

/** In the place of the one of that name, else as the last. */
function withOne<Named extends { readonly name: string }>(all: readonly Named[], one: Named): Named[] {
  const others = all.map((other) => (other.name === one.name ? one : other));
  return others.includes(one) ? others : [...others, one];
}
