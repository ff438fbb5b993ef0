/** Generated sheets as growers keep them: every list found and read exactly, whatever stands around it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TabContent, WireCell } from '../../shared/contract';
import { isoFromDay } from '../../shared/core/calendar/day';
import { findLists } from '../../shared/lists/find-lists';
import { GROUP_WORDS, PADDOCK_WORDS } from '../../shared/lists/headings';
import type { GroupList, PaddockList } from '../../shared/lists/model';
import { readGroups } from '../../shared/lists/read-groups';
import { readPaddocks } from '../../shared/lists/read-paddocks';

type Grid = WireCell[][];

const ODD_NAMES = [
  '=SUM(A1)',
  '+1',
  '-2',
  '@home',
  "O'Brien's",
  '"quoted"',
  '🐖 wallow',
  'two\nlines',
  '<b>x</b>',
  '12',
  '>5',
  'a*b?',
  '~',
  'Straße',
  'مرعى',
  'Total eclipse',
  'Summer',
  'No 1, by the creek',
];
const name = fc.oneof(
  fc.constantFrom(...ODD_NAMES),
  fc.string({ minLength: 1, maxLength: 12 }).filter((text) => text.trim() !== ''),
);
/** Words that leave the kind of list open are taken only where something else tells it. */
const heading = (words: readonly string[]) =>
  fc
    .tuple(fc.constantFrom(...words), fc.constantFrom(lower, upper, title, padded))
    .map(([word, cased]) => cased(word));
const lower = (text: string): string => text;
const upper = (text: string): string => text.toUpperCase();
const title = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const padded = (text: string): string => ` ${text} `;

/** Acre, hectare, square metre; pound, kilogram: definitions (international yard and pound, 1959). */
const AREA_UNITS = [
  ['ac', 4046.8564224],
  ['acres', 4046.8564224],
  ['ha', 10_000],
  ['m²', 1],
  ['sq m', 1],
] as const;
const MASS_UNITS = [
  ['lb', 0.45359237],
  ['lbs', 0.45359237],
  ['KG', 1],
] as const;
const day = fc.integer({ min: 18_000, max: 24_000 });
const dateCell = (value: number, asText: boolean): WireCell => {
  const iso = isoFromDay(value);
  return asText ? iso : { d: iso };
};
const typedNumber = (value: number, asText: boolean): WireCell => (asText ? ` ${value}` : value);

interface MadeList {
  readonly grid: Grid;
  readonly expected: readonly Record<string, unknown>[];
}

/** A block of cells from columns in any order, with blank rows and perhaps a totals row. */
function assemble(
  columns: { head: string; cells: WireCell[] }[],
  order: number[],
  blanks: boolean[],
  total: boolean,
): Grid {
  const ordered = order.map((at) => columns[at]!);
  const rows = columns[0]!.cells.flatMap((_, i): Grid => {
    const cells = ordered.map((column) => column.cells[i]!);
    return blanks[i] ? [cells.map(() => ''), cells] : [cells];
  });
  const totals: Grid = total
    ? [ordered.map((column) => (column === columns[0] ? 'TOTAL:' : column === columns[1] ? 99 : ''))]
    : [];
  return [ordered.map((column) => column.head), ...rows, ...totals];
}

const items = <Item>(item: fc.Arbitrary<Item & { name: string }>) =>
  fc.uniqueArray(item, {
    minLength: 2,
    maxLength: 12,
    selector: (one) => one.name.trim().replace(/\s+/g, ' ').toLowerCase(),
  });
const order = (count: number) =>
  fc.shuffledSubarray(
    Array.from({ length: count }, (_, i) => i),
    { minLength: count },
  );
const layout = fc.record({
  blanks: fc.array(fc.boolean(), { minLength: 12, maxLength: 12 }),
  total: fc.boolean(),
});

