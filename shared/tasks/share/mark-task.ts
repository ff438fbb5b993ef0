import { asking } from '../ask';
import type { Task } from '../task';
import { composeMarkBlock } from './mark-block';
import { MARK_BLOCK } from './original-mark';

/** Marks the file as the original, with the mark that the script gives for it. */
export function markTask(mark: string): Task<string> {
  return {
    name: MARK_BLOCK,
    what: 'the mark',
    tabName: 'Sharing',
    read: (book, answers) => asking(book, answers, MARK_BLOCK).form(() => mark, {}),
    compose: composeMarkBlock,
  };
}
