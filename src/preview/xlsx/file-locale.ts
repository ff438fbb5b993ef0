/** The spreadsheet locale, such as "de_DE", as the language that a file names. */
import type { Workbook } from 'exceljs';

/** ExcelJS reads and writes it, and its types leave it out. */
type Named = Workbook & { language?: string };

/** Undefined where the file names none. */
export function fileLocale({ language = '' }: Named): string | undefined {
  return /^[a-z]{2,3}[-_][A-Z]{2}$/.test(language) ? language.replace('-', '_') : undefined;
}

export function nameLocale(file: Named, locale: string): void {
  file.language = locale.replace('_', '-');
}
