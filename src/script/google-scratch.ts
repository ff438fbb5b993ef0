/** The tab that the self-check tries things on; with google.ts the only files that touch Apps Script's services. */
import type { ScratchTab } from './port';

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

const NAME = 'Sounder check';
const SCRATCH_NAME = 'SOUNDER_CHECK';
/** As many columns as there are months. */
const SIZE = 12;

/** Adds the tab, works on it, takes it away, and shows the tab that was on show before. */
export function onScratchTab<T>(
  file: Spreadsheet,
  read: (range: GoogleAppsScript.Spreadsheet.Range) => unknown[][],
  work: (tab: ScratchTab) => T,
): T {
  const left = file.getSheetByName(NAME);
  if (left) file.deleteSheet(left);
  const before = file.getActiveSheet();
  const sheet = file.insertSheet(NAME);
  try {
    return work(scratchTab(file, sheet, read));
  } finally {
    file.deleteSheet(sheet);
    file.setActiveSheet(before);
  }
}

function scratchTab(
  file: Spreadsheet,
  sheet: Sheet,
  read: (range: GoogleAppsScript.Spreadsheet.Range) => unknown[][],
): ScratchTab {
  const first = sheet.getRange(1, 1);
  const area = (rows: number, columns: number) => sheet.getRange(1, 1, rows, columns);
  return {
    empty: () => {
      // clear leaves number formats.
      area(SIZE, SIZE).clear().setNumberFormat('General');
    },
    write: (values, format) => {
      const range = area(values.length, values[0]?.length ?? 1);
      if (format !== undefined) range.setNumberFormat(format);
      range.setValues(values.map((row) => [...row]));
    },
    read: (rows = 1, columns = 1) => read(area(rows, columns))[0] ?? [],
    formula: () => first.getFormula(),
    format: (row = 1) => sheet.getRange(row, 1).getNumberFormat(),
    clearFormat: () => {
      first.clearFormat();
    },
    locale: () => file.getSpreadsheetLocale(),
    sleep: (milliseconds) => Utilities.sleep(milliseconds),
    merge: (rows, columns) => {
      area(rows, columns).merge();
    },
    ruleAsReadBack: (formula) => {
      const rule = SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied(formula);
      sheet.setConditionalFormatRules([rule.setBackground('#fff8e1').setRanges([first]).build()]);
      return String(
        sheet.getConditionalFormatRules()[0]?.getBooleanCondition()?.getCriteriaValues()[0] ?? '',
      );
    },
    nameTwice: () => {
      for (const row of [1, 2]) file.setNamedRange(SCRATCH_NAME, sheet.getRange(row, 1));
      const found = file.getNamedRanges().filter((named) => named.getName() === SCRATCH_NAME);
      const places = found.map((named) => named.getRange().getA1Notation()).join(' and ');
      file.removeNamedRange(SCRATCH_NAME);
      return `${found.length} name at ${places}`;
    },
    refusedWrite: () => {
      const rule = SpreadsheetApp.newDataValidation()
        .requireNumberBetween(1, 2)
        .setAllowInvalid(false)
        .build();
      first.setDataValidation(rule);
      try {
        return whenRefused(() => first.setValues([[SIZE]]));
      } finally {
        first.clearDataValidations();
      }
    },
    tabTypes: () => {
      const sheets = file.getSheets();
      const grids = sheets.filter((one) => one.getType() === SpreadsheetApp.SheetType.GRID);
      for (const grid of grids) grid.getDataRange().getNumRows();
      return `${grids.length} with cells, ${sheets.length - grids.length} without`;
    },
    frozenAndHidden: () => {
      sheet.hideColumns(SIZE);
      sheet.setFrozenRows(1);
      sheet.setFrozenColumns(1);
      const hidden = sheet.isColumnHiddenByUser(SIZE) ? 'hidden' : 'shown';
      const frozen = `${sheet.getFrozenRows()} and ${sheet.getFrozenColumns()} frozen`;
      // Cells on both sides of that edge could not be merged.
      sheet.setFrozenColumns(0);
      return `${hidden}, ${frozen}`;
    },
    hasId: () => (file.getId() === '' ? 'missing' : 'given'),
  };
}

function whenRefused(write: () => void): string {
  try {
    write();
  } catch {
    return 'refused at once';
  }
  try {
    SpreadsheetApp.flush();
  } catch {
    return 'refused on waiting';
  }
  return 'not refused';
}
