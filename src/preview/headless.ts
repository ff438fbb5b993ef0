/**
 * The preview without a browser: the built script over the engine and the service stand-ins, for tests in Node.
 *
 *   const farm = await openWorkbook({ tabs: { Paddocks: [['Name', 'Area'], ['North', 0.5]] }, codeJs });
 *   farm.type('Paddocks', 'C2', '=B2*2');
 *   farm.values('Paddocks'); // => [['Name', 'Area', ''], ['North', 0.5, 1]]
 */
import { loadEngine } from './engine/load-engine';
import type { WorkbookOptions } from './headless/make-host';
import { Workbook } from './headless/workbook';
import { loadExcelJs } from './xlsx/load-exceljs';
import { readXlsx } from './xlsx/read-xlsx';

export type { Envelope } from '../../shared/contract';
export type { WorkbookOptions } from './headless/make-host';
export type { Shown } from './headless/noting-ui';
export type { StartCell } from './headless/start-cells';
export type { Workbook } from './headless/workbook';

/** Opens a workbook with the built script bound to it. */
export function openWorkbook(options: WorkbookOptions = {}): Promise<Workbook> {
  return Workbook.open(options);
}

/** Opens an .xlsx file as the page's "Open .xlsx" does. */
export async function openXlsx(
  bytes: Uint8Array,
  options: Omit<WorkbookOptions, 'tabs' | 'merges' | 'names'> = {},
): Promise<Workbook> {
  const [engine, { Workbook: File }] = await Promise.all([loadEngine(), loadExcelJs()]);
  const file = new File();
  await file.xlsx.load(bytes as unknown as ArrayBuffer);
  return Workbook.open(options, readXlsx(engine, file, options.locale));
}
