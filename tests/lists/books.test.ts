/** Whole farm books, as invented growers keep them, read without a cell retyped. */
import { describe, expect, it } from 'vitest';
import { dayFromIso, isoFromDay } from '../../shared/core/calendar/day';
import { findLists } from '../../shared/lists/find-lists';
import type { FoundList, GroupList, PaddockList } from '../../shared/lists/model';
import { readGroups } from '../../shared/lists/read-groups';
import { readPaddocks } from '../../shared/lists/read-paddocks';
import { standingProblems } from '../../shared/lists/standing-place';
import { lastWeighings } from '../../shared/lists/weighings';
import type { PlanRules } from '../../shared/plan/model';
import { planRotation } from '../../shared/plan/plan-rotation';
import { fromToday, planProblem } from '../../shared/tasks/rotation/plan-problem';
import { startingRules } from '../../shared/tasks/rotation/rules-form';
import { type Book, tab } from './books/book';
import { HOF } from './books/hof';
import { HOGBOOK } from './books/hogbook';
import { FERME, FINCA, GAARD, HOLDING, HOMESTEAD, PODERE } from './books/others';

const ACRE = 4046.8564224;
const POUND = 0.45359237;
const iso = (day: number | undefined): string | undefined =>
  day === undefined ? undefined : isoFromDay(day);

function read(book: Book) {
  const found = findLists(book.tabs);
  const land = found.find(({ kind }) => kind === 'paddocks') as unknown as PaddockList;
  const pigs = found.find(({ kind }) => kind === 'groups') as unknown as GroupList;
  const day = { order: book.order, today: dayFromIso(book.today)! };
  const tabOf = (name: string) => book.tabs.find((one) => one.name === name)!;
  const groupList = { tab: tabOf(pigs.tab), list: pigs as unknown as FoundList };
  const weighings = lastWeighings(book.tabs, found, groupList, book.system, book.comma, day);
  const dates = { ...day, weighings };
  const { paddocks, ...land_ } = readPaddocks(tabOf(land.tab), land, book.system, book.comma, dates);
  const { groups, ...pigs_ } = readGroups(tabOf(pigs.tab), pigs, book.system, book.comma, dates);
  return {
    paddocks,
    groups,
    area: paddocks.reduce((sum, { areaSquareMeters }) => sum + areaSquareMeters, 0),
    head: groups.reduce((sum, { head }) => sum + head, 0),
    problems: [...land_.problems, ...pigs_.problems].map(({ sentence }) => sentence),
    notes: [...land_.notes, ...pigs_.notes],
    leftOut: [...land_.leftOut, ...pigs_.leftOut].map(({ cell }) => cell),
  };
}

describe('feet, pounds and feed bills', () => {
  const book = read(HOGBOOK);

  it('is read whole, and the bills are passed over in one line', () => {
    expect(book.problems).toEqual([]);
    expect(book.paddocks).toHaveLength(12);
    expect(book.area / ACRE).toBeCloseTo(10.39, 9);
    expect(book.groups.map(({ name, head }) => [name, head])).toEqual([
      ['Spring bunch', 16],
      ['Big ones', 12],
    ]);
    expect(book.leftOut).toEqual(['Fields!A20', 'Hogs!A7']);
    expect(book.notes).toContain(
      'Not read as paddocks: what stands from Fields!A24 (“Date”) on, as a table of its own.',
    );
  });

  it('dates in the order of the place, a month as its last day, pounds behind the number', () => {
    const used = Object.fromEntries(book.paddocks.map(({ name, lastUsed }) => [name, iso(lastUsed)]));
    expect(used).toMatchObject({ 'North 1': '2025-10-03', 'North 2': '2025-10-20', 'Hill C': '2025-10-31' });
    expect(book.groups.map(({ weightKg }) => weightKg / POUND)).toEqual(
      [62, 118].map((lb) => expect.closeTo(lb, 9)),
    );
    expect(book.groups.map(({ weighedOn }) => iso(weighedOn))).toEqual(['2026-04-10', '2026-04-10']);
    expect(book.notes).toContain('Read from text: Hogs!D6 “4/10/26” as 2026-04-10.');
  });

  it('offers the remark about June, and reads it where the grower agrees', () => {
    const list = findLists(HOGBOOK.tabs).find(({ kind }) => kind === 'paddocks') as unknown as PaddockList;
    const land = HOGBOOK.tabs[0]!;
    const dates = { order: 'mdy', today: dayFromIso('2026-04-14')! } as const;
    const { remarks } = readPaddocks(land, list, 'US', false, dates);
    expect(remarks).toEqual([
      {
        column: 6,
        sentence:
          'Fields!F12: “under water til June 1”: is “Low Bottom” open from 2026-06-01? Then choose column F for “Open from”.',
      },
    ]);
    const agreed = { ...list, columns: { ...list.columns, openFrom: 6 } };
    const { paddocks, problems } = readPaddocks(land, agreed, 'US', false, dates);
    expect(problems).toEqual([]);
    expect(paddocks.flatMap(({ name, openFrom }) => (openFrom ? [[name, iso(openFrom)]] : []))).toEqual([
      ['Low Bottom', '2026-06-01'],
    ]);
  });

  it('the plan begins where they stand', () => {
    const today = dayFromIso(HOGBOOK.today)!;
    const { seasonStart, seasonEnd } = startingRules([], book.groups, today);
    expect(seasonStart).toBe('2026-03-28');
    const rules: PlanRules = {
      rest: { kind: 'fixed', days: 40 },
      shortestStayDays: 3,
      longestStayDays: 7,
      moveWeekdays: new Array<boolean>(7).fill(true),
      noMoveDays: [],
      seasonStart: dayFromIso(seasonStart)!,
      seasonEnd: dayFromIso(seasonEnd)!,
    };
    const problem = fromToday(planProblem(book.paddocks, book.groups, rules), today);
    const plan = planRotation(problem);
    if (!('stays' in plan)) throw new Error(plan.reason);
    const first = book.groups.map((_, g) => plan.stays.find(({ group }) => group === g)!);
    expect(first.map(({ paddock, inDay }) => [book.paddocks[paddock]!.name, iso(inDay)])).toEqual([
      ['Barn strip', '2026-04-12'],
      ['Oak lot', '2026-03-28'],
    ]);
    // Nothing is planned into the past.
    for (const { outDay } of plan.stays) expect(outDay).toBeGreaterThanOrEqual(today);
    expect(plan.stays.every(({ inDay }, i) => inDay >= today || first.includes(plan.stays[i]!))).toBe(true);
  });

  it('knows where each bunch stands and since when', () => {
    expect(book.groups.map(({ standsIn }) => [standsIn?.paddock, iso(standsIn?.since)])).toEqual([
      ['Barn strip', '2026-04-12'],
      ['Oak lot', '2026-03-28'],
    ]);
  });
});

