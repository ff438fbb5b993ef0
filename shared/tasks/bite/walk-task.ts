import { dayFromIso } from '../../core/calendar/day';
import { readTyped } from '../../locale/read-typed';
import { asking } from '../ask';
import type { TableRoom } from '../room-to-type';
import type { SettingValues } from '../settings';
import type { Task } from '../task';
import { readWalk } from './read-walk';
import { readingRow, WALK_BLOCK, WALK_SETTINGS, type WalkRow, walkBlock } from './walk-block';
import type { Reading } from './walk-log';
import * as words from './words';

export const READING_LABELS = {
  day: 'Date',
  place: 'Place',
  volts: 'Volts',
  found: 'What was found',
} as const;

interface WalkPlan {
  readonly rows: readonly WalkRow[];
  readonly settings: SettingValues<'level'>;
  readonly room: TableRoom;
}

/** The log of fence walks, and one reading more. */
export const WALK_TASK = {
  name: WALK_BLOCK,
  what: 'the fence walk log',
  tabName: 'Fence walk',
  read: (book, answers) => {
    const ask = asking(book, answers, WALK_BLOCK, 'down');
    const log = ask.block && readWalk(ask.block);
    const typed = ask.texts(READING_LABELS, { day: book.overview.today });
    const read = readReading(typed, ask.comma);
    const problem = 'problem' in read ? read.problem : undefined;
    ask.wrong(problem === undefined ? [] : [problem]);
    const settings = ask.settings(WALK_SETTINGS, { values: log?.settings.values ?? {} }, 'US');
    const added = 'reading' in read && read.reading ? [readingRow(read.reading)] : [];
    const room = ask.room(log);
    return ask.form(() => ({ rows: [...(log?.rows ?? []), ...added], settings: settings.values, room }), {
      typed,
      readingProblem: problem,
      settings,
      log,
    });
  },
  compose: ({ rows, settings, room }, corner) => walkBlock(rows, settings, corner, room),
} satisfies Task<WalkPlan>;

/** No tester shows less on a fence, and no energizer gives as many kilovolts. Judgement. */
const LEAST_VOLTS = 20;
const VOLTS_IN_KILOVOLT = 1000;

function readReading(
  { day, place, volts: typed, found }: Readonly<Record<keyof typeof READING_LABELS, string>>,
  comma: boolean,
): { reading: Reading | undefined } | { problem: string } {
  if (typed.trim() === '') return { reading: undefined };
  const volts = readTyped(typed, comma);
  if ('problem' in volts) return { problem: volts.problem };
  if (typeof volts.value !== 'number' || volts.value < 0) {
    return { problem: `volts must be 0 or more, got ${typed}` };
  }
  if (volts.value > 0 && volts.value < LEAST_VOLTS) {
    const meant = Math.round(volts.value * VOLTS_IN_KILOVOLT);
    return {
      problem: words.looksLikeKilovolts(typed, meant),
    };
  }
  const on = dayFromIso(day);
  if (on === undefined) return { problem: 'the reading needs a date' };
  return { reading: { day: on, place, volts: volts.value, found } };
}
