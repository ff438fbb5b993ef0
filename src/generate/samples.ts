/**
 * Writes the sample farms as .xlsx files. Without arguments: into sample-sheets/, for people who import a file instead of
 * using the menu, round a fixed day. With a folder: there, round today, for the preview.
 */
import { mkdirSync } from 'node:fs';
import ExcelJS from 'exceljs';
import { type Day, dayFromCivil, isoFromDay } from '../../shared/core/calendar/day';
import { SAMPLE_FARMS } from '../../shared/samples/index';
import {
  DAY_OF_FILES,
  type SampleCell,
  type SampleFarm,
  type SampleTab,
} from '../../shared/samples/sample-farm';

/** A fixed date, so that writing the files again changes nothing. */
const WRITTEN = new Date('2026-01-01T00:00:00Z');
const COLUMN_WIDTH = 16;

const [, , folder] = process.argv;
if (folder) mkdirSync(folder, { recursive: true });
for (const farm of SAMPLE_FARMS) {
  const book = sampleWorkbook(farm, folder ? today() : DAY_OF_FILES);
  await book.xlsx.writeFile(`${folder ?? 'sample-sheets'}/${farm.id}.xlsx`);
}

function today(): Day {
  const now = new Date();
  return dayFromCivil(now.getFullYear(), now.getMonth() + 1, now.getDate());
}

function sampleWorkbook(farm: SampleFarm, day: Day): ExcelJS.Workbook {
  const book = new ExcelJS.Workbook();
  book.created = WRITTEN;
  book.modified = WRITTEN;
  book.title = farm.title;
  book.calcProperties.fullCalcOnLoad = true;
  for (const tab of farm.tabs(day)) addTab(book, tab);
  return book;
}

function addTab(book: ExcelJS.Workbook, tab: SampleTab): void {
  const sheet = book.addWorksheet(tab.name);
  tab.rows.forEach((row, r) => {
    row.forEach((cell, c) => {
      if (cell !== '') setCell(sheet.getCell(r + 1, c + 1), cell);
    });
  });
  for (const column of sheet.columns) column.width = COLUMN_WIDTH;
  sheet.getRow(1).font = { bold: true };
}

function setCell(target: ExcelJS.Cell, cell: SampleCell): void {
  if (typeof cell !== 'object') {
    target.value = cell;
  } else if ('day' in cell) {
    target.value = new Date(`${isoFromDay(cell.day)}T00:00:00Z`);
    target.numFmt = 'yyyy-mm-dd';
  } else {
    // A file's formulas have no leading "=" and use commas.
    target.value = { formula: cell.f.slice(1).replace(/;/g, ','), date1904: false };
  }
}
