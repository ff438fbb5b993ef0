import { startUnits } from '../../lists/start-units';
import { asking } from '../ask';
import { growerLists } from '../grower-lists';
import { herdSource } from '../herd/herd-log';
import { standingRotation } from '../rotation/rotation-standing';
import type { Task } from '../task';
import { trainingFormulas } from '../training/group-training';
import { NO_TABLE } from '../words';
import { type BoundTable, boundTable } from './bound-table';
import { TODAY_BLOCK } from './tick-words';
import { todayBlock } from './today-block';
import * as words from './words';
import { type TodayTable, withLogs } from './working-rows';

/** A page in the sheet for the phone, out of the rotation table. */
export const TODAY_TASK: Task<TodayTable> = {
  name: TODAY_BLOCK,
  what: 'today’s page',
  tabName: 'Today',
  next: words.RECORD_NEXT,
  read: (book, answers) => {
    const ask = asking(book, answers, TODAY_BLOCK);
    const block = standingRotation(book)?.block;
    const table = block ? boundTable(block) : { problem: NO_TABLE };
    if ('problem' in table) ask.wrong([table.problem]);
    const form = ask.form(
      () => withLogs(table as BoundTable, { herd: herdSource(book), training: trainingFormulas(book) }),
      {},
      {},
    );
    // What is wrong in a list leaves figures of the page blank.
    const { problems } = growerLists(book, startUnits(book));
    return { ...form, warnings: problems.map(({ sentence }) => `${sentence}.`) };
  },
  compose: todayBlock,
  ownTab: true,
};
