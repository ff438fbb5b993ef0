/**
 * The one door for whoever uses the tool without a browser: tests and the bench. The built script runs over the
 * preview's engine and service stand-ins; tasks run as the sidebar runs them.
 *
 *   const farm = await openWorkbook({ tabs: { Paddocks: [['Name', 'Area'], ['North', 0.5]] }, codeJs });
 *   farm.type('Paddocks', 'C2', '=B2*2');
 *   farm.values('Paddocks'); // => [['Name', 'Area', ''], ['North', 0.5, 1]]
 *   await runTask(portOf(farm), MATERIALS_TASK, { 'Where paddocks touch': 'Nowhere: each stands alone' });
 */
import { readFile } from 'node:fs/promises';
import type { Port } from '../shared/tasks/run-task';
import { loadEngine } from './preview/engine/load-engine';
import type { WorkbookOptions } from './preview/headless/make-host';
import { Workbook } from './preview/headless/workbook';
import { loadExcelJs } from './preview/xlsx/load-exceljs';
import { readXlsx } from './preview/xlsx/read-xlsx';

export type { Envelope } from '../shared/contract';
export { type Outcome, type Port, runTask } from '../shared/tasks/run-task';
export type { WorkbookOptions } from './preview/headless/make-host';
export type { Shown } from './preview/headless/noting-ui';
export type { StartCell } from './preview/headless/start-cells';
export type { Workbook } from './preview/headless/workbook';

type FileOptions = Omit<WorkbookOptions, 'tabs' | 'merges' | 'names'>;

/**
 * Opens a workbook with the built script bound to it: with the tabs of `options`, out of the bytes of an .xlsx file as
 * the page's "Open .xlsx" does, or a sample farm by its name in sample-sheets/.
 */
export function openWorkbook(bytesOrSample: Uint8Array | string, options?: FileOptions): Promise<Workbook>;
export function openWorkbook(options?: WorkbookOptions): Promise<Workbook>;
export async function openWorkbook(
  source: WorkbookOptions | Uint8Array | string = {},
  options: FileOptions = {},
): Promise<Workbook> {
  if (typeof source === 'string')
    return openWorkbook(await readFile(`sample-sheets/${source}.xlsx`), options);
  if (!(source instanceof Uint8Array)) return Workbook.open(source);
  const [engine, { Workbook: File }] = await Promise.all([loadEngine(), loadExcelJs()]);
  const file = new File();
  await file.xlsx.load(source as unknown as ArrayBuffer);
  return Workbook.open(options, readXlsx(engine, file, options.locale));
}

/** The calls of the script, as the sidebar makes them, on a workbook. */
export function portOf(workbook: Workbook): Port {
  return async (name, request) => {
    const reply = workbook.ask(name, request);
    if (!reply.ok) throw new Error(reply.error);
    return reply.data as never;
  };
}
