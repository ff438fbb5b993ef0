/**
 * Another judge: both sample farms with every block, saved as .xlsx and worked out anew by LibreOffice. Every plain
 * formula must give there what it gives in the preview. Our cell functions are unknown there, so their answers are put
 * in their place first.
 */
import ExcelJS from 'exceljs';
import { describe, expect, it } from 'vitest';
import { columnLetters } from '../../shared/block/a1';
import { CATALOGUE } from '../../shared/catalogue/index';
import type { GroupList } from '../../shared/lists/model';
import { SAMPLE_FARMS } from '../../shared/samples/index';
import { openWorkbook, type Workbook } from '../../src/headless';
import { cellUnder } from '../cell-under';
import { scriptText } from '../tasks/script-text';
import { shownMoves } from './check-table';
import { buildEveryBlock, type Written } from './every-block';
import { findOffice, newerPrefixed, recalculate } from './office';
import { asked, readBook, readLists } from './rotation-task';

const office = findOffice();
if (!office) {
  const words = 'LibreOffice is not installed: the second opinion on every plain formula was NOT asked for.';
  if (process.env.SOUNDER_OFFICE === 'required') throw new Error(words);
  console.warn(`\n*** ${words} ***\n`);
}

const OURS = new RegExp(`(?<![\\w.])(${CATALOGUE.map(({ name }) => name).join('|')})\\(`);

interface Formula {
  readonly tab: string;
  readonly a1: string;
  readonly formula: string;
  readonly value: unknown;
}

/** The workbook as a file without our functions, and the plain formulas in it with what the preview shows. */
async function asFile(
  workbook: Workbook,
): Promise<{ file: ExcelJS.Workbook; formulas: Formula[]; replaced: number }> {
  const file = new ExcelJS.Workbook();
  await file.xlsx.load((await workbook.toXlsx()) as unknown as ArrayBuffer);
  const formulas: Formula[] = [];
  let replaced = 0;
  for (const sheet of file.worksheets) {
    const shown = workbook.values(sheet.name);
    sheet.eachRow((row) => {
      row.eachCell((cell) => {
        if (typeof cell.formula !== 'string') return;
        const value = shown[Number(cell.row) - 1]?.[Number(cell.col) - 1] ?? '';
        if (OURS.test(cell.formula)) {
          replaced += 1;
          return;
        }
        formulas.push({ tab: sheet.name, a1: cell.address, formula: cell.formula, value });
        // The value kept beside it is wrong on purpose: only a real recalculation can put it right.
        const formula = newerPrefixed(cell.formula.replaceAll('TODAY()', TODAY));
        cell.value = { formula, result: STALE };
        // ExcelJS reads words in a cell with a date format as a date that is none.
        if (typeof value === 'string') cell.numFmt = 'General';
      });
    });
    putAnswers(sheet, shown);
  }
  return { file, formulas, replaced };
}

const STALE = 'not worked out';
/** The preview's clock is set, LibreOffice's is not. */
const TODAY = 'DATE(2026,5,20)';

/** What our functions answer, where they stand and where they spill. */
function putAnswers(sheet: ExcelJS.Worksheet, shown: unknown[][]): void {
  shown.forEach((row, r) => {
    row.forEach((value, c) => {
      const cell = sheet.getCell(r + 1, c + 1);
      const isPlain = typeof cell.formula === 'string' && !OURS.test(cell.formula);
      const isSpilt = cell.value === null && value !== '';
      if (isPlain || !(isSpilt || typeof cell.formula === 'string')) return;
      cell.value = value === '' ? null : (value as ExcelJS.CellValue);
    });
  });
}

function plain(value: unknown): unknown {
  if (value === null || value === undefined) return '';
  if (value instanceof Date) return value.getTime() / 86_400_000 + 25_569;
  if (typeof value === 'object' && 'error' in value) return value.error;
  return value;
}

