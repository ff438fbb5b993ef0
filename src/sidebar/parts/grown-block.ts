import { type BlockContent, cutBlock } from '../../../shared/block/read-block';
import { findLists } from '../../../shared/lists/find-lists';
import { listArea } from '../../../shared/lists/list-area';
import { grownBlock } from '../../../shared/tasks/grown-block';
import type { Book } from './use-book';

export interface GrownBlock {
  /** The block and the rows that were filled right below it. */
  readonly content: BlockContent;
  /** How many rows those are. */
  readonly adoptRows: number;
  /** Empty rows below them. */
  readonly below: number;
}

/** A table to type into as it stood when the file was read, with the rows right below it. */
export function standingAndBelow({ overview, tabs }: Book, name: string): GrownBlock | undefined {
  const named = overview.blocks.find((block) => block.name === name);
  const tab = tabs.find((one) => one.name === named?.tab);
  if (!named || !tab) return undefined;
  const lists = findLists(tabs, overview.blocks).map(listArea);
  const others = [...overview.blocks.filter((block) => block.name !== name), ...lists];
  const { info, below } = grownBlock(tab, named, others);
  return { content: cutBlock(tab, info), adoptRows: info.rows - named.rows, below };
}
