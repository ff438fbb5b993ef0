/** What is typed into the rotation table when a group has moved, or has not. */

import { cellOnTab } from '../../block/cell-on-tab';
import { date, number, text } from '../../block/cells';
import { isFilled } from '../../block/is-filled';
import type { BlockCell } from '../../contract';
import { type Day, dayFromIso, isoFromDay } from '../../core/calendar/day';
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

export function movedTyped(farm: FarmNow, happened: Happened): Typing[] {
  const card = cardOf(farm, happened);
  const day = dayTyped(happened);
  if (day > farm.today) {
    const must = `The day must be ${isoFromDay(farm.today)} or before, got ${isoFromDay(day)}`;
    throw new NotRecorded(`${must}: a move is recorded once it has happened.`, 'day');
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
    throw new NotRecorded(
      `${card.group} has not come in yet: the day on which it does stands in your group list.`,
      'move',
    );
  }
  const day = dayTyped(happened);
  const earliest = Math.max(farm.today, stay.inDay! + 1);
  if (day < earliest)
    throw new NotRecorded(
      `The new day must be ${isoFromDay(earliest)} or later, got ${isoFromDay(day)}.`,
      'day',
    );
  const { seasonEnd } = farm.settings.rules;
  if (day >= seasonEnd)
    throw new NotRecorded(
      `The season ends on ${isoFromDay(seasonEnd)}: the new day must be before it.`,
      'day',
    );
  const came = stay.movedIn === undefined ? [typing(farm, stay, 'movedIn', date(stay.inDay!))] : [];
  return [...came, typing(farm, stay, 'days', number(day - stay.inDay!, '0'))];
}

export function coverTyped(farm: FarmNow, happened: Happened): Typing[] {
  const { moves, at } = cardOf(farm, happened);
  const stay = moves.slice(0, at ? moves.indexOf(at) + 1 : 0).find(({ id }) => id === happened.move);
  if (!stay) throw new NotRecorded('Choose the stay that the cover was left by.', 'move');
  return [typing(farm, stay, 'cover', number(coverOf(farm, happened.cover ?? ''), '0%'))];
}

/** One cell a group: the moves before the last one that was due count as done once that has a day. */
export function asPlannedTyped(farm: FarmNow): Typing[] {
  const due = farm.cards.flatMap(({ open }) => open.filter(({ inDay }) => inDay! <= farm.today).slice(-1));
  if (due.length === 0) {
    throw new NotRecorded('Every move up to today has its day already: nothing is to be written.');
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
  throw new NotRecorded(`“${group}” is neither in the group list nor in the rotation table.`, 'group');
}

/** The open move that is meant. */
function moveOf({ group, moves, open }: Card, { move }: Happened): OldRow {
  const first = open[0];
  if (!first) throw new NotRecorded(`No move of ${group} is planned. Nothing was written.`, 'move');
  const found = moves.slice(moves.indexOf(first)).find(({ id }) => id === move);
  if (!found) throw new NotRecorded('Choose the move.', 'move');
  if (found.movedIn === undefined) return found;
  throw new NotRecorded(`${moveName(found)} has a day already.`, 'move');
}

export function listedPaddock({ lists }: FarmNow, name = ''): ReadPaddock {
  const listed = lists.paddocks.find((one) => nameKey(one.name) === nameKey(name));
  if (listed) return listed;
  throw new NotRecorded(`“${name}” is not in your paddock list.`, 'paddock');
}

function refuseDay({ settings }: FarmNow, card: Card, planned: OldRow | undefined, day: Day): void {
  const { group, at, isRecorded, moves, open } = card;
  if (at && isRecorded && day <= at.inDay!) {
    const came = `${group} came to ${at.paddock} on ${isoFromDay(at.inDay!)}`;
    throw new NotRecorded(`${came}: the day must be after that, got ${isoFromDay(day)}.`, 'day');
  }
  if (!planned) return;
  const between = open.find((move) => moves.indexOf(move) < moves.indexOf(planned) && move.inDay! >= day);
  if (between) {
    throw new NotRecorded(
      `${moveName(between)} comes before it. If that move was left out, record first that it was skipped.`,
      'move',
    );
  }
  const fault = movedInFault({ ...planned, movedIn: day }, [], settings.rules);
  if (fault) throw new NotRecorded(`The day must be ${fault}, got ${isoFromDay(day)}.`, 'day');
}

function refuseTaken({ cards }: FarmNow, own: Card, paddock: string, day: Day): void {
  for (const card of cards) {
    const { group, at, hasLeft, isRecorded } = card;
    if (card === own || !at || nameKey(at.paddock) !== nameKey(paddock)) continue;
    if (at.inDay! > day || (hasLeft && at.out! <= day)) continue;
    const how = isRecorded ? '' : ' as planned, no day typed';
    throw new NotRecorded(
      `${group} stands in ${at.paddock} since ${isoFromDay(at.inDay!)}${how}. Two groups cannot stand in one paddock: record first where ${group} went.`,
      'paddock',
    );
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
    throw new NotRecorded(
      'The row under the moves is not free: write the table anew first, under “Plan the moves”.',
      'move',
    );
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
  throw new NotRecorded(`The rotation table at ${table} has no column “${label}” any more.`);
}

/** A share of one, from percent. */
function coverOf({ book }: FarmNow, typed: string): number {
  const read = readTyped(typed, decimalComma(book.overview.locale));
  const value = 'value' in read && typeof read.value === 'number' ? read.value : Number.NaN;
  const share = typed.trim().endsWith('%') ? value : value / 100;
  const isClear = typed.trim().endsWith('%') || value === 0 || value > 1;
  if (isClear && share >= 0 && share <= 1) return share;
  throw new NotRecorded(`Cover left must be in percent, from 0 to 100, got ${typed || 'nothing'}.`, 'cover');
}
