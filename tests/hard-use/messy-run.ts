/** Opens one messy workbook, builds the table in it, and judges what came of it. */
import { expect } from 'vitest';
import { ROTATION_TASK } from '../../shared/tasks/rotation/rotation-task';
import { openWorkbook, type Workbook } from '../../src/headless';
import { tableFaults } from './check-table';
import { AREA_UNITS, MASS_UNITS } from './messy-farm';
import type { MessyWorkbook, WrongCell } from './messy-workbook';
import { buildRotation, type Outcome, readBook } from './rotation-task';
import { differences, sheetPicture } from './sheet-picture';

export type Kind = 'written' | 'no plan' | 'refused, cell named' | 'place taken, cell named';

/** Without these there is no plan; any other cell that is wrong counts as blank, and is told. */
const NEEDED = ['paddock', 'area', 'group', 'head', 'weight'];

export async function messyRun(messy: MessyWorkbook, codeJs: string): Promise<Kind> {
  const { farm, place, wrong, inTheWay } = messy;
  const workbook = await openWorkbook({ ...messy.options, codeJs });
  decorate(workbook, messy);
  const before = sheetPicture(workbook);
  if (!messy.coloured) workbook.failOn('setBackgrounds');
  const { notes, unplaced, problems } = ROTATION_TASK.read(readBook(workbook), {}).lists;
  const told = [
    ...notes.paddocks,
    ...notes.groups,
    ...[...unplaced, ...problems].map(({ sentence }) => sentence),
  ];
  for (const { tab, a1 } of wrong) {
    const named = told.some((sentence) => namesOf(tab, a1).some((name) => sentence.includes(`${name}: `)));
    expect(named, `${tab}!${a1} is not told in\n${told.join('\n')}`).toBe(true);
  }
  const stopping = wrong.filter(({ column }) => NEEDED.includes(column));
  const outcome = await buildRotation(workbook, { rules: farm.rules, place });
  if (outcome.kind === 'written') {
    expect(differences(before, sheetPicture(workbook, outcome.info)).join('\n')).toBe('');
    expect(stopping, 'a wrong cell was passed over').toEqual([]);
    expect(inTheWay).toBeUndefined();
    expect(outcome.note === '', outcome.note).toBe(messy.coloured);
    expectTruth(messy, outcome);
    expect(tableFaults(workbook, outcome.info, outcome.problem, outcome.plan, outcome.units).join('\n')).toBe(
      '',
    );
    return 'written';
  }
  expect(differences(before, sheetPicture(workbook)).join('\n')).toBe('');
  if (outcome.kind === 'no plan') {
    expect(farm.mustHavePlan, outcome.reason).toBe(false);
    expect(stopping).toEqual([]);
    expect(outcome.reason).toMatch(/[a-z]{3}/);
    return 'no plan';
  }
  const said = outcome.sentences.join('\n');
  for (const { tab, a1 } of stopping) {
    const named = outcome.sentences.some((sentence) =>
      namesOf(tab, a1).some((name) => sentence.startsWith(`${name}: `)),
    );
    expect(named, `${tab}!${a1} is not named in\n${said}`).toBe(true);
  }
  // Of a season nothing may be left, once a group has been left out for its day.
  if (wrong.length > 0 && inTheWay === undefined) return 'refused, cell named';
  if (stopping.length > 0) return 'refused, cell named';
  expect(inTheWay, said).toBeDefined();
  // Below a list the cell may also have been read as a part of it; then what its row lacks is named.
  expect(said).toMatch(
    new RegExp(`something stands in ${inTheWay}|![A-Z]+${inTheWay!.replace(/\D/g, '')}: `),
  );
  return 'place taken, cell named';
}

function namesOf(tab: string, a1: string): string[] {
  return [`${tab}!${a1}`, `'${tab.replace(/'/g, "''")}'!${a1}`];
}

/** Hidden rows, notes and a filter: what people do with the mouse. */
function decorate(workbook: Workbook, { hiddenRows, notes, filtered }: MessyWorkbook): void {
  const { book } = workbook.state;
  for (const { tab, rows } of hiddenRows) {
    if (rows.length > 0)
      book.must({ type: 'HIDE_COLUMNS_ROWS', sheetId: book.idOf(tab), dimension: 'ROW', elements: rows });
  }
  for (const { tab, a1, note } of notes) workbook.gate.uncounted(() => workbook.range(tab, a1).setNote(note));
  if (!filtered) return;
  const sheetId = book.idOf(filtered.tab)!;
  const zone = book.model.getters.getRangeFromSheetXC(sheetId, filtered.a1).zone;
  book.must({
    type: 'CREATE_TABLE',
    sheetId,
    ranges: [book.rangeData(sheetId, zone)],
    config: {
      hasFilters: true,
      totalRow: false,
      firstColumn: false,
      lastColumn: false,
      numberOfHeaders: 1,
      bandedRows: false,
      bandedColumns: false,
      styleId: 'TableStyleMedium5',
    },
    tableType: 'forceStatic',
  });
  book.must({
    type: 'UPDATE_FILTER',
    sheetId,
    row: zone.top,
    col: zone.left,
    value: { filterType: 'values', hiddenValues: ['north', 'south'] },
  });
}

/** The lists as read are the lists as made, every amount in SI; of a cell that is wrong nothing is read. */
function expectTruth(
  { farm, areaUnit, massUnit, wrong }: MessyWorkbook,
  { problem }: Extract<Outcome, { kind: 'written' }>,
): void {
  const near = (value: number | undefined) => (value === undefined ? undefined : expect.closeTo(value, 6));
  const isWrong = (list: WrongCell['list'], item: number, column: string): boolean =>
    wrong.some((one) => one.list === list && one.item === item && one.column === column);
  expect(
    problem.paddocks.map((one) => ({ ...one, adjoins: one.adjoins && [...one.adjoins].sort() })),
  ).toEqual(
    farm.paddocks.map(({ name, area, rest, openFrom, openUntil, lastUsed, adjoins }, i) => {
      const read = <Value>(column: string, value: Value) =>
        isWrong('paddocks', i, column) ? undefined : value;
      return {
        name,
        areaSquareMeters: near(area * AREA_UNITS[areaUnit]),
        openFrom: read('openFrom', openFrom),
        openUntil: read('openUntil', openUntil),
        lastUsed: read('lastUsed', lastUsed),
        restDays: read('rest', rest),
        adjoins: isWrong('paddocks', i, 'adjoining') ? [] : adjoins && [...adjoins].sort(),
      };
    }),
  );
  const kg = MASS_UNITS[massUnit];
  expect(problem.groups).toEqual(
    farm.groups.flatMap(({ name, head, weight, weighedOn, gain, from, until }, i) => {
      // Nobody knows when it comes: it is left out, and asked.
      if (isWrong('groups', i, 'from')) return [];
      const hasGain = gain !== undefined && !isWrong('groups', i, 'gain');
      return [
        {
          name,
          head,
          weightKg: near(weight * kg),
          weighedOn: isWrong('groups', i, 'weighedOn') ? expect.any(Number) : weighedOn,
          dailyGainKg: hasGain ? near(gain * kg) : undefined,
          from: from ?? farm.rules.seasonStart,
          until,
        },
      ];
    }),
  );
}
