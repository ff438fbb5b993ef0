/** What the real services say, as far as known; the wording is from memory. */
import { type Area, a1Of } from './area';
import { WriteRefusal } from './modes';

export function wrongSignature(method: string, values: readonly unknown[]): Error {
  const types = values.map((value) =>
    Array.isArray(value) ? 'number[]' : value === null ? 'null' : typeof value,
  );
  return new Error(
    `The parameters (${types.join(',')}) don't match the method signature for SpreadsheetApp.${method}.`,
  );
}

export function wrongSize(what: 'rows' | 'columns', dataSize: number, rangeSize: number): Error {
  return new Error(
    `The number of ${what} in the data does not match the number of ${what} in the range. ` +
      `The data has ${dataSize} but the range has ${rangeSize}.`,
  );
}

export const closedToEditing = (): Error =>
  new WriteRefusal(
    'You are trying to edit a protected cell or object. ' +
      'Please contact the spreadsheet owner to remove protection if you need to edit.',
  );

/** The words stand in three public questions about tables with typed columns. */
export const typedColumn = (): Error =>
  new WriteRefusal("You can't set the number format of cells in a typed column.");

export const invalidData = (area: Area): Error =>
  new WriteRefusal(
    `The data you entered in cell ${a1Of(area)} violates the data validation rules set on this cell.`,
  );

/** After a public question: "not supported for OBJECT sheet". */
export const chartTab = (method: string): Error => new Error(`${method} is not supported for OBJECT sheet.`);

export const OUT_OF_BOUNDS = 'The coordinates of the range are outside the dimensions of the sheet.';
