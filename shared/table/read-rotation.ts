import { cellOnTab } from '../block/cell-on-tab';
import { type BlockContent, cutBlock } from '../block/read-block';
import type { BlockInfo, TabContent, WireCell } from '../contract';
import { type Day, isoFromDay } from '../core/calendar/day';
import { describeWire, nameKey } from '../lists/read-list-cell';
import { type Quantity, toInside, type UnitSystem } from '../units/units';
import { COLUMNS, type ColumnKey, columnOfHeading } from './columns';
import { TITLE } from './head-rows';
import { keptAt } from './kept-at';
import { cellWords } from './kept-lines';
import { lookupsOf } from './lookups-of';
import type { ExtraColumn, OldRotation, OldRow, OwnParts, TableProblem } from './model';
import { type MovedInSeason, movedInFault } from './moved-in-fault';
import { ownDay, ownNumber, wholeDays } from './own-cell';
import { ownFormulas } from './own-formulas';
import { readSettings, settingCells, settingsTitleRow } from './read-settings';
import { tellRenamedHeadings } from './renamed-headings';
import { KEPT_TITLE } from './rotation-block';
import { standingColumns } from './standing-columns';
import { strayFormulas } from './stray-formulas';
import { headCells, keptAlready, strayCells, straysAround } from './strays';
import { tellBadFigures, tellDeadColumns, typedOver } from './typed-over-moves';

/** The block with what is needed to find things in it. */
export interface Reading {
  readonly block: BlockContent;
  readonly system: UnitSystem;
  /** Row of the headings and row after the last move, from 0 within the block. */
  readonly headingRow: number;
  readonly endRow: number;
  readonly columns: ReadonlyMap<ColumnKey, number>;
  readonly extras: readonly { readonly column: number; readonly extra: ExtraColumn }[];
  readonly problems: TableProblem[];
}

/**
 * What stands in a rotation block now, whatever the grower did there: rows sorted, inserted, deleted or left
 * half empty, columns added or deleted, things typed beside the table. Problems name their cells; while
 * there are any, nothing should be rebuilt.
 */
export function readRotation(tab: TabContent, info: BlockInfo): OldRotation {
  const block = cutBlock(tab, info);
  const { settings, problems: settingProblems } = readSettings(tab, info);
  const problems = [...settingProblems];
  const headingRow = findHeadings(block);
  const found = standingColumns(block, headingRow, endOfMoves(block, headingRow, settingsTitleRow(block)));
  if (headingRow < 0 || REQUIRED.some((key) => !found.columns.has(key))) {
    problems.push(missingHeadings(block));
    return { settings, rows: [], keptLines: [], strays: [], problems };
  }
  const titleRow = settingsTitleRow(block);
  const endRow = endOfMoves(block, headingRow, titleRow);
  const { columns, extras, order, ownHeadings } = found;
  const system = settings?.unitSystem ?? 'US';
  const reading: Reading = { block, system, headingRow, endRow, columns, extras, problems };
  const rows: OldRow[] = [];
  const strays: string[] = [];
  const asTyped = {
    over: typedOver(reading, settings?.rules.rest),
    formulas: ownFormulas(reading),
    lookups: lookupsOf(reading),
  };
  for (let r = headingRow + 1; r < endRow; r++) {
    if (isMove(reading, r)) rows.push(readRow(reading, r, asTyped));
    else strays.push(...strayCells(reading, r));
  }
  const moves = rows.map(({ sheetRow }) => sheetRow - info.row);
  if (settings) tellMovedInFaults(reading, rows, settings.rules);
  tellDeadColumns(reading, moves);
  tellBadFigures(reading, moves);
  // Under another heading our own formulas would look like strays.
  if (!tellRenamedHeadings(reading)) strays.push(...strayFormulas(reading, moves, titleRow));
  const title = ownTitle(block);
  const own: OwnParts = {
    extraColumns: extras.map(({ extra }) => extra),
    columns: order,
    ...(title !== undefined && { title }),
    ...(ownHeadings.size > 0 && { headings: ownHeadings }),
    headRows: headingRow,
    headCells: headCells(block, headingRow),
    settingCells: settingCells(block),
  };
  strays.push(...straysAround(reading, endRow, titleRow));
  return { settings, rows, own, keptLines: keptAlready(block, endRow), strays, problems };
}

/** The title, where the grower typed another one. */
function ownTitle({ values }: BlockContent): string | undefined {
  const title = values[0]?.[0] ?? '';
  const words = typeof title === 'string' ? title : cellWords(title);
  return words.trim() !== '' && !TITLE.test(words) ? words : undefined;
}

const REQUIRED: readonly ColumnKey[] = ['group', 'paddock', 'plannedIn', 'movedIn', 'days'];

/** The row with the most headings of ours; −1 where none has enough of them. One or two may have been typed over. */
function findHeadings({ values }: BlockContent): number {
  const counts = values.map(
    (row) => COLUMNS.filter(({ key }) => row.some((cell) => means(cell, key))).length,
  );
  const most = Math.max(0, ...counts);
  return most < REQUIRED.length ? -1 : counts.indexOf(most);
}

