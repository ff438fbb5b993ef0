import { columnLetters } from '../block/a1';
import { cellOnTab } from '../block/cell-on-tab';
import type { TabContent } from '../contract';
import { type Day, isoFromDay } from '../core/calendar/day';
import { OPEN_DAYS } from '../plan/open-days';
import { plainNumber } from '../refusals';
import { textNumber } from '../units/text-number';
import { farmUnit, LIST_UNITS, unitOfText } from '../units/unit-words';
import type { UnitSystem } from '../units/units';
import { isBreedingName } from './breeding-name';
import { headingUnit } from './heading-unit';
import { isBlankCell } from './list-rows';
import { matchHeading } from './match-heading';
import {
  type ListProblem,
  PADDOCK_FIELDS,
  type PaddockField,
  type PaddockList,
  type ReadPaddock,
} from './model';
import { OUT_OF_USE } from './out-of-use';
import { readAdjoining } from './read-adjoining';
import {
  cellOf,
  contradict,
  type DateHabits,
  hasCell,
  isDashed,
  isDay,
  nameOf,
  placeOf,
  type RowReader,
  readAmount,
  readDay,
  readName,
  shownAt,
} from './read-list-cell';
import { type LeftOut, readRows } from './read-rows';
import { closingRemarkDay, openingRemarkDay } from './remark-day';
import { SIDES } from './sides';
import { fold } from './text-day';
import { typedTotalNotes } from './typed-total';
import * as words from './words';

export interface PaddocksRead {
  readonly paddocks: readonly ReadPaddock[];
  readonly problems: readonly ListProblem[];
  /** What the grower should know about the reading although nothing is wrong. */
  readonly notes: readonly string[];
  /** Totals rows that were passed over. */
  readonly leftOut: readonly LeftOut[];
  /** Cells that count as blank, because nothing could be read in them. */
  readonly unread: readonly ListProblem[];
  /** Days in remarks that may be meant as "open from": the column that the grower may choose for it, and a sentence. */
  readonly remarks: readonly { readonly column: number; readonly sentence: string }[];
  /** Paddocks of which a word may mean that no pigs are to stand there, and a sentence: the grower is asked. */
  readonly unused: readonly (ListProblem & { readonly paddock: ReadPaddock })[];
}

/** Reads the grower's paddock list. All problems come at once, each with its cell; write nothing if there are any. */
export function readPaddocks(
  tab: TabContent,
  list: PaddockList,
  system: UnitSystem,
  /** Whether the spreadsheet's locale writes a decimal comma. */
  comma: boolean,
  dates: DateHabits = {},
): PaddocksRead {
  const { items, readers, itemless, ...told } = readRows(tab, list, { system, comma, dates }, readPaddock);
  const adjoins = readAdjoining(items, readers, itemless);
  const paddocks = items.map((paddock, i) => (adjoins[i] ? { ...paddock, adjoins: adjoins[i] } : paddock));
  const areas = items.map(({ areaSquareMeters }) => areaSquareMeters);
  const remarks =
    list.columns.openFrom === undefined
      ? readers.flatMap((reader) =>
          remarksIn(reader, openingRemarkDay).map((one) => openingOffer(reader, one)),
        )
      : [];
  const closings =
    list.columns.openUntil === undefined
      ? readers.flatMap((reader) =>
          remarksIn(reader, closingRemarkDay).map((one) => closingNote(reader, one)),
        )
      : [];
  const unused = readers.flatMap((reader, i) => outOfUse(reader, paddocks[i]!));
  const isSaid = (cell: string): boolean => unused.some((one) => one.cell === cell);
  return {
    paddocks,
    ...told,
    remarks,
    unused,
    notes: [
      ...told.notes,
      ...told.unread.filter(({ cell }) => !isSaid(cell)).map(({ sentence }) => sentence),
      ...remarks.map(({ sentence }) => sentence),
      ...closings,
      ...unused.map(({ sentence }) => sentence),
      ...typedTotalNotes(items, areas, readers),
    ],
  };
}

