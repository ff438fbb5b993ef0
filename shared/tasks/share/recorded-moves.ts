import type { Book } from '../../block/book';
import type { Day } from '../../core/calendar/day';
import { standingRotation } from '../rotation/rotation-standing';

export interface RecordedMoves {
  readonly count: number;
  readonly last: Day;
}

/** The moves of the rotation table that have a day moved in; undefined where none has. */
export function recordedMoves(book: Book): RecordedMoves | undefined {
  const days = standingRotation(book)?.rotation.rows.flatMap(({ movedIn }) => movedIn ?? []) ?? [];
  return days.length === 0 ? undefined : { count: days.length, last: Math.max(...days) };
}
