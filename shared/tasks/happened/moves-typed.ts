/** What is typed into the rotation table when a group has moved, or has not. */

import { cellOnTab } from '../../block/cell-on-tab';
import { date, number, text } from '../../block/cells';
import { isFilled } from '../../block/is-filled';
import type { BlockCell } from '../../contract';
import { type Day, dayFromIso, isoFromDay } from '../../core/calendar/day';
import { dayWords } from '../../core/calendar/day-words';
import type { ReadPaddock } from '../../lists/model';
import { nameKey } from '../../lists/read-list-cell';
import { decimalComma } from '../../locale/decimal-comma';
import { readTyped } from '../../locale/read-typed';
import { COLUMNS, type ColumnKey } from '../../table/columns';
import type { OldRow } from '../../table/model';
import { moveName } from '../../table/move-name';
import { rowNamed, SPACE } from '../../table/move-rows';
import { movedInFault } from '../../table/moved-in-fault';
import { SKIPPED } from '../../table/skipped';
import type { Card, FarmNow } from './farm-now';
import { type Happened, NotRecorded, type Typing } from './happened';
import { rotationCell } from './rotation-cells';
import * as words from './words';

export function movedTyped(farm: FarmNow, happened: Happened): Typing[] {
  const card = cardOf(farm, happened);
  const day = dayTyped(happened);
  if (day > farm.today) {
    throw new NotRecorded(words.dayOrBefore(isoFromDay(farm.today), isoFromDay(day)), 'day');
  }
  const planned = happened.move === '' ? undefined : moveOf(card, happened);
  const paddock = listedPaddock(farm, happened.paddock || planned?.paddock).name;
  refuseDay(farm, card, planned, day);
  refuseTaken(farm, card, paddock, day);
  return planned ? moved(farm, planned, paddock, day) : unplanned(farm, card, paddock, day);
}

export function skippedTyped(farm: FarmNow, happened: Happened): Typing[] {
  return [typing(farm, moveOf(cardOf(farm, happened), happened), 'movedIn', text(SKIPPED))];
}

/** The stay before it becomes longer, and the sheet shifts what comes after. */
export function notYetTyped(farm: FarmNow, happened: Happened): Typing[] {
  const card = cardOf(farm, happened);
  const move = moveOf(card, happened);
  const stay = card.moves[card.moves.indexOf(move) - 1];
  if (!stay) {
    throw new NotRecorded(words.notInYet(card.group), 'move');
  }
  const day = dayTyped(happened);
  const earliest = Math.max(farm.today, stay.inDay! + 1);
  if (day < earliest)
    throw new NotRecorded(words.newDayOrLater(isoFromDay(earliest), isoFromDay(day)), 'day');
  const { seasonEnd } = farm.settings.rules;
  if (day >= seasonEnd) throw new NotRecorded(words.seasonEnds(isoFromDay(seasonEnd)), 'day');
  const came = stay.movedIn === undefined ? [typing(farm, stay, 'movedIn', date(stay.inDay!))] : [];
  return [...came, typing(farm, stay, 'days', number(day - stay.inDay!, '0'))];
}

export function coverTyped(farm: FarmNow, happened: Happened): Typing[] {
  const { moves, at } = cardOf(farm, happened);
  const stay = moves.slice(0, at ? moves.indexOf(at) + 1 : 0).find(({ id }) => id === happened.move);
  if (!stay) throw new NotRecorded(words.CHOOSE_STAY, 'move');
  return [typing(farm, stay, 'cover', number(coverOf(farm, happened.cover ?? ''), '0%'))];
}

/** One cell a group: the moves before the last one that was due count as done once that has a day. */
export function asPlannedTyped(farm: FarmNow): Typing[] {
  const due = farm.cards.flatMap(({ open }) => open.filter(({ inDay }) => inDay! <= farm.today).slice(-1));
  if (due.length === 0) {
    throw new NotRecorded(words.ALL_DAYS_THERE);
  }
  return due.map((move) => typing(farm, move, 'movedIn', date(move.inDay!)));
}

export function dayTyped({ day = '' }: Happened): Day {
  const read = dayFromIso(day);
  if (read === undefined) throw new NotRecorded('Give the day.', 'day');
  return read;
}

export function cardOf({ cards }: FarmNow, { group = '' }: Happened): Card {
  const card = cards.find((one) => nameKey(one.group) === nameKey(group));
  if (card) return card;
  throw new NotRecorded(words.groupUnknown(group), 'group');
}

