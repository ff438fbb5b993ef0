import { markAt } from '../block/align-columns';
import { cellOnTab } from '../block/cell-on-tab';
import { isRecordId } from '../block/compose-block';
import { oncePer } from '../block/once-per';
import type { BlockContent } from '../block/read-block';
import type { WireCell } from '../contract';
import { type Day, isoFromDay } from '../core/calendar/day';
import { describeWire, nameKey } from '../lists/read-list-cell';
import { type Quantity, toInside, type UnitSystem } from '../units/units';
import { COLUMNS, type ColumnKey } from './columns';
import { type LookedUp, mostStayDays, type OldRotation, type OldRow, type TableProblem } from './model';
import { columnsOf, HEADINGS, isTypedAt, rowNamed, rowsOfMoves } from './move-rows';
import { type MovedInSeason, movedInFault } from './moved-in-fault';
import { cellWords, ownDay, ownNumber, wholeDays } from './own-cell';
import { readSettings } from './read-settings';
import { isMove, rememberedRotation } from './remembered-rotation';
import { isSkipped, SKIPPED } from './skipped';
import * as words from './words';

/** The block with what is needed to find things in it. */
interface Reading {
  readonly block: BlockContent;
  readonly system: UnitSystem;
  readonly mostDays: number;
  readonly columns: ReadonlyMap<ColumnKey, number>;
  readonly problems: TableProblem[];
}

/**
 * What the planner and others need of a rotation block as it stands: settings, and the moves by their ids, wherever
 * the grower has sorted, inserted or deleted rows and columns. Problems name their cells; while there are any, nothing
 * should be rebuilt. What else was typed is the merge's business.
 */
export const readRotation = oncePer((standing: BlockContent): OldRotation => {
  const block = rememberedRotation(standing);
  if (!block.memory) return { settings: undefined, rows: [], skipped: [], problems: [noHeadings(block)] };
  const { settings, problems: settingProblems } = readSettings(block);
  const problems = [...settingProblems];
  const system = settings?.unitSystem ?? 'US';
  const mostDays = settings ? mostStayDays(settings.rules) : Infinity;
  const reading: Reading = { block, system, mostDays, columns: columnsOf(block), problems };
  const skipped: OldRow[] = [];
  const rows = rowsOfMoves(block).flatMap((r): OldRow[] => {
    const cell = (key: ColumnKey): WireCell => valueAt(reading, r, key);
    if (isRecordId(block.memory?.rows[r]?.id) && isMove(cell)) {
      const row = readRow(reading, r);
      if (!isSkipped(cellWords(cell('movedIn')))) return [row];
      skipped.push(row);
    } else tellHalfMove(reading, r);
    return [];
  });
  if (settings) tellMovedInFaults(reading, rows, settings.rules);
  const headRows = rowNamed(block, HEADINGS);
  return { settings, rows, skipped, ...(headRows >= 0 && { headRows }), problems };
});

function noHeadings({ info }: BlockContent): TableProblem {
  const cell = cellOnTab(info.tab, info.row, info.column);
  return { cell, sentence: words.noHeadings(cell) };
}

function valueAt({ block, columns }: Reading, r: number, key: ColumnKey): WireCell {
  const column = columns.get(key);
  return column === undefined ? '' : (block.values[r]?.[column] ?? '');
}

/** A row with only one name, and a day moved in. */
function tellHalfMove(reading: Reading, r: number): void {
  const isBlank = (key: ColumnKey): boolean => cellWords(valueAt(reading, r, key)) === '';
  if (isBlank('movedIn') || isBlank('group') === isBlank('paddock')) return;
  const key = isBlank('group') ? 'group' : 'paddock';
  const cell = cellName(reading, r, key);
  const sentence = words.mustBeGiven(cell, key);
  reading.problems.push({ cell, sentence });
}

function cellName({ block: { info }, columns }: Reading, r: number, key: ColumnKey): string {
  return cellOnTab(info.tab, info.row + r, info.column + (columns.get(key) ?? 0));
}