describe('Koppeln and decimal commas', () => {
  const book = read(HOF);

  it('is read whole, day first, and nothing is refused', () => {
    expect(book.problems).toEqual([]);
    expect(book.paddocks).toHaveLength(6);
    expect(book.area / 10_000).toBeCloseTo(3.15, 9);
    expect(book.groups.map(({ name, head, weightKg }) => [name, head, weightKg])).toEqual([
      ['Ferkel', 12, 28.5],
      ['Mast', 6, 62],
    ]);
    const { lastUsed } = book.paddocks.find(({ name }) => name === 'Nord 1')!;
    const { openFrom } = book.paddocks.find(({ name }) => name === 'Bruch')!;
    expect([lastUsed, openFrom, book.groups[1]!.weighedOn].map(iso)).toEqual([
      '2025-10-03',
      '2026-06-01',
      '2026-04-10',
    ]);
  });
});

/** Foot 0.3048 m, acre, pound: definitions (1959). What a grower means by each book, worked out by hand. */
const FOOT = 0.3048;
const plain = ({ paddocks, groups }: ReturnType<typeof read>) => ({
  land: paddocks.map(({ name, areaSquareMeters, lastUsed, openFrom }) => [
    name,
    Math.round(areaSquareMeters),
    iso(lastUsed) ?? '',
    iso(openFrom) ?? '',
  ]),
  pigs: groups.map(({ name, head, weightKg, weighedOn, standsIn }) => [
    name,
    head,
    Math.round(weightKg * 10) / 10,
    iso(weighedOn),
    ...(standsIn ? [standsIn.paddock, iso(standsIn.since)] : []),
  ]),
});