function readPaddock(reader: RowReader): ReadPaddock | undefined {
  const name = readName(reader);
  if (isDashed(reader, 'area')) return undefined;
  const areaSquareMeters = readArea(reader);
  const openFrom = optional(reader, 'openFrom', readOpening);
  const openUntil = optional(reader, 'openUntil', readDay);
  if (openFrom !== undefined && openUntil !== undefined && openUntil < openFrom) {
    contradict(reader, 'openUntil', 'not be before the day it opens');
  }
  const shut = readShut(reader);
  const lastUsed = optional(reader, 'lastUsed', readDay);
  const restDays = optional(reader, 'restDays', (r, field) => readAmount(r, field, { min: 0 }));
  const fenceLengthMeters = optional(reader, 'fenceLength', (r, field) => readAmount(r, field, { above: 0 }));
  if (name === undefined || areaSquareMeters === undefined) return undefined;
  const cells = Object.fromEntries(
    PADDOCK_FIELDS.flatMap((f) => (placeOf(reader, f) ? [[f, placeOf(reader, f)]] : [])),
  );
  return {
    name,
    areaSquareMeters,
    ...(openFrom !== undefined && { openFrom }),
    ...(openUntil !== undefined && { openUntil }),
    ...shut,
    ...(lastUsed !== undefined && { lastUsed }),
    ...(restDays !== undefined && { restDays }),
    ...(fenceLengthMeters !== undefined && { fenceLengthMeters }),
    cells,
  };
}

/** A day, or one in a remark where the column is one of remarks. */
function readOpening(reader: RowReader, field: 'openFrom'): Day | undefined {
  const { tab, list, dates } = reader;
  const cell = cellOf(reader, field);
  const day = typeof cell === 'string' ? openingRemarkDay(cell, dates.order, dates.today) : undefined;
  if (day !== undefined) {
    reader.readings.push(`${shownAt(reader, field)} as ${isoFromDay(day)}`);
    return day;
  }
  const heading = String(tab.values[list.headingRow - 1]?.[(list.columns[field] ?? 0) - 1] ?? '');
  const isOfDays = matchHeading(heading).some((match) => match.field === field);
  return isOfDays || isDay(reader, field) ? readDay(reader, field) : undefined;
}

/** The time in which it is shut, told. */
function readShut(reader: RowReader): Pick<ReadPaddock, 'shutFrom' | 'shutUntil'> {
  const shutFrom = optional(reader, 'shutFrom', readDay);
  const shutUntil = optional(reader, 'shutUntil', readDay);
  if (shutFrom === undefined && shutUntil === undefined) return {};
  if (shutFrom !== undefined && shutUntil !== undefined && shutUntil < shutFrom)
    contradict(reader, 'shutUntil', 'not be before the day it is shut');
  const [from, until] = [shutFrom, shutUntil].map((day) => (day === undefined ? undefined : isoFromDay(day)));
  const { row, column } = placeOf(reader, shutFrom === undefined ? 'shutUntil' : 'shutFrom')!;
  reader.notes.push(words.isShut(cellOnTab(reader.tab.name, row, column), nameOf(reader), from, until));
  return { ...(shutFrom !== undefined && { shutFrom }), ...(shutUntil !== undefined && { shutUntil }) };
}

interface Remark {
  readonly column: number;
  readonly text: string;
  readonly day: Day;
}

/** Remarks with a day in columns that are read for nothing. */
function remarksIn(reader: RowReader, dayOf: typeof openingRemarkDay): Remark[] {
  const { order, today } = reader.dates;
  return unreadTexts(reader).flatMap((one) => {
    const day = dayOf(one.text, order, today);
    return day === undefined ? [] : [{ ...one, day }];
  });
}

/** Texts in the row in columns that are read for nothing, from the first that is headed side by side with the list. */
function unreadTexts({ tab, list, row }: RowReader): { column: number; text: string }[] {
  const taken = Object.values(list.columns);
  const headings = tab.values[list.headingRow - 1] ?? [];
  let first = Math.min(...taken.filter((column) => column !== undefined));
  while (first > 1 && !isBlankCell(headings[first - 2])) first -= 1;
  return (tab.values[row - 1] ?? []).flatMap((cell, c) =>
    typeof cell === 'string' && c + 1 >= first && !taken.includes(c + 1)
      ? [{ column: c + 1, text: cell.trim() }]
      : [],
  );
}