const paddockList: fc.Arbitrary<MadeList> = fc
  .tuple(
    items(
      fc.record({
        name,
        area: fc.integer({ min: 1, max: 9999 }),
        asText: fc.boolean(),
        used: fc.option(day),
        rest: fc.option(fc.integer({ min: 0, max: 200 })),
      }),
    ),
    fc.tuple(
      heading(PADDOCK_WORDS.name.filter((word) => word !== 'id')),
      fc.constantFrom(...AREA_UNITS),
      heading(['area', 'size', 'paddock area']),
      heading(PADDOCK_WORDS.lastUsed),
      heading(PADDOCK_WORDS.restDays),
    ),
    order(5),
    layout,
  )
  .map(([rows, [nameHead, [unit, factor], areaHead, usedHead, restHead], columns, { blanks, total }]) => ({
    grid: assemble(
      [
        { head: nameHead, cells: rows.map((row) => row.name) },
        { head: `${areaHead} (${unit})`, cells: rows.map((row) => typedNumber(row.area / 100, row.asText)) },
        {
          head: usedHead,
          cells: rows.map((row) => (row.used === null ? '' : dateCell(row.used, row.asText))),
        },
        { head: restHead, cells: rows.map((row) => row.rest ?? '') },
        { head: 'Remarks', cells: rows.map((_, i) => (i === 1 ? 'stony, total mess' : '')) },
      ],
      columns,
      blanks,
      total,
    ),
    expected: rows.map((row) => ({
      name: row.name,
      areaSquareMeters: (row.area / 100) * factor,
      lastUsed: row.used ?? undefined,
      restDays: row.rest ?? undefined,
    })),
  }));

const groupList: fc.Arbitrary<MadeList> = fc
  .tuple(
    items(
      fc.record({
        name,
        head: fc.integer({ min: 1, max: 300 }),
        weight: fc.integer({ min: 1, max: 3000 }),
        asText: fc.boolean(),
        weighed: day,
        from: fc.option(day),
      }),
    ),
    fc.tuple(
      heading(GROUP_WORDS.name.filter((word) => word !== 'id' && word !== 'litter')),
      heading(GROUP_WORDS.head),
      heading(GROUP_WORDS.weight),
      fc.constantFrom(...MASS_UNITS),
      heading(GROUP_WORDS.weighedOn),
      heading(GROUP_WORDS.from),
    ),
    order(5),
    layout,
  )
  .map(
    ([
      rows,
      [nameHead, headHead, weightHead, [unit, factor], weighedHead, fromHead],
      columns,
      { blanks, total },
    ]) => ({
      grid: assemble(
        [
          { head: nameHead, cells: rows.map((row) => row.name) },
          { head: headHead, cells: rows.map((row) => typedNumber(row.head, row.asText)) },
          { head: `${weightHead} [${unit}]`, cells: rows.map((row) => row.weight / 10) },
          { head: weighedHead, cells: rows.map((row) => dateCell(row.weighed, row.asText)) },
          {
            head: fromHead,
            cells: rows.map((row) => (row.from === null ? '' : dateCell(row.from, row.asText))),
          },
        ],
        columns,
        blanks,
        total,
      ),
      expected: rows.map((row) => ({
        name: row.name,
        head: row.head,
        weightKg: (row.weight / 10) * factor,
        weighedOn: row.weighed,
        from: row.from ?? undefined,
      })),
    }),
  );

type Arrangement = 'side by side' | 'below' | 'two tabs';

function sheet(name_: string, blocks: { grid: Grid; row: number; column: number }[]): TabContent {
  const rows = Math.max(...blocks.map(({ grid, row }) => row + grid.length));
  const columns = Math.max(...blocks.map(({ grid, column }) => column + grid[0]!.length));
  const values = Array.from({ length: rows }, () => new Array<WireCell>(columns).fill(''));
  for (const { grid, row, column } of blocks) {
    for (const [r, cells] of grid.entries())
      for (const [c, cell] of cells.entries()) values[row + r]![column + c] = cell;
  }
  return { name: name_, values, formulas: values.map((row) => row.map(() => '')) };
}