/** Names the first cell that is no heading of ours in the row that has most of them. */
function missingHeadings({ info, values }: BlockContent): TableProblem {
  const missing = (row: readonly WireCell[]): ColumnKey[] =>
    REQUIRED.filter((key) => !row.some((cell) => means(cell, key)));
  const fewest = Math.min(...values.map((row) => missing(row).length));
  const at = values.findIndex((row) => missing(row).length === fewest);
  const row = values[at] ?? [];
  const strange = row.findIndex((cell) => !COLUMNS.some(({ key }) => means(cell, key)));
  const isFound = fewest < REQUIRED.length && strange >= 0;
  const cell = isFound
    ? cellOnTab(info.tab, info.row + at, info.column + strange)
    : cellOnTab(info.tab, info.row, info.column);
  const labels = missing(row).map((key) => `"${COLUMNS.find((column) => column.key === key)!.label}"`);
  return { cell, sentence: `${cell}: the table must have the headings ${labels.join(', ')} too, not found` };
}

function means(cell: WireCell, key: ColumnKey): boolean {
  return typeof cell === 'string' && columnOfHeading(cell) === key;
}

/** The first row after the moves: the kept lines or the settings, else the end of the block. */
function endOfMoves({ values }: BlockContent, headingRow: number, titleRow: number): number {
  const kept = values.findIndex((row, r) => r > headingRow && row.includes(KEPT_TITLE));
  const ends = [kept, titleRow].filter((row) => row > headingRow);
  return Math.min(values.length, ...ends);
}

function valueAt({ block, columns }: Reading, r: number, key: ColumnKey): WireCell {
  const column = columns.get(key);
  return column === undefined ? '' : (block.values[r]?.[column] ?? '');
}

/**
 * A move has a group, a paddock and anything that says when; a row with only one name is told when a day moved in is
 * typed there.
 */
function isMove(reading: Reading, r: number): boolean {
  const group = cellWords(valueAt(reading, r, 'group'));
  const paddock = cellWords(valueAt(reading, r, 'paddock'));
  const when: readonly ColumnKey[] = ['plannedIn', 'movedIn', 'days'];
  if (group !== '' && paddock !== '') return when.some((key) => valueAt(reading, r, key) !== '');
  if ((group !== '' || paddock !== '') && valueAt(reading, r, 'movedIn') !== '') {
    const key = group === '' ? 'group' : 'paddock';
    const cell = cellName(reading, r, key);
    reading.problems.push({
      cell,
      sentence: `${cell}: ${key} must be given where a day moved in is typed, got a blank`,
    });
  }
  return false;
}

function cellName({ block, columns }: Reading, r: number, key: ColumnKey): string {
  return cellOnTab(block.info.tab, block.info.row + r, block.info.column + (columns.get(key) ?? 0));
}

interface AsTyped {
  readonly over: (r: number) => OldRow['typedOver'];
  readonly formulas: (r: number) => OldRow['ownFormulas'];
  readonly lookups: (r: number) => OldRow['lookups'];
}

function readRow(reading: Reading, r: number, asTyped: AsTyped): OldRow {
  const { block, columns, system } = reading;
  const plain = (key: ColumnKey): number | undefined => ownNumber(valueAt(reading, r, key));
  const inside = (key: ColumnKey, quantity: Quantity): number | undefined => {
    const value = plain(key);
    return value === undefined ? undefined : toInside(value, quantity, system);
  };
  const day = (key: ColumnKey): Day | undefined => realDay(ownDay(valueAt(reading, r, key)));
  const plannedIn = day('plannedIn');
  const movedIn = typedDay(reading, r);
  const row = {
    plannedIn,
    movedIn,
    days: wholeDays(valueAt(reading, r, 'days')),
    inDay: movedIn ?? plannedIn,
    out: day('out'),
    head: plain('head'),
    startWeightKg: inside('startWeight', 'mass'),
    growthDays: plain('growthDays'),
    dailyGainKg: inside('dailyGain', 'massPerDay'),
    areaSquareMeters: inside('area', 'area'),
    openFrom: day('openFrom'),
    openUntil: day('openUntil'),
    lastUsed: day('lastUsed'),
    restDueDays: plain('restDue'),
  };
  return {
    sheetRow: reading.block.info.row + r,
    group: cellText(valueAt(reading, r, 'group')),
    paddock: cellText(valueAt(reading, r, 'paddock')),
    ...given(row),
    typedOver: asTyped.over(r),
    ownFormulas: asTyped.formulas(r),
    lookups: asTyped.lookups(r),
    cover: keptAt(block, r, columns.get('cover')),
    note: keptAt(block, r, columns.get('note')),
    extras: reading.extras.map(({ column }) => keptAt(block, r, column)),
  };
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
  if (cellWords(value) === '') return undefined;
  const day = ownDay(value);
  if (day !== undefined) return day;
  const cell = cellName(reading, r, 'movedIn');
  reading.problems.push({ cell, sentence: `${cell}: moved in must be a date, got ${describeWire(value)}` });
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
    reading.problems.push({ cell, sentence: `${cell}: moved in must be ${mustBe}, got ${got}` });
  }
}
