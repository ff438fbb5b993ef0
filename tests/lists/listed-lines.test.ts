/** Lines in words, without headings, that the grower points at: read line by line, and made a list by a press. */
import { expect, test } from 'vitest';
import { dayFromIso, isoFromDay } from '../../shared/core/calendar/day';
import { listFromSelection } from '../../shared/lists/list-columns';
import { listedLines } from '../../shared/lists/listed-lines';
import type { ListKind } from '../../shared/lists/model';
import { growerLists } from '../../shared/tasks/grower-lists';
import { openWorkbook, portOf, type StartCell, type Workbook } from '../../src/headless';
import { readBook } from '../hard-use/rotation-task';
import { scriptText } from '../tasks/script-text';

const t = (text: string): StartCell => ({ text });
const lists = (farm: Workbook) => growerLists(readBook(farm), 'metric');

/** What the page does where a cell of a tab is selected and its button pressed. */
async function point(farm: Workbook, kind: ListKind, name: string, row: number): Promise<readonly string[]> {
  const tab = readBook(farm).tabs.find((one) => one.name === name)!;
  const selection = { tab: name, a1: `A${row}`, row, column: 1, rows: 1, columns: 1, values: [] };
  expect(() => listFromSelection(kind, selection, tab)).toThrow(/No row of headings/);
  const isPaddock = (text: string): boolean => lists(farm).paddocks.some((one) => one.name === text);
  const today = dayFromIso('2026-11-22')!;
  const { cells, said } = listedLines(kind, tab, selection, { comma: true, order: 'dmy', today, isPaddock })!;
  await portOf(farm)('changeCells', { cells: [...cells] });
  return said;
}

test('paddocks and groups in words', async () => {
  const farm = await openWorkbook({
    tabs: {
      Parcs: [
        [t('Mes parcs')],
        [t('Parc du haut : 4500 m², repos depuis le 3/10')],
        [t('Parc du bas - 0,38 ha')],
        [t('Verger : 50 x 50 m, pas avant mars')],
        [t('Bois 1,2 ha')],
        [t('Friche : derrière la grange')],
      ],
      Cochons: [
        [t('Noirs : 12 porcs, 85 kg le 10/11, Parc du bas')],
        ['Jeunes', 15, t('30 kg'), t('porcherie')],
      ],
    },
    locale: 'fr_FR',
    today: '2026-11-22',
    codeJs: await scriptText(),
  });
  const land = await point(farm, 'paddocks', 'Parcs', 3);
  expect(land[0]).toBe('Parc du haut: 4500 m², repos depuis le 3/10');
  const { paddocks, lacking, problems } = lists(farm);
  expect(isoFromDay(paddocks[0]!.lastUsed!)).toBe('2026-10-03');
  expect(paddocks.map(({ name, areaSquareMeters }) => [name, areaSquareMeters])).toEqual([
    ['Parc du haut', 4500],
    ['Parc du bas', 3800],
    ['Verger', 2500],
    ['Bois', 12_000],
  ]);
  // What no line says is asked.
  expect([problems.length, lacking.map(({ rows }) => rows.map(({ name }) => name))]).toEqual([
    0,
    [['Friche']],
  ]);
  await point(farm, 'groups', 'Cochons', 2);
  const { groups, unplaced } = lists(farm);
  expect(
    groups.map(({ name, head, weightKg, weighedOn, standsIn }) => [
      name,
      head,
      weightKg,
      isoFromDay(weighedOn),
      standsIn?.paddock,
    ]),
  ).toEqual([
    ['Noirs', 12, 85, '2026-11-10', 'Parc du bas'],
    ['Jeunes', 15, 30, '2026-11-22', undefined],
  ]);
  expect(unplaced).toEqual([]);
}, 60_000);

test('a title or a single line is no list', async () => {
  const values = [[''], ['Pigs 2026'], ['']];
  const tab = { name: 'T', values, formulas: values.map(() => ['']) };
  const at = { row: 2, column: 1 };
  expect(
    listedLines('groups', tab, at, { comma: false, order: 'dmy' as const, today: 0, isPaddock: () => false }),
  ).toBeUndefined();
});
