import type { TabContent, WholeFile } from '../contract';
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
