/** What the sidebar's button does with a block that stands: refuses, or composes the new one. */
import { type BlockContent, cutBlock } from '../../shared/block/read-block';
import type { WriteBlock } from '../../shared/contract';
import { asWritten } from '../../shared/tasks/merge-block';
import { OUR_WORDS } from '../../shared/tasks/our-words';
import { rebuildBlock } from '../../shared/tasks/rebuild-block';
import type { Book } from '../../src/sidebar/parts/use-book';
import type { Rebuilt } from './typed-cells';

type Block = Pick<WriteBlock, 'cells' | 'styles' | 'rules' | 'widths'>;

/** The block of that name as the page reads it. */
export function contentOf({ overview, tabs }: Book, name: string): BlockContent {
  const info = overview.blocks.find((block) => block.name === name);
  const tab = tabs.find((one) => one.name === info?.tab);
  if (!info || !tab) throw new Error(`no ${name} in the file`);
  return cutBlock(tab, info);
}

/** The block as the page's readers get it. */
export function reading(typed: BlockContent): BlockContent {
  return asWritten(typed, OUR_WORDS);
}

/** `problems`: what the page shows while its button is disabled. */
export function over(typed: BlockContent, problems: readonly string[], compose: () => Block): Rebuilt {
  return problems.length > 0
    ? { refused: problems }
    : refusedOr(() => {
        const { kept, ...block } = rebuildBlock(typed.info.name, typed, compose, typed);
        return { ...block, told: [...kept.inPlace, ...kept.below] };
      });
}

export function refusedOr(build: () => Rebuilt): Rebuilt {
  try {
    return build();
  } catch (error) {
    return { refused: [error instanceof Error ? error.message : String(error)] };
  }
}
