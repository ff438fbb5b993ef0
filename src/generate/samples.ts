/** Writes sample-sheets/*.xlsx from the sample farms, for people who import a file instead of using the menu. */
import ExcelJS from 'exceljs';
import { isoFromDay } from '../../shared/core/calendar/day';
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

for (const farm of SAMPLE_FARMS) {
  await sampleWorkbook(farm).xlsx.writeFile(`sample-sheets/${farm.id}.xlsx`);
}

function sampleWorkbook(farm: SampleFarm): ExcelJS.Workbook {
  const book = new ExcelJS.Workbook();
  book.created = WRITTEN;
  book.modified = WRITTEN;
  book.title = farm.title;
  book.calcProperties.fullCalcOnLoad = true;
  for (const tab of farm.tabs(DAY_OF_FILES)) addTab(book, tab);
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