/** The open move that is meant. */
function moveOf({ group, moves, open }: Card, { move }: Happened): OldRow {
  const first = open[0];
  if (!first) throw new NotRecorded(words.noMove(group), 'move');
  const found = moves.slice(moves.indexOf(first)).find(({ id }) => id === move);
  if (!found) throw new NotRecorded('Choose the move.', 'move');
  if (found.movedIn === undefined) return found;
  throw new NotRecorded(words.hasDay(moveName(found)), 'move');
}

export function listedPaddock({ lists }: FarmNow, name = ''): ReadPaddock {
  const listed = lists.paddocks.find((one) => nameKey(one.name) === nameKey(name));
  if (listed) return listed;
  throw new NotRecorded(words.notInPaddocks(name), 'paddock');
}

function refuseDay({ settings }: FarmNow, card: Card, planned: OldRow | undefined, day: Day): void {
  const { group, at, isRecorded, moves, open } = card;
  if (at && isRecorded && day <= at.inDay!) {
    const came = isoFromDay(at.inDay!);
    throw new NotRecorded(words.dayAfter(group, at.paddock, came, isoFromDay(day)), 'day');
  }
  if (!planned) return;
  const between = open.find((move) => moves.indexOf(move) < moves.indexOf(planned) && move.inDay! >= day);
  if (between) {
    throw new NotRecorded(words.comesBefore(moveName(between)), 'move');
  }
  const fault = movedInFault({ ...planned, movedIn: day }, [], settings.rules);
  if (fault) throw new NotRecorded(words.dayMustBe(fault, isoFromDay(day)), 'day');
}

function refuseTaken({ cards }: FarmNow, own: Card, paddock: string, day: Day): void {
  for (const card of cards) {
    const { group, at, hasLeft, isRecorded } = card;
    if (card === own || !at || nameKey(at.paddock) !== nameKey(paddock)) continue;
    if (at.inDay! > day || (hasLeft && at.out! <= day)) continue;
    const since = dayWords(at.inDay!);
    throw new NotRecorded(words.standsAlready(group, at.paddock, since, isRecorded), 'paddock');
  }
}

function moved(farm: FarmNow, planned: OldRow, paddock: string, day: Day): Typing[] {
  const isOther = nameKey(paddock) !== nameKey(planned.paddock);
  return [
    ...(isOther ? [typing(farm, planned, 'paddock', text(paddock))] : []),
    typing(farm, planned, 'movedIn', date(day)),
  ];
}

/** A row of its own, in the blank one under the moves. */
function unplanned(farm: FarmNow, { group }: Card, paddock: string, day: Day): Typing[] {
  const { block } = farm.old;
  const { info } = block;
  const row = info.row + rowNamed(block, SPACE);
  const tab = farm.book.tabs.find(({ name }) => name === info.tab)!;
  const taken = COLUMNS.findIndex((_, c) => isFilled(tab, row - 1, info.column - 1 + c));
  if (row < info.row || taken >= 0) {
    throw new NotRecorded(words.NO_FREE_ROW, 'move');
  }
  const move = { group, paddock, inDay: day, sheetRow: row };
  return (['group', 'paddock', 'movedIn'] as const).map((key) =>
    typing(farm, move, key, key === 'movedIn' ? date(day) : text(move[key])),
  );
}

type Move = Pick<OldRow, 'group' | 'paddock' | 'inDay' | 'sheetRow'>;

function typing(farm: FarmNow, move: Move, key: ColumnKey, after: BlockCell): Typing {
  const cell = rotationCell(farm.old, move.sheetRow, key, after);
  const { label } = COLUMNS.find((column) => column.key === key)!;
  if (cell) return { what: `${label} of ${moveName(move)}`, cell };
  const { tab, row: top, column: left } = farm.old.block.info;
  const table = cellOnTab(tab, top, left);
  throw new NotRecorded(words.columnGone(table, label));
}

/** A share of one, from percent. */
function coverOf({ book }: FarmNow, typed: string): number {
  const read = readTyped(typed, decimalComma(book.overview.locale));
  const value = 'value' in read && typeof read.value === 'number' ? read.value : Number.NaN;
  const share = typed.trim().endsWith('%') ? value : value / 100;
  const isClear = typed.trim().endsWith('%') || value === 0 || value > 1;
  if (isClear && share >= 0 && share <= 1) return share;
  throw new NotRecorded(words.coverMust(typed || 'nothing'), 'cover');
}
