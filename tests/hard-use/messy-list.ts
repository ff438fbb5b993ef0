/** One list as a grid of typed cells: headings in any order and case, units, text numbers, gaps, totals, remarks. */
import type { StartCell } from '../../src/headless';
import type { TrueFarm } from './messy-farm';
import type { Fault } from './messy-faults';
import { CASES, HEADINGS, OTHER_CELLS, OTHER_HEADINGS, UNIT_FORMS } from './messy-words';

/** A stream of choices, so that a whole sheet follows from one row of random numbers. */
export type Dice = <T>(choices: readonly T[]) => T;

export interface Column {
  readonly key: string;
  readonly heading: string;
  readonly cells: readonly StartCell[];
}

export interface Units {
  readonly area: string;
  readonly mass: string;
}

export interface MadeList {
  readonly grid: StartCell[][];
  /** Column of each key, row of each item, from 0 within the grid. */
  readonly columnOf: Readonly<Record<string, number>>;
  readonly rowOf: readonly number[];
}

export function isoOf(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}

export function paddockColumns(farm: TrueFarm, units: Units, dice: Dice): Column[] {
  const { paddocks } = farm;
  const dates = (key: 'openFrom' | 'openUntil' | 'lastUsed') =>
    paddocks.map((one) => dateCell(one[key], dice));
  return [
    column(
      'paddock',
      '',
      paddocks.map(({ name }) => nameCell(name)),
      dice,
    ),
    column(
      'area',
      units.area,
      paddocks.map(({ area }) => numberCell(area, units.area, dice)),
      dice,
    ),
    ...optional(column('openFrom', '', dates('openFrom'), dice)),
    ...optional(column('openUntil', '', dates('openUntil'), dice)),
    ...optional(column('lastUsed', '', dates('lastUsed'), dice)),
    ...optional(
      column(
        'rest',
        '',
        paddocks.map(({ rest }) => rest ?? ''),
        dice,
      ),
    ),
    ...optional(
      column(
        'adjoining',
        '',
        paddocks.map(({ adjoins }) =>
          adjoins ? { text: adjoins.map((at) => paddocks[at]!.name).join('; ') } : '',
        ),
        dice,
      ),
    ),
  ];
}

export function groupColumns({ groups }: TrueFarm, units: Units, dice: Dice): Column[] {
  const dates = (key: 'weighedOn' | 'from' | 'until') => groups.map((one) => dateCell(one[key], dice));
  return [
    column(
      'group',
      '',
      groups.map(({ name }) => nameCell(name)),
      dice,
    ),
    column(
      'head',
      '',
      groups.map(({ head }) => numberCell(head, '', dice)),
      dice,
    ),
    column(
      'weight',
      units.mass,
      groups.map(({ weight }) => numberCell(weight, units.mass, dice)),
      dice,
    ),
    column('weighedOn', '', dates('weighedOn'), dice),
    ...optional(
      column(
        'gain',
        units.mass,
        groups.map(({ gain }) => gain ?? ''),
        dice,
      ),
    ),
    ...optional(column('from', '', dates('from'), dice)),
    ...optional(column('until', '', dates('until'), dice)),
  ];
}

function column(key: keyof typeof HEADINGS, unit: string, cells: readonly StartCell[], dice: Dice): Column {
  const words = dice<string>(HEADINGS[key]);
  const heading = unit === '' ? words : dice(UNIT_FORMS)(words, unit);
  return { key, heading: dice(CASES)(heading), cells };
}

function optional(one: Column): Column[] {
  return one.cells.some((cell) => cell !== '') ? [one] : [];
}

/** A name that is only digits may as well be a number cell. */
function nameCell(name: string): StartCell {
  return { text: name };
}

function numberCell(value: number, unit: string, dice: Dice): StartCell {
  return dice<StartCell>([
    value,
    value,
    value,
    { text: String(value) },
    { text: ` ${value} ` },
    `=${value}`,
    { text: unit ? `${value} ${unit}` : String(value) },
  ]);
}

function dateCell(day: number | undefined, dice: Dice): StartCell {
  if (day === undefined) return '';
  return dice<StartCell>([{ d: isoOf(day) }, { d: isoOf(day) }, { d: isoOf(day) }, { text: isoOf(day) }]);
}

/** Puts the columns together in any order, with other columns, a blank column, blank rows, a totals row, a remark. */
export function layOut(
  columns: readonly Column[],
  faults: readonly Fault[],
  dice: Dice,
  first: { row: number; column: number },
): MadeList {
  const count = columns[0]!.cells.length;
  const others = shuffled(OTHER_HEADINGS, dice)
    .slice(0, dice([0, 0, 1, 2]))
    .map(
      (heading): Column => ({
        key: '',
        heading,
        cells: Array.from({ length: count }, () => otherCell(dice)),
      }),
    );
  const gap: Column[] = dice([true, false, false, false])
    ? [{ key: '', heading: '', cells: Array.from({ length: count }, () => '') }]
    : [];
  const ordered = shuffled([...columns, ...others, ...gap], dice);
  const columnOf = Object.fromEntries(ordered.flatMap(({ key }, c) => (key ? [[key, c]] : [])));
  const grid: StartCell[][] = [ordered.map(({ heading }) => (heading ? { text: heading } : ''))];
  const rowOf: number[] = [];
  for (let i = 0; i < count; i++) {
    if (dice([true, ...new Array<boolean>(7).fill(false)])) grid.push(ordered.map(() => ''));
    rowOf.push(grid.length);
    grid.push(ordered.map(({ cells }) => cells[i]!));
  }
  for (const { column: key, item, cell } of faults) grid[rowOf[item % count]!]![columnOf[key]!] = cell;
  grid.push(...ending(ordered, grid.length, first, dice));
  return { grid, columnOf, rowOf };
}

function otherCell(dice: Dice): StartCell {
  const cell = dice(OTHER_CELLS);
  return typeof cell === 'string' && !cell.startsWith('=') && cell !== '' ? { text: cell } : cell;
}

function shuffled<T>(items: readonly T[], dice: Dice): T[] {
  const left = [...items];
  return items.map(() => {
    const one = dice(left);
    left.splice(left.indexOf(one), 1);
    return one;
  });
}

/** Perhaps a total that adds up the column of amounts, perhaps a remark under it all. */
function ending(
  ordered: readonly Column[],
  rows: number,
  first: { row: number; column: number },
  dice: Dice,
): StartCell[][] {
  const name = ordered.findIndex(({ key }) => key === 'paddock' || key === 'group');
  const amount = ordered.findIndex(({ key }) => key === 'area' || key === 'head');
  const letter = String.fromCharCode(65 + first.column + amount);
  const sum = `=SUM(${letter}${first.row + 2}:${letter}${first.row + rows})`;
  const blank = (): StartCell[] => ordered.map(() => '');
  const total = ordered.map(
    (_, c): StartCell =>
      c === name ? { text: dice(['Total', 'TOTAL:', 'Total area', 'Sum']) } : c === amount ? sum : '',
  );
  const remark = ordered.map(
    (_, c): StartCell => (c === name ? { text: '* measured with the tape, not by the map' } : ''),
  );
  return dice<StartCell[][]>([
    [],
    [],
    [total],
    [blank(), total],
    [blank(), remark],
    [total, blank(), remark],
  ]);
}
