/**
 * One text or blank among the stays must not make the sums of every month an error. LibreOffice is the judge: as Google
 * Sheets it makes an array product over a text an error.
 */
import ExcelJS from 'exceljs';
import { expect, it } from 'vitest';
import type { BlockCell } from '../../../shared/contract';
import { budgetBlock, MONTH_HEADINGS } from '../../../shared/tasks/budget/budget-block';
import type { BudgetStay } from '../../../shared/tasks/budget/budget-model';
import { BUDGET_SETTINGS } from '../../../shared/tasks/budget/budget-settings';
import { startSettings } from '../../../shared/tasks/settings';
import { findOffice, newerPrefixed, recalculate } from '../../hard-use/office';

const office = findOffice();
const APRIL = Date.parse('2026-04-01') / 86_400_000;
const DAY = 86_400_000;

function stay(paddock: string, inDay: number): BudgetStay {
  return {
    group: 'Reds',
    paddock,
    inDay,
    days: 10,
    head: 10,
    meanHead: 10,
    startWeightKg: 40,
    growthDays: 0,
    areaSquareMeters: 4000,
  } as BudgetStay;
}

it('text in Days, a blank feed and text in Area: the months and the other paddocks still add up', async ({
  skip,
}) => {
  if (!office) skip();
  const stays = [stay('Oak', APRIL), stay('Hill', APRIL + 10), stay('Oak', APRIL + 25)];
  const plan = {
    stays,
    units: 'metric',
    settings: startSettings(BUDGET_SETTINGS, 'metric'),
    source: {},
    origin: '',
    leftOut: [],
  } as const;
  const { cells } = budgetBlock(plan, new Map(), { row: 1, column: 1 });
  const file = new ExcelJS.Workbook();
  const sheet = file.addWorksheet('Budget');
  for (const [r, row] of cells.entries())
    for (const [c, cell] of row.entries()) put(sheet.getCell(r + 1, c + 1), cell);
  const words = (text: string) =>
    cells.findIndex((row) => row.some((cell) => cell.k === 't' && cell.v === text));
  const head = words('Stay in');
  const at = (heading: string) => cells[head]!.findIndex((cell) => cell.k === 't' && cell.v === heading) + 1;
  // What the cell functions would answer: 100 kg in ten days, 50 l a day, 20 kg/ha.
  for (const i of [0, 1, 2]) {
    const row = sheet.getRow(head + 3 + i);
    row.getCell(at('Feed')).value = 100;
    row.getCell(at('Water a day')).value = 50;
    for (const load of ['N', 'P', 'K']) row.getCell(at(load)).value = 20;
  }
  const second = sheet.getRow(head + 4);
  second.getCell(at('Days')).value = 'a week or so';
  second.getCell(at('Feed')).value = '';
  second.getCell(at('N')).value = 'no answer';
  second.getCell(at('Area')).value = 'unknown';
  const [worked] = (await recalculate(office as string, file)).worksheets;
  const shown = (row: number, column: number): unknown => {
    const { value } = worked!.getCell(row, column);
    // The file's reader leaves a result of 0 out; an error would be there.
    return typeof value === 'object' && value !== null && 'formula' in value ? (value.result ?? 0) : value;
  };
  const months = words(MONTH_HEADINGS[2]) + 2;
  // Oak: ten days from 1 April; then six days from 26 April and four in May. Feed 10 kg and water 50 l a day.
  expect([shown(months, 3), shown(months, 4)]).toEqual([150, 750]);
  expect([shown(months + 1, 3), shown(months + 1, 4)]).toEqual([50, 250]);
  const loads = words('Typed note') + 2;
  expect([shown(loads, 1), shown(loads, 2), shown(loads, 4), shown(loads, 5)]).toEqual(['Oak', 0.4, 20, 40]);
  expect([shown(loads + 1, 1), shown(loads + 1, 2), shown(loads + 1, 4), shown(loads + 1, 5)]).toEqual([
    'Hill',
    0,
    0,
    0,
  ]);
}, 300_000);

function put(into: ExcelJS.Cell, cell: BlockCell): void {
  if (cell.k === 'f' && /[A-Z]_[A-Z]/.test(cell.v)) return;
  if (cell.k === 'f')
    into.value = { formula: newerPrefixed(cell.v.slice(1).replaceAll(';', ',')), result: 0 };
  else if (cell.k === 'd') into.value = Date.parse(cell.v) / DAY + 25_569;
  else if (cell.k !== 'blank') into.value = cell.v;
}