function arrange(
  paddocks: Grid,
  groups: Grid,
  how: Arrangement,
  top: number,
  gap: number,
  titled: boolean,
): TabContent[] {
  const titles = (text: string, row: number, column: number) =>
    titled && row > 0 ? [{ grid: [[text]] as Grid, row: row - 1, column }] : [];
  const first = [{ grid: paddocks, row: top, column: 1 }, ...titles('Our ground', top, 1)];
  if (how === 'two tabs') return [sheet('A', first), sheet('B', [{ grid: groups, row: top, column: 0 }])];
  if (how === 'side by side') {
    const column = 1 + paddocks[0]!.length + gap;
    return [sheet('A', [...first, { grid: groups, row: top, column }])];
  }
  const row = top + paddocks.length + gap + 2;
  return [sheet('A', [...first, { grid: groups, row, column: 1 }, ...titles('Our pigs', row, 1)])];
}

describe('messy lists', () => {
  it('finds and reads both lists exactly, 1,000 sheets', () => {
    fc.assert(
      fc.property(
        paddockList,
        groupList,
        fc.constantFrom<Arrangement>('side by side', 'below', 'two tabs'),
        fc.integer({ min: 0, max: 3 }),
        fc.integer({ min: 0, max: 2 }),
        fc.boolean(),
        (paddocks, groups, how, top, gap, titled) => {
          const tabs = arrange(paddocks.grid, groups.grid, how, top, gap, titled);
          const found = findLists(tabs);
          const list = found.find((one) => one.kind === 'paddocks') as PaddockList | undefined;
          const pigs = found.find((one) => one.kind === 'groups') as GroupList | undefined;
          expect(list && pigs, 'both lists are found').toBeTruthy();
          const tabOf = (wanted: string): TabContent => tabs.find((tab) => tab.name === wanted)!;
          const read = readPaddocks(tabOf(list!.tab), list!, 'US', false);
          expect(read.problems).toEqual([]);
          expect(
            read.paddocks.map(({ name: n, areaSquareMeters, lastUsed, restDays }) => ({
              name: n,
              areaSquareMeters,
              lastUsed,
              restDays,
            })),
          ).toEqual(paddocks.expected);
          const readPigs = readGroups(tabOf(pigs!.tab), pigs!, 'US', false);
          expect(readPigs.problems).toEqual([]);
          expect(
            readPigs.groups.map(({ name: n, head, weightKg, weighedOn, from }) => ({
              name: n,
              head,
              weightKg,
              weighedOn,
              from,
            })),
          ).toEqual(groups.expected);
        },
      ),
      { numRuns: 1000, seed: 20260401 },
    );
  });

  it('never throws, and names a cell of the tab in every problem, whatever stands there', () => {
    const cell: fc.Arbitrary<WireCell> = fc.oneof(
      fc.constantFrom<WireCell>(
        '',
        '',
        'Paddock',
        'Area (ac)',
        'Group',
        'Head',
        'Weight',
        'Weighed on',
        'Adjoins',
        '#REF!',
        'Total',
      ),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.string({ maxLength: 8 }),
      fc.boolean(),
      day.map((value) => ({ d: isoFromDay(value) })),
    );
    const grid = fc
      .integer({ min: 1, max: 8 })
      .chain((width) =>
        fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 12 }),
      );
    fc.assert(
      fc.property(grid, (values) => {
        const tab = { name: 'T', values, formulas: values.map((row) => row.map(() => '')) };
        for (const list of findLists([tab])) {
          const { problems } =
            list.kind === 'paddocks'
              ? readPaddocks(tab, list, 'US', false)
              : readGroups(tab, list, 'US', false);
          for (const problem of problems) {
            expect(problem.cell).toMatch(/^T![A-H]\d+$/);
            expect(problem.sentence.startsWith(`${problem.cell}: `)).toBe(true);
          }
        }
      }),
      { numRuns: 1000, seed: 20260401 },
    );
  });
});
