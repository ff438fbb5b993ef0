/** The engine's names for errors, and the names Google Sheets shows for the same. */
const SHEETS_NAMES: Readonly<Record<string, string>> = {
  '#BAD_EXPR': '#ERROR!',
  '#CYCLE': '#REF!',
  '#SPILL!': '#REF!',
  '#REF': '#REF!',
  '#ERROR': '#VALUE!',
};

/** What a cell function or a service of the script failing shows in the cell. */
export const SCRIPT_ERROR = '#ERROR!';

/** Further names that Sheets has and the engine must treat as errors. */
export const EXTRA_ERROR_NAMES = [SCRIPT_ERROR, '#REF!', '#VALUE!'] as const;

export function sheetsErrorName(engineName: string): string {
  return SHEETS_NAMES[engineName] ?? engineName;
}