function readRow(reading: Reading, r: number): OldRow {
  const { block, columns, system, mostDays } = reading;
  const memory = block.memory!.rows[r]!;
  const plain = (key: ColumnKey): number | undefined => ownNumber(valueAt(reading, r, key));
  const inside = (key: ColumnKey, quantity: Quantity): number | undefined => {
    const value = plain(key);
    return value === undefined ? undefined : toInside(value, quantity, system);
  };
  const day = (key: ColumnKey): Day | undefined => realDay(ownDay(valueAt(reading, r, key)));
  const isTyped = (key: ColumnKey): boolean =>
    columns.has(key) && isTypedAt(block, r, columns.get(key)!, markAt(block, r, columns.get(key)!));
  const daysCell = valueAt(reading, r, 'days');
  const days = wholeDays(daysCell, mostDays);
  const stands = COLUMNS.flatMap(({ key }) => (isTyped(key) ? [key] : []));
  const typed = stands.filter((key) => key !== 'days' || days !== undefined);
  const formulaIn = (key: ColumnKey): string => block.formulas[r]?.[columns.get(key) ?? -1] ?? '';
  // A move that was past when the table was built has a day, and no formula, under Planned in.
  const isLive = formulaIn('plannedIn') !== '';
  // Days since a weighing that is written into the formula as a day are looked up nowhere.
  const isLookup = (key: ColumnKey): boolean => formulaIn(key).includes('!');
  const plannedIn = day('plannedIn');
  const movedIn = typedDay(reading, r);
  const inDay = movedIn ?? plannedIn;
  const dueOut = day('dueOut');
  const row = {
    plannedIn,
    movedIn,
    days: days ?? (inDay === undefined || dueOut === undefined ? undefined : wholeDays(dueOut - inDay)),
    badDays: stands.length > typed.length ? describeWire(daysCell) : undefined,
    inDay,
    out: day('out'),
    head: plain('head'),
    meanHead: plain('meanHead'),
    mostHead: plain('mostHead'),
    startWeightKg: inside('startWeight', 'mass'),
    growthDays: plain('growthDays'),
    dailyGainKg: inside('dailyGain', 'massPerDay'),
    areaSquareMeters: inside('area', 'area'),
    openFrom: day('openFrom'),
    openUntil: day('openUntil'),
    shutFrom: day('shutFrom'),
    shutUntil: day('shutUntil'),
    lastUsed: day('lastUsed'),
    restDueDays: plain('restDue'),
    ...coverIn(valueAt(reading, r, 'cover')),
  };
  return {
    sheetRow: block.info.row + r,
    id: memory.id,
    group: cellText(valueAt(reading, r, 'group')),
    paddock: cellText(valueAt(reading, r, 'paddock')),
    ...given(row),
    lookups: isLive ? FIGURES.filter((key) => isLookup(key) && !typed.includes(key)) : [],
    ...(isLive && { isLive }),
    typed,
  };
}

const FIGURES: readonly LookedUp[] = ['head', 'startWeight', 'growthDays', 'dailyGain', 'area'];

/** Cover left is a share of one. */
function coverIn(cell: WireCell): Pick<OldRow, 'cover' | 'badCover'> {
  if (cellWords(cell) === '') return {};
  const cover = ownNumber(cell);
  return cover !== undefined && cover >= 0 && cover <= 1 ? { cover } : { badCover: describeWire(cell) };
}

/** A name as it stands, white space included. */
function cellText(value: WireCell): string {
  return typeof value === 'string' ? value : cellWords(value);
}

/** Day 0 of spreadsheets stands for "none". */
const NO_DAY = ownDay({ d: '1899-12-30' });

function realDay(day: Day | undefined): Day | undefined {
  return day === NO_DAY ? undefined : day;
}

type Given<T> = { [K in keyof T]?: Exclude<T[K], undefined> };

function given<T extends object>(values: T): Given<T> {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Given<T>;
}

function typedDay(reading: Reading, r: number): Day | undefined {
  const value = valueAt(reading, r, 'movedIn');
  if (cellWords(value) === '' || isSkipped(cellWords(value))) return undefined;
  const day = ownDay(value);
  if (day !== undefined) return day;
  const cell = cellName(reading, r, 'movedIn');
  reading.problems.push({
    cell,
    sentence: words.badMovedIn(cell, SKIPPED, describeWire(value)),
  });
  return undefined;
}

/** Days moved in that cannot be meant; a wrong one is not held against the moves below it. */
function tellMovedInFaults(reading: Reading, rows: readonly OldRow[], season: MovedInSeason): void {
  const good = new Map<string, OldRow[]>();
  for (const row of rows) {
    const key = nameKey(row.group);
    const above = good.get(key) ?? [];
    const mustBe = movedInFault(row, above, season);
    if (mustBe === undefined) {
      above.push(row);
      good.set(key, above);
      continue;
    }
    const cell = cellName(reading, row.sheetRow - reading.block.info.row, 'movedIn');
    const got = isoFromDay(row.movedIn!);
    reading.problems.push({ cell, sentence: words.movedInMustBe(cell, mustBe, got) });
  }
}
