import type ExcelJS from 'exceljs';

/** Loaded only when a file is read or written: most tests need neither. */
export async function loadExcelJs(): Promise<typeof ExcelJS> {
  return (await import('exceljs')).default;
}
