import { columnLetters } from '../block/a1';
import { cellOnTab } from '../block/cell-on-tab';
import type { TabContent } from '../contract';
import { type Day, isoFromDay } from '../core/calendar/day';
import type { UnitSystem } from '../units/units';
import { headingsAt } from './headings-at';
import { matchHeading, plainWords } from './match-heading';
import { FIELD_LABELS, type ListProblem, PADDOCK_FIELDS, type PaddockList, type ReadPaddock } from './model';
import { readAdjoining } from './read-adjoining';
import {
  cellOf,
  type DateHabits,
  hasCell,
  isDay,
  isErrorWire,
  nameOf,
  placeOf,
  type RowReader,
  readAmount,
  readDay,
  readName,
  refuse,
  shownAt,
} from './read-list-cell';
import { type LeftOut, readRows } from './read-rows';
import { closingRemarkDay, openingRemarkDay } from './remark-day';
import { fold, textDay } from './text-day';
import { typedTotalNotes } from './typed-total';

export interface PaddocksRead {
  readonly paddocks: readonly ReadPaddock[];
  readonly problems: readonly ListProblem[];
  /** What the grower should know about the reading although nothing is wrong. */
  readonly notes: readonly string[];
  /** Totals rows that were passed over. */
  readonly leftOut: readonly LeftOut[];
  /** Days in remarks that may be meant as "open from": the column that the grower may choose for it, and a sentence. */
  readonly remarks: readonly { readonly column: number; readonly sentence: string }[];
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
  const { items, readers, ...told } = readRows(tab, list, { system, comma, dates }, readPaddock);
  const adjoins = readAdjoining(items, readers);
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
  return {
    paddocks,
    ...told,
    remarks,
    notes: [
      ...told.notes,
      ...remarks.map(({ sentence }) => sentence),
      ...closings,
      ...readers.flatMap(letNotes),
      ...typedTotalNotes(items, areas, readers),
    ],
  };
}

function readPaddock(reader: RowReader): ReadPaddock | undefined {
  const name = readName(reader);
  const areaSquareMeters = readArea(reader);
  const openFrom = optional(reader, 'openFrom', readOpening);
  const openUntil = optional(reader, 'openUntil', readClosing);
  if (openFrom !== undefined && openUntil !== undefined && openUntil < openFrom) {
    refuse(reader, 'openUntil', 'not be before the day it opens');
  }
  const lastUsed = optional(reader, 'lastUsed', readDayOrWords);
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
  return isOfDays || isDay(reader, field) ? readDayOrWords(reader, field) : undefined;
}

/** Words such as "pigs in there" are no day and stop nothing: they are told. What means a day, an error or "closed" is refused. */
function readDayOrWords(reader: RowReader, field: 'openFrom' | 'lastUsed'): Day | undefined {
  const cell = cellOf(reader, field);
  const isSlip = typeof cell !== 'string' || isErrorWire(cell) || /\d/.test(cell) || namesMonth(cell);
  if (isSlip || CLOSED.test(plainWords(cell))) return readDay(reader, field);
  const { row, column } = placeOf(reader, field)!;
  reader.notes.push(
    `${cellOnTab(reader.tab.name, row, column)}: “${cell.trim()}” is no day: for “${nameOf(reader)}” no day is read as “${FIELD_LABELS[field]}”.`,
  );
  return undefined;
}

function namesMonth(text: string): boolean {
  return text.split(/\s+/).some((word) => textDay(word, undefined, 0) !== undefined);
}

/** The last day on which pigs may stand there; under "Closed from" the day before the one that is written. */
function readClosing(reader: RowReader, field: 'openUntil'): Day | undefined {
  const day = readDay(reader, field);
  const { row, column } = placeOf(reader, field)!;
  const heading = headingsAt(reader.tab, reader.list.headingRow).find((one) => one.column === column);
  if (day === undefined || !CLOSED.test(plainWords(heading?.text ?? ''))) return day;
  reader.notes.push(
    `${cellOnTab(reader.tab.name, row, column)}: “${nameOf(reader)}” is closed from ${isoFromDay(day)}: no pigs are planned there from then on, not even after it opens again.`,
  );
  return day - 1;
}

/** Beginnings of the words for "closed" among the headings. */
const CLOSED =
  /^(closed|shut|fenced off|gesperrt|ferme|cerrado|chiuso|fechado|gesloten|stangd|lukket|stengt)\b/;

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

/** Texts in the row behind the first column that is read, in columns that are read for nothing. */
function unreadTexts({ tab, list, row }: RowReader): { column: number; text: string }[] {
  const taken = Object.values(list.columns);
  const first = Math.min(...taken.filter((column) => column !== undefined));
  return (tab.values[row - 1] ?? []).flatMap((cell, c) =>
    typeof cell === 'string' && c + 1 > first && !taken.includes(c + 1)
      ? [{ column: c + 1, text: cell.trim() }]
      : [],
  );
}

/** Words of somebody else's use of a paddock, in the languages of the headings. Collected by judgement. */
const LET =
  /\b((leased|let|rented) (out|to)|verpachtet|vermietet|louee? a|en location|arrendad[oa]|alquilad[oa]|affittat[oa]|in affitto|alugad[oa]|verpacht|verhuurd|utarrenderad|uthyrd|udlejet|bortforpagtet|utleid|bortleid)\b/;

function letNotes(reader: RowReader): string[] {
  return unreadTexts(reader)
    .filter(({ text }) => LET.test(fold(text)))
    .map(
      ({ column, text }) =>
        `${cellOnTab(reader.tab.name, reader.row, column)}: “${text}”: “${nameOf(reader)}” is read like the others. If it is not yours to use, take it out of the list.`,
    );
}

function openingOffer(reader: RowReader, remark: Remark): PaddocksRead['remarks'][number] {
  const choose = `Then choose column ${columnLetters(remark.column)} for “Open from”.`;
  return { column: remark.column, sentence: `${asked(reader, remark, 'from')} ${choose}` };
}

function closingNote(reader: RowReader, remark: Remark): string {
  return `${asked(reader, remark, 'until')} Then write that day in a column “Open until”: remarks are not read for it.`;
}

function asked(reader: RowReader, { column, text, day }: Remark, which: 'from' | 'until'): string {
  return `${cellOnTab(reader.tab.name, reader.row, column)}: “${text}”: is “${nameOf(reader)}” open ${which} ${isoFromDay(day)}?`;
}

function optional<Field extends (typeof PADDOCK_FIELDS)[number]>(
  reader: RowReader,
  field: Field,
  read: (reader: RowReader, field: Field) => number | undefined,
): number | undefined {
  return hasCell(reader, field) ? read(reader, field) : undefined;
}

/** The area, or width × length where no area is typed. */
function readArea(reader: RowReader): number | undefined {
  const sides = hasCell(reader, 'width') || hasCell(reader, 'length');
  if (hasCell(reader, 'area') || !sides) {
    const field = placeOf(reader, 'area') ? 'area' : 'width';
    return readAmount(reader, field, { above: 0 });
  }
  const width = readAmount(reader, 'width', { above: 0 });
  const length = readAmount(reader, 'length', { above: 0 });
  return width === undefined || length === undefined ? undefined : width * length;
}
