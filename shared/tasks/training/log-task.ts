import { asking } from '../ask';
import type { TableRoom } from '../room-to-type';
import type { SettingValues } from '../settings';
import type { Task } from '../task';
import { composeLogBlock, LOG_BLOCK, LOG_SETTINGS, type LogRow } from './log-block';
import { readLog } from './read-log';

interface LogPlan {
  readonly settings: SettingValues<'minimumDays'>;
  readonly rows: readonly LogRow[];
  readonly headings: readonly string[];
  readonly room: TableRoom;
}

/** The log of what each pig or batch has done in the training pen. */
export const LOG_TASK = {
  name: LOG_BLOCK,
  what: 'the training log',
  tabName: 'Training log',
  read: (book, answers) => {
    const ask = asking(book, answers, LOG_BLOCK, 'down');
    const read = ask.block && readLog(ask.block);
    const settings = ask.settings(LOG_SETTINGS, read?.settings, 'US');
    const room = ask.room(read);
    const { rows = [], headings = [] } = read ?? {};
    return ask.form(() => ({ settings: settings.values, rows, headings, room }), { settings });
  },
  compose: ({ settings, rows, headings, room }, corner) =>
    composeLogBlock(settings, rows, headings, corner, room),
} satisfies Task<LogPlan>;
