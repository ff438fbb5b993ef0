/** What the page's other scripts leave in the global scope: the engine, its view library, the file library. */
import type * as Owl from '@odoo/owl';
import type ExcelJS from 'exceljs';
import type { Engine } from '../engine/engine';

type PageGlobals = { o_spreadsheet: Engine; owl: typeof Owl; ExcelJS: typeof ExcelJS };

export const { o_spreadsheet: engine, owl, ExcelJS: excelJs } = globalThis as unknown as PageGlobals;

/** The element of index.html with that id. */
export function element<Kind extends HTMLElement = HTMLElement>(id: string): Kind {
  const found = document.getElementById(id);
  if (!found) throw new Error(`index.html has no element "${id}"`);
  return found as Kind;
}
