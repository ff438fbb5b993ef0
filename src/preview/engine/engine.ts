/**
 * The embedded spreadsheet engine as the rest of the preview sees it.
 *
 * Everything that knows o-spreadsheet lives in src/preview/engine, so that another engine could take its place.
 * The library is handed in rather than imported: the browser page has it as a global, Node loads the module file.
 */
import type * as OSpreadsheet from '@odoo/o-spreadsheet';

export type Engine = typeof OSpreadsheet;
export type EngineModel = OSpreadsheet.Model;
export type EngineCommand = OSpreadsheet.Command;
export type EngineLocale = OSpreadsheet.Locale;
export type EngineZone = OSpreadsheet.Zone;
export type EngineStyle = OSpreadsheet.Style;
export type EngineCell = OSpreadsheet.EvaluatedCell;
export type EngineResult = { value: string | number | boolean | null; format?: string; message?: string };