/** Words for "open from" and the like that are no day, and words anywhere that may mean that no pigs are to stand there. */
function outOfUse(reader: RowReader, paddock: ReadPaddock): PaddocksRead['unused'] {
  if (paddock.shutFrom !== undefined || paddock.shutUntil !== undefined) return [];
  const { order, today } = reader.dates;
  const isUnread = (column: number): boolean =>
    reader.unread.some(({ cell }) => cell === cellOnTab(reader.tab.name, reader.row, column));
  const days = OPEN_DAYS.flatMap((field) => textsIn(reader, field)).filter(({ column }) => isUnread(column));
  const remarks = [...unreadTexts(reader), ...textsIn(reader, 'lastUsed')].filter(
    ({ text }) =>
      (OUT_OF_USE.test(fold(text)) || isBreedingName(text)) &&
      openingRemarkDay(text, order, today) === undefined &&
      closingRemarkDay(text, order, today) === undefined,
  );
  const [said] = [...days, ...remarks];
  if (!said) return [];
  const cell = cellOnTab(reader.tab.name, reader.row, said.column);
  const sentence = words.readLikeOthers(cell, said.text, nameOf(reader));
  return [{ paddock, sentence, cell }];
}

function textsIn(reader: RowReader, field: PaddockField): { column: number; text: string }[] {
  const [cell, place] = [cellOf(reader, field), placeOf(reader, field)];
  return typeof cell === 'string' && place ? [{ column: place.column, text: cell.trim() }] : [];
}

function openingOffer(reader: RowReader, remark: Remark): PaddocksRead['remarks'][number] {
  const sentence = words.chooseOpenFrom(asked(reader, remark, 'from'), columnLetters(remark.column));
  return { column: remark.column, sentence };
}

function closingNote(reader: RowReader, remark: Remark): string {
  return words.writeOpenUntil(asked(reader, remark, 'until'));
}

function asked(reader: RowReader, { column, text, day }: Remark, which: 'from' | 'until'): string {
  const cell = cellOnTab(reader.tab.name, reader.row, column);
  return words.isItOpen(cell, text, nameOf(reader), which, isoFromDay(day));
}

function optional<Field extends (typeof PADDOCK_FIELDS)[number]>(
  reader: RowReader,
  field: Field,
  read: (reader: RowReader, field: Field) => number | undefined,
): number | undefined {
  return hasCell(reader, field) ? read(reader, field) : undefined;
}

/** Two sides in one cell, "30 m x 40 m": their area, told. A unit behind the second is that of the first as well. */
function sidesIn({ tab, list, row, comma, system, readings }: RowReader, column: number): number | undefined {
  const cell = tab.values[row - 1]?.[column - 1];
  const [, ...texts] = (typeof cell === 'string' && SIDES.exec(cell.trim())) || [];
  const [one, other] = texts.map((text) => textNumber(text, comma));
  if (!one || !other || !('value' in one) || !('value' in other)) return undefined;
  const heading = String(tab.values[list.headingRow - 1]?.[column - 1] ?? '');
  const bare = headingUnit(heading, 'length') ?? farmUnit('length', system);
  const unit = other.behind === '' ? bare : unitOfText(other.behind, true);
  const first = one.behind === '' ? unit : unitOfText(one.behind, true);
  const units = [first, unit].map((name) => name && LIST_UNITS[name]);
  const [a, b] = units;
  if (a?.quantity !== 'length' || b?.quantity !== 'length') return undefined;
  const area = one.value * a.factor * other.value * b.factor;
  if (!(area > 0)) return undefined;
  readings.push(`${cellOnTab(tab.name, row, column)} “${cell}” as ${plainNumber(area, 4)} m²`);
  return area;
}

/** The area, or width × length where no area is typed, or else two sides in a column that is read for nothing. */
function readArea(reader: RowReader): number | undefined {
  const own = placeOf(reader, 'area');
  const typed = own && sidesIn(reader, own.column);
  if (typed !== undefined) return typed;
  if (hasCell(reader, 'area')) return readAmount(reader, 'area', { above: 0 });
  if (!hasCell(reader, 'width') && !hasCell(reader, 'length')) {
    const beside = unreadTexts(reader).filter(({ text }) => SIDES.test(text));
    const sides = beside.length === 1 ? sidesIn(reader, beside[0]!.column) : undefined;
    return sides ?? readAmount(reader, own ? 'area' : 'width', { above: 0 });
  }
  const width = readAmount(reader, 'width', { above: 0 });
  const length = readAmount(reader, 'length', { above: 0 });
  return width === undefined || length === undefined ? undefined : width * length;
}
