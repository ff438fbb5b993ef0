/** A whole messy workbook: where the lists stand, what stands around them, and what has to come of it. */
import fc from 'fast-check';
import type { StartCell, WorkbookOptions } from '../../src/headless';
import { seededNumbers } from '../plan/random-farm';
import { AREA_UNITS, type AreaUnit, MASS_UNITS, type MassUnit, type TrueFarm, trueFarm } from './messy-farm';
import { FAULTS, type Fault } from './messy-faults';
import { type Dice, groupColumns, layOut, type MadeList, paddockColumns } from './messy-list';

export interface MessyWorkbook {
  readonly farm: TrueFarm;
  readonly areaUnit: AreaUnit;
  readonly massUnit: MassUnit;
  readonly options: WorkbookOptions;
  readonly wrong: readonly WrongCell[];
  readonly place: { at: 'new-tab'; tab: string } | { at: 'area'; tab: string; row: number; column: number };
  /** The cell that stands in the way of the place, if any. */
  readonly inTheWay: string | undefined;
  readonly hiddenRows: readonly { tab: string; rows: readonly number[] }[];
  readonly notes: readonly { tab: string; a1: string; note: string }[];
  readonly filtered: { tab: string; a1: string } | undefined;
  /** Sets cell colours too; left out in most workbooks because it is most of the work of the preview. */
  readonly coloured: boolean;
}

/** A cell that is wrong, and what it is of. */
export interface WrongCell extends Pick<Fault, 'list' | 'column' | 'item'> {
  readonly tab: string;
  readonly a1: string;
}

const TAB_NAMES = ['Paddocks', 'Farm 2026', 'Anna, ground', 'Fläche', 'مراعي', '🐖', 'a!b', 'R1', '2026'];
const LOCALES = ['en_US', 'en_US', 'en_US', 'en_GB', 'de_DE', 'fr_FR', 'pt_BR'];
const ZONES = [
  'Etc/UTC',
  'America/New_York',
  'Pacific/Auckland',
  'Europe/Berlin',
  'Asia/Kolkata',
  'America/Sao_Paulo',
];
const SCRATCH: readonly (readonly StartCell[])[] = [
  ['Feed bills', 12.5, '=B1*2', { text: '=not a formula' }, { d: '2026-03-29' }],
  [{ text: '007' }, '=1/0', true, '', '="a"&"b"'],
  ['=SUM(B1:B1)', { text: '<script>' }, -0.1, 1e-9, 123456789012],
];

export const messyWorkbook: fc.Arbitrary<MessyWorkbook> = fc
  .record({
    farm: trueFarm,
    seed: fc.nat(2 ** 31 - 1),
    faults: fc.array(fc.record({ at: fc.nat(9999), item: fc.nat(499) }), { minLength: 1, maxLength: 3 }),
  })
  .map(({ farm, seed, faults }) => workbookOf(farm, seed, faults));