function isSame(a: unknown, b: unknown): boolean {
  const [x, y] = [plain(a), plain(b)];
  if (typeof x === 'number' && typeof y === 'number')
    return Math.abs(x - y) <= 1e-9 * Math.max(1, Math.abs(x));
  return x === y;
}

/** What happens to tables in use, each in a row of its own. */
function damage(workbook: Workbook, { info, units }: Written): void {
  const moves = shownMoves(workbook, info);
  const type = (heading: string, at: number, what: string): void =>
    workbook.type(info.tab, cellUnder(workbook, heading, moves[at]!.row, info.tab), what);
  type('Days', 1, '');
  type('Head', 2, 'a dozen');
  type('Moved in', 3, 'last Tuesday');
  type('Days', 4, 'two');
  type('Feed for the stay', 5, '');
  type('Moved in', 7, 'SKIPPED ');
  workbook.gate.uncounted(() => workbook.spreadsheet.getSheetByName(info.tab)!.deleteRows(moves[6]!.row, 1));
  // In the grower's own group list: no gain.
  const { chosen } = readLists(readBook(workbook), units);
  const groups = chosen.groups as unknown as GroupList;
  workbook.type(groups.tab, `${columnLetters(groups.columns.dailyGain!)}${groups.firstRow}`, '');
}

async function farmWithEveryBlock(id: string, isDamaged: boolean): Promise<Workbook> {
  const workbook = await openWorkbook({
    codeJs: await scriptText(),
    tabs: { Start: [] },
    today: '2026-05-20',
    // LibreOffice shows 0 where a formula gives a blank cell, Sheets (from memory) shows nothing.
    modes: { blankStaysBlank: false },
  });
  asked(workbook, 'startSample', { sample: id });
  const written = await buildEveryBlock(workbook, id.startsWith('metric') ? 'metric' : 'US');
  if (isDamaged) damage(workbook, written);
  return workbook;
}

describe.skipIf(!office)('LibreOffice agrees with the preview', () => {
  const farms = SAMPLE_FARMS.flatMap(({ id }) => [
    { id, state: 'whole' },
    { id, state: 'damaged' },
  ]);
  it.each(farms)(
    '$id, $state: every plain formula',
    async ({ id, state }) => {
      const workbook = await farmWithEveryBlock(id, state === 'damaged');
      const { file, formulas, replaced } = await asFile(workbook);
      const judged = await recalculate(office!, file);
      const differing = formulas.flatMap(({ tab, a1, formula, value }) => {
        const got = judged.getWorksheet(tab)?.getCell(a1).result;
        return isSame(got, value)
          ? []
          : [
              `${tab}!${a1} =${formula}: preview ${JSON.stringify(value)}, LibreOffice ${JSON.stringify(got)}`,
            ];
      });
      console.log(
        `LibreOffice, ${id}, ${state}: ${formulas.length} plain formulas worked out anew, ${differing.length} differ; ${replaced} calls of cell functions replaced by their answers`,
      );
      expect(differing.slice(0, 20)).toEqual([]);
      // A damaged row is told in words, or stays blank; no sum and no other row becomes an error with it.
      expect(formulas.filter(({ value }) => String(value).startsWith('#'))).toEqual([]);
      expect(formulas.length).toBeGreaterThan(500);
    },
    600_000,
  );

  it('does work them out: a wrong value kept in the file is put right', async () => {
    const file = new ExcelJS.Workbook();
    const sheet = file.addWorksheet('A');
    sheet.getCell('A1').value = 2;
    sheet.getCell('A2').value = { formula: 'A1*21', result: 13 };
    sheet.getCell('A3').value = { formula: newerPrefixed('MAXIFS(A1:A2,A1:A2,">3")'), result: 13 };
    const judged = await recalculate(office!, file);
    expect(judged.getWorksheet('A')?.getCell('A2').result).toBe(42);
    expect(judged.getWorksheet('A')?.getCell('A3').result).toBe(42);
  }, 300_000);
});
