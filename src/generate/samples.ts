/** Writes sample-sheets/*.xlsx from the sample farms, for people who import a file instead of using the menu. */
import ExcelJS from 'exceljs';
import { SAMPLE_FARMS } from '../../shared/samples/index';
import type { SampleCell, SampleFarm, SampleTab } from '../../shared/samples/sample-farm';

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
  for (const tab of farm.tabs) addTab(book, tab);
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
  } else if ('d' in cell) {
    target.value = new Date(`${cell.d}T00:00:00Z`);
    target.numFmt = 'yyyy-mm-dd';
  } else {
    // A file's formulas have no leading "=" and use commas.
    target.value = { formula: cell.f.slice(1).replace(/;/g, ','), date1904: false };
  }
}
