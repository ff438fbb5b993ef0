/**
 * Writes the workbook as .xlsx, by ExcelJS, for Google Sheets and Excel: the engine's own export makes every formula
 * an array formula. Cells keep their last value beside the formula; what spilled is left out, so that a formula
 * finds room when the file is opened elsewhere.
 */

import type { CellErrorValue, CellValue, Style, Workbook, Worksheet } from 'exceljs';
import type { Book } from '../engine/book';
import type { EngineCell } from '../engine/engine';
import { sheetsErrorName } from '../engine/error-names';
import type { FileStyle } from '../engine/file-style';
import { toSheetsFormula } from '../engine/formula-text';
import { sheetsFormat } from '../engine/number-format';
import { DAY_MS, UNIX_EPOCH_SERIAL } from '../engine/zone-time';
import { a1Of, areaOf } from '../service/area';
import { widthOfPixels } from './column-width';
import { nameLocale } from './file-locale';
import { linkOf } from './links';
import { filePrefixed } from './newer-functions';
import { degreesOfRotation } from './rotation';
import { writeValidations } from './validation-rules';

const EXCEL_ERRORS: readonly string[] = ['#N/A', '#REF!', '#NAME?', '#DIV/0!', '#NULL!', '#VALUE!', '#NUM!'];

export function writeXlsx(book: Book, file: Workbook): void {
  const { getters } = book.model;
  // What cannot be calculated here can where the file is opened next.
  file.calcProperties.fullCalcOnLoad = true;
  nameLocale(file, book.locale.code);
  for (const sheetId of book.sheetIds()) {
    const { xSplit, ySplit } = getters.getPaneDivisions(sheetId);
    const sheet = file.addWorksheet(book.nameOf(sheetId), {
      state: getters.isSheetVisible(sheetId) ? 'visible' : 'hidden',
      views: xSplit || ySplit ? [{ state: 'frozen', xSplit, ySplit }] : [],
    });
    writeCells(book, sheetId, sheet);
    writeSizes(book, sheetId, sheet);
    for (const merge of getters.getMerges(sheetId)) {
      // Covered cells keep looks of their own, for when the cells are taken apart again.
      sheet.mergeCellsWithoutStyle(merge.top + 1, merge.left + 1, merge.bottom + 1, merge.right + 1);
    }
    writeRules(book, sheetId, sheet);
    writeValidations(book, sheetId, sheet);
  }
  for (const { name, range } of getters.getNamedRanges()) {
    if (range.invalidXc || !book.exists(range.sheetId)) continue;
    // The engine's own text of a range as wide as its tab is "1:40", which names in .xlsx files do not take.
    const place = a1Of(areaOf(range.sheetId, range.zone)).replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
    file.definedNames.add(`'${book.nameOf(range.sheetId)}'!${place}`, name);
  }
}

function writeCells(book: Book, sheetId: string, sheet: Worksheet): void {
  for (const stored of book.model.getters.getCells(sheetId)) {
    const { row, col } = book.model.getters.getCellPosition(stored.id);
    const cell = sheet.getCell(row + 1, col + 1);
    const evaluated = book.cell(sheetId, row, col);
    // A cell with a look of its own and nothing in it may show what spilled there from elsewhere.
    const isEmpty = !stored.isFormula && stored.content === '';
    const link = stored.isFormula ? undefined : linkOf(stored.content);
    cell.value = isEmpty ? null : link ? link : cellValue(book, book.formula(sheetId, row, col), evaluated);
    const style: FileStyle = book.style(sheetId, row, col);
    const isAsOpened = style.filePattern !== undefined && (stored.format ?? '') === style.shownAs;
    const pattern = isAsOpened ? style.filePattern : sheetsFormat(stored.format || evaluated.format || '');
    if (pattern) cell.numFmt = pattern;
    Object.assign(cell, styleOf(style));
  }
}

function cellValue(book: Book, formula: string, cell: EngineCell): CellValue {
  if (formula === '') return plainValue(book, cell);
  const result = plainValue(book, cell);
  const text = filePrefixed(book.engine, toSheetsFormula(formula, false).slice(1));
  return { formula: text, ...(result === null ? {} : { result }) } as CellValue;
}

function plainValue(book: Book, cell: EngineCell): string | number | boolean | Date | CellErrorValue | null {
  const { value, format } = cell;
  if (value === null || value === '') return null;
  if (cell.type === 'error') {
    const error = sheetsErrorName(cell.value);
    return EXCEL_ERRORS.includes(error) ? ({ error } as CellErrorValue) : error;
  }
  if (typeof value === 'number' && format && book.engine.helpers.isDateTimeFormat(format)) {
    return new Date(Math.round((value - UNIX_EPOCH_SERIAL) * DAY_MS));
  }
  return value;
}

function argb(color: string): { argb: string } {
  return { argb: `FF${color.replace('#', '').toUpperCase()}` };
}

function styleOf(style: FileStyle): Partial<Style> {
  const font = {
    ...(style.bold ? { bold: true } : {}),
    ...(style.italic ? { italic: true } : {}),
    ...(style.textColor ? { color: argb(style.textColor) } : {}),
  };
  const alignment = {
    ...(style.wrapping === 'wrap' ? { wrapText: true } : {}),
    ...(style.align ? { horizontal: style.align } : {}),
    ...(style.verticalAlign ? { vertical: style.verticalAlign } : {}),
    ...(style.rotation ? { textRotation: degreesOfRotation(style.rotation) } : {}),
    ...(style.indent ? { indent: style.indent } : {}),
  };
  return {
    ...(Object.keys(font).length > 0 ? { font } : {}),
    ...(Object.keys(alignment).length > 0 ? { alignment } : {}),
    ...(style.fillColor
      ? { fill: { type: 'pattern', pattern: 'solid', fgColor: argb(style.fillColor) } as const }
      : {}),
  };
}

function writeSizes(book: Book, sheetId: string, sheet: Worksheet): void {
  const { getters } = book.model;
  const used = book.usedSize(sheetId);
  const { columns } = book.size(sheetId);
  for (let column = 0; column < used.columns; column += 1) {
    sheet.getColumn(column + 1).width = widthOfPixels(getters.getColSize(sheetId, column));
  }
  for (let column = 0; column < columns; column += 1) {
    if (getters.isColHiddenByUser(sheetId, column)) sheet.getColumn(column + 1).hidden = true;
  }
  for (let row = 0; row < used.rows; row += 1) {
    if (getters.isRowHiddenByUser(sheetId, row)) sheet.getRow(row + 1).hidden = true;
  }
}

function writeRules(book: Book, sheetId: string, sheet: Worksheet): void {
  book.model.getters.getConditionalFormats(sheetId).forEach(({ rule, ranges }, index) => {
    if (rule.type !== 'CellIsRule' || rule.operator !== 'customFormula' || !rule.style.fillColor) return;
    const formula = toSheetsFormula(rule.values[0] ?? '', false).replace(/^=/, '');
    const fill = { type: 'pattern', pattern: 'solid', bgColor: argb(rule.style.fillColor) } as const;
    sheet.addConditionalFormatting({
      ref: ranges.join(' '),
      rules: [{ type: 'expression', formulae: [formula], priority: index + 1, style: { fill } }],
    });
  });
}
