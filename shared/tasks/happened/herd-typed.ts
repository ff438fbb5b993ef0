/** What is typed into the herd log when heads or weights have changed. */
import { BLANK } from '../../block/cells';
import { isoFromDay } from '../../core/calendar/day';
import { dayWords } from '../../core/calendar/day-words';
import { nameKey } from '../../lists/read-list-cell';
import { typedRows } from '../end-line';
import { HERD_BLOCK, HERD_HEADINGS, type HerdRow } from '../herd/herd-block';
import { CHANGE_LABELS, HERD_TASK } from '../herd/herd-task';
import { readHerd } from '../herd/read-herd';
import { standingOf } from '../standing';
import type { FarmNow } from './farm-now';
import { type Happened, NotRecorded, type Typing } from './happened';
import { cardOf, dayTyped } from './moves-typed';
import * as words from './words';

/** The row that the herd log's own form makes, and a first one of the group where it has none, in blank rows of it. */
export function herdTyped(farm: FarmNow, happened: Happened): Typing[] {
  const standing = standingOf(farm.book, HERD_BLOCK, 'down');
  if (!standing) throw new NotRecorded(words.NO_LOG);
  const { group } = cardOf(farm, happened);
  const { head = '', weight = '', note = '' } = happened;
  refuseHerd(farm, happened, head.trim());
  const form = HERD_TASK.read(farm.book, {
    [CHANGE_LABELS.group]: group,
    [CHANGE_LABELS.day]: isoFromDay(dayTyped(happened)),
    [CHANGE_LABELS.head]: head,
    [CHANGE_LABELS.weight]: weight,
    [CHANGE_LABELS.note]: note,
  });
  if (!form.plan) throw new NotRecorded(form.questions.join(' '), head.trim() === '' ? 'weight' : 'head');
  if (head.trim() === '' && weight.trim() === '') throw new NotRecorded(words.GIVE_ONE, 'head');
  const known = readHerd(standing.reading).rows.length;
  const fresh = form.plan.rows.slice(known);
  const { headings, sheetRows } = typedRows(standing.block, HERD_HEADINGS);
  if (headings.length === 0 || known + fresh.length > sheetRows.length) {
    throw new NotRecorded(words.LOG_FULL);
  }
  const { tab, column } = standing.block.info;
  return fresh.flatMap((row, i) =>
    row.flatMap((after, c): Typing[] => {
      const what = `${HERD_HEADINGS[c]} of ${nameOf(row)}`;
      const at = { tab, row: sheetRows[known + i]!, column: column + headings.indexOf(HERD_HEADINGS[c]!) };
      return after.k === 'blank' ? [] : [{ what, cell: { ...at, before: BLANK, after } }];
    }),
  );
}

function nameOf([group, day]: HerdRow): string {
  return [group, day].map((cell) => ('v' in cell ? cell.v : '')).join(', ');
}

function refuseHerd(farm: FarmNow, happened: Happened, head: string): void {
  const { group, moves } = cardOf(farm, happened);
  const day = dayTyped(happened);
  const listed = farm.lists.groups.find(({ name }) => nameKey(name) === nameKey(group));
  if (!listed) throw new NotRecorded(words.groupGone(group), 'group');
  const came = listed.from ?? moves[0]?.inDay;
  if (head !== '' && came !== undefined && day < came) {
    throw new NotRecorded(words.beforeItCame(group, dayWords(came)), 'day');
  }
  const later = moves.filter(({ inDay, out }) => inDay! >= day || (out !== undefined && out > day));
  const last = later[later.length - 1];
  if (head !== '0' || happened.allGone || !last) return;
  throw new NotRecorded(words.stillHasMoves(group, last.paddock, dayWords(last.inDay!)), 'head');
}