describe('six more books, each in the habits of its country', () => {
  it.each<[Book, ReturnType<typeof plain>]>([
    [
      HOLDING,
      {
        land: [
          ['1', Math.round(1.5 * ACRE), '2025-11-03', ''],
          ['2', Math.round(1.25 * ACRE), '2025-11-19', ''],
          ['3', Math.round(1.1 * ACRE), '', '2026-06-01'],
          ['4', Math.round(0.9 * ACRE), '2025-09-30', ''],
        ],
        pigs: [
          ['Feb weaners', 14, 31, '2026-04-04', '2', '2026-04-12'],
          ['Nov lot', 9, 68.5, '2026-04-04', '4', '2026-04-08'],
        ],
      },
    ],
    [
      FERME,
      {
        land: [
          ['Le Clos', 1250, '2025-10-12', ''],
          ['Grand Pré', 3400, '2025-11-02', ''],
          ['La Noue', 2851, '', '2026-05-15'],
          ['Les Pommiers', 2100, '2025-09-30', ''],
        ],
        pigs: [
          ['Printemps', 11, 28.5, '2026-04-11', 'le clos', '2026-04-10'],
          ['Hiver', 7, 71, '2026-04-11', 'Grand Pré', '2026-04-06'],
        ],
      },
    ],
    [
      GAARD,
      {
        land: [
          ['N1', 4000, '2025-10-03', ''],
          ['N2', 5500, '2025-10-20', ''],
          ['S1', 6000, '', ''],
          ['S2', 3500, '2025-11-30', ''],
        ],
        pigs: [
          ['Vårgrise', 13, 31, '2026-04-05', 'N1', '2026-04-09'],
          ['Slagtesvin', 8, 84.5, '2026-04-05', 'S2', '2026-04-02'],
        ],
      },
    ],
    [
      FINCA,
      {
        land: [
          ['Encina', 4800, '2025-10-05', ''],
          ['Arroyo', 4095, '', ''],
          ['Loma', 4900, '2025-11-22', ''],
          ['Olivar', 5500, '', ''],
        ],
        pigs: [
          ['Primavera', 15, 26.5, '2026-04-10'],
          ['Cebo', 10, 72, '2026-04-10'],
        ],
      },
    ],
    [
      PODERE,
      {
        land: [
          ['Quercia', 4500, '2025-10-03', ''],
          ['Fosso', 6000, '2025-10-20', ''],
          ['Colle', 3800, '', ''],
        ],
        pigs: [
          ['Giovani', 12, 24.5, '2026-04-10'],
          ['Pesanti', 6, 88, '2026-04-10'],
        ],
      },
    ],
    [
      HOMESTEAD,
      {
        land: [
          ['Front', Math.round(120 * 210 * FOOT ** 2), '2025-10-12', ''],
          ['Creek', Math.round(32_500 * FOOT ** 2), '2025-11-02', ''],
          ['Pines', Math.round(100 * 305 * FOOT ** 2), '', ''],
        ],
        pigs: [
          ['Reds', 10, Math.round(55 * POUND * 10) / 10, '2026-04-11', 'Front', '2026-04-11'],
          ['Blues', 8, Math.round(130 * POUND * 10) / 10, '2026-04-11', 'creek', '2026-04-09'],
        ],
      },
    ],
  ])('$name', (book, expected) => {
    const was = read(book);
    expect(was.problems).toEqual([]);
    expect(plain(was)).toEqual(expected);
  });

  it('what is not read, or not in the list, is told', () => {
    expect(read(GAARD).notes).toContain(
      'Hold!A4: “Orne” is read as breeding stock: it has no weight and is left out; write a weight to have it planned.',
    );
    expect(read(GAARD).notes).toContain('The weight of “Slagtesvin” is read from Vejninger!C5.');
    expect(read(HOMESTEAD).notes).toContain(
      'Not read as groups: what stands from Everything!A10 (“Feed”) on, as a table of its own.',
    );
  });
});

describe('where the groups stand', () => {
  const problems = (places: readonly string[]): readonly string[] => {
    const land = tab('Land', [
      ['Paddock', 'Acres'],
      ['East', 1],
      ['West', 1],
    ]);
    const pigs = tab('Pigs', [
      ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'Where', 'Since'],
      ...places.map((place, g) => [`Bunch ${g + 1}`, 9, 60, '@2026-04-01', place, '@2026-04-02']),
    ]);
    const [list] = findLists([pigs]) as unknown as GroupList[];
    const [ground] = findLists([land]) as unknown as PaddockList[];
    const { groups } = readGroups(pigs, list!, 'US', false);
    const { paddocks } = readPaddocks(land, ground!, 'US', false);
    return standingProblems(groups, paddocks, 'Pigs').map(({ sentence }) => sentence);
  };

  it('letter case and blanks do not matter, and nobody need stand anywhere', () => {
    expect(problems(['east ', 'WEST'])).toEqual([]);
    expect(problems(['', 'West'])).toEqual([]);
  });

  it('two in one paddock are told at the cell of the second', () => {
    expect(problems(['East', 'east'])).toEqual([
      'Pigs!E3: stands in now must be a paddock of its own, got "east" as for “Bunch 1”',
    ]);
  });
});

describe('the season to begin with', () => {
  const today = dayFromIso('2026-04-14')!;
  const group = (more: object) => ({ name: 'g', head: 1, weightKg: 1, weighedOn: today, cells: {}, ...more });
  const season = (...groups: object[]) => {
    const { seasonStart, seasonEnd } = startingRules([], groups.map(group), today);
    return [seasonStart, seasonEnd];
  };
  const day = (text: string): number => dayFromIso(text)!;

  it('reaches from the first to the last day where all groups give both', () => {
    const both = [
      { from: day('2026-05-01'), until: day('2026-07-20') },
      { from: day('2026-04-20'), until: day('2026-09-30') },
    ];
    expect(season(...both)).toEqual(['2026-04-20', '2026-09-30']);
  });

  it('is neither shortened nor delayed for a group that gives none', () => {
    // 180 days from 14 April are 11 October.
    expect(season({ until: day('2026-07-20') }, {})).toEqual(['2026-04-14', '2026-10-11']);
    expect(season({ from: day('2026-06-01') }, {})).toEqual(['2026-04-14', '2026-10-11']);
  });
});