function workbookOf(
  farm: TrueFarm,
  seed: number,
  wishes: readonly { at: number; item: number }[],
): MessyWorkbook {
  const next = seededNumbers(seed);
  const dice: Dice = (choices) => choices[Math.floor(next() * choices.length)]!;
  const areaUnit = dice(Object.keys(AREA_UNITS) as AreaUnit[]);
  const massUnit = dice(Object.keys(MASS_UNITS) as MassUnit[]);
  const units = { area: areaUnit, mass: massUnit };
  const paddocks = paddockColumns(farm, units, dice);
  const groups = groupColumns(farm, units, dice);
  const isWrong = dice([true, false, false]);
  const faults = isWrong
    ? fitting(
        wishes,
        paddocks.map(({ key }) => key),
        groups.map(({ key }) => key),
        farm,
      )
    : [];
  const [tab, other] = [dice(TAB_NAMES.slice(0, 5)), dice(TAB_NAMES.slice(5))];
  const top = dice([0, 0, 1, 2, 4]);
  const left = dice([0, 0, 0, 1, 2]);
  const how = dice(['two tabs', 'side by side', 'below'] as const);
  const first = { row: top, column: left };
  const ground = layOut(
    paddocks,
    faults.filter(({ list }) => list === 'paddocks'),
    dice,
    first,
  );
  const second =
    how === 'two tabs'
      ? { row: dice([0, 1, 3]), column: 0 }
      : how === 'below'
        ? { row: top + ground.grid.length + dice([1, 2, 4]), column: left }
        : { row: top, column: left + ground.grid[0]!.length + dice([1, 2]) };
  const herd = layOut(
    groups,
    faults.filter(({ list }) => list === 'groups'),
    dice,
    second,
  );
  const herdTab = how === 'two tabs' ? other : tab;
  const grids: Record<string, StartCell[][]> = {
    [tab]: [],
    Scratch: SCRATCH.map((row) => [...row]),
    ...(how === 'two tabs' && { [other]: [] }),
  };
  paste(grids[tab]!, ground.grid, first);
  paste(grids[herdTab]!, herd.grid, second);
  const merges = titles(grids, tab, top, dice);
  const collides = dice([true, ...new Array<boolean>(9).fill(false)]);
  const place = dice(['tab', 'tab', 'area'] as const);
  const used = { rows: grids[tab]!.length, columns: Math.max(...grids[tab]!.map((row) => row.length)) };
  const corner = dice([
    { row: used.rows + dice([1, 2, 5]), column: dice([1, 3]) },
    { row: 1, column: used.columns + dice([1, 2]) },
  ]);
  const isArea = place === 'area' && corner.column + 28 <= 60;
  if (collides && isArea) put(grids[tab]!, corner.row + 2, corner.column + 3, { text: 'mine' });
  return {
    farm,
    areaUnit,
    massUnit,
    options: {
      tabs: grids,
      locale: dice(LOCALES),
      timeZone: dice(ZONES),
      scriptTimeZone: dice(ZONES),
      today: new Date((farm.rules.seasonStart + dice([-20, 0, 9])) * 86_400_000 + 43_200_000),
      ...(merges && { merges: { [tab]: [merges] } }),
    },
    wrong: faults.map((fault) =>
      wrongCell(
        fault,
        fault.list === 'paddocks'
          ? { tab, made: ground, first }
          : { tab: herdTab, made: herd, first: second },
      ),
    ),
    place: isArea
      ? { at: 'area', tab, ...corner }
      : { at: 'new-tab', tab: dice(['Rotation', 'Plan 2026', 'Moves & notes', 'نوبات']) },
    inTheWay: collides && isArea ? a1(corner.row + 2, corner.column + 3) : undefined,
    hiddenRows: dice([true, false, false])
      ? [{ tab, rows: ground.rowOf.filter((_, i) => i % 3 === 1).map((row) => first.row + row) }]
      : [],
    notes: dice([true, false])
      ? [{ tab, a1: a1(first.row + 2, first.column + 1), note: '=wet corner <b>' }]
      : [],
    filtered:
      how !== 'side by side' && merges === undefined && dice([true, false, false])
        ? {
            tab,
            a1: `${a1(first.row + 1, first.column + 1)}:${a1(first.row + ground.grid.length, first.column + ground.grid[0]!.length)}`,
          }
        : undefined,
    coloured: dice([true, ...new Array<boolean>(5).fill(false)]),
  };
}

/** The wished faults that this farm has a column for; one a cell. */
function fitting(
  wishes: readonly { at: number; item: number }[],
  paddocks: readonly string[],
  groups: readonly string[],
  farm: TrueFarm,
): Fault[] {
  const able = FAULTS.filter(({ list, column }) =>
    (list === 'paddocks' ? paddocks : groups).includes(column),
  );
  const cells = new Set<string>();
  return wishes.flatMap(({ at, item }) => {
    const fault = able[at % able.length]!;
    const size = fault.list === 'paddocks' ? farm.paddocks.length : farm.groups.length;
    const row = `${fault.list} ${item % size}`;
    if (cells.has(row)) return [];
    cells.add(row);
    return [{ ...fault, item: item % size }];
  });
}

function wrongCell(
  { list, column, item }: Fault,
  { tab, made, first }: { tab: string; made: MadeList; first: { row: number; column: number } },
): WrongCell {
  return {
    list,
    column,
    item,
    tab,
    a1: a1(first.row + made.rowOf[item % made.rowOf.length]! + 1, first.column + made.columnOf[column]! + 1),
  };
}

function paste(grid: StartCell[][], list: StartCell[][], at: { row: number; column: number }): void {
  for (const [r, row] of list.entries())
    for (const [c, cell] of row.entries()) put(grid, at.row + r + 1, at.column + c + 1, cell);
}

function put(grid: StartCell[][], row: number, column: number, cell: StartCell): void {
  while (grid.length < row) grid.push([]);
  const cells = grid[row - 1]!;
  while (cells.length < column) cells.push('');
  cells[column - 1] = cell;
}

/** A title above the list, merged over three columns now and then. */
function titles(
  grids: Record<string, StartCell[][]>,
  tab: string,
  top: number,
  dice: Dice,
): string | undefined {
  if (top === 0) return undefined;
  put(grids[tab]!, 1, 1, {
    text: dice(['Our ground', 'Paddocks and pigs 2026', 'Farm: paddock list', '']) || 'Farm',
  });
  return dice([true, false]) ? 'A1:C1' : undefined;
}

export function a1(row: number, column: number): string {
  const letters = (n: number): string =>
    n > 0 ? letters(Math.floor((n - 1) / 26)) + String.fromCharCode(65 + ((n - 1) % 26)) : '';
  return `${letters(column)}${row}`;
}
