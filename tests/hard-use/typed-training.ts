/** The training pen and the training log, rebuilt as their panel does. */

import { startUnits } from '../../shared/lists/start-units';
import { readUnits } from '../../shared/tasks/settings';
import { composeLogBlock, LOG_BLOCK, LOG_SETTINGS } from '../../shared/tasks/training/log-block';
import { composePenBlock, PEN_BLOCK, PEN_SETTINGS } from '../../shared/tasks/training/pen-block';
import { readLog } from '../../shared/tasks/training/read-log';
import { readPen } from '../../shared/tasks/training/read-pen';
import type { Book } from '../../src/sidebar/parts/use-book';
import type { TypedTask } from './typed-cells';
import { contentOf, over, reading } from './typed-over';
import { settingsOnPage, withOwnSettings } from './typed-settings';

export function penTask(book: Book): TypedTask {
  const content = contentOf(book, PEN_BLOCK);
  const ownUnits = startUnits(book);
  return {
    name: 'Training pen',
    content: withOwnSettings(content, PEN_SETTINGS, readUnits(content) ?? ownUnits),
    rebuild: (typed) => {
      const changed = reading(typed);
      const read = readPen(changed);
      const units = readUnits(changed) ?? ownUnits;
      const { values, problems } = settingsOnPage(PEN_SETTINGS, read.settings, units);
      const compose = () => composePenBlock(values, read.onHand, units, changed.info);
      return over(typed, problems, compose);
    },
  };
}

export function logTask(book: Book): TypedTask {
  const content = contentOf(book, LOG_BLOCK);
  return {
    name: 'Training log',
    content: withOwnSettings(content, LOG_SETTINGS, 'US'),
    rebuild: (typed) => {
      const changed = reading(typed);
      const read = readLog(changed);
      const { values, problems } = settingsOnPage(LOG_SETTINGS, read.settings, 'US');
      const room = { lines: read.lines, below: Number.POSITIVE_INFINITY };
      const compose = () => composeLogBlock(values, read.rows, read.headings, changed.info, room);
      return over(typed, problems, compose);
    },
  };
}
