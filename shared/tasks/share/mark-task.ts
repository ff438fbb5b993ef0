import { text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import { TITLES } from '../../block/own-words';
import { asking } from '../ask';
import { inLines } from '../look-out';
import type { Task } from '../task';
import { isMark } from './original-mark';
import { COPY_STEPS } from './words';

/** Marks the file as the original, by the name that the script gives; the block itself says how to copy. */
export function markTask(mark: string): Task<true> {
  return {
    name: mark,
    what: 'the mark',
    tabName: 'Sharing',
    // That of another file stands in a copy, and gives its place.
    read: (book, answers) => {
      const standing = book.overview.blocks.find(isMark)?.name ?? mark;
      return asking(book, answers, standing).form(() => true, {});
    },
    compose: () => ({
      ...composeBlock([
        { cells: [text(TITLES.mark)], style: 'title' },
        ...COPY_STEPS.flatMap((step, s) => inLines(`${s + 1}. ${step}`)).map((line) => ({
          cells: [text(line)],
        })),
      ]),
      rules: [],
      widths: [240],
    }),
  };
}
