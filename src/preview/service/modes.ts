/**
 * How nasty the stand-in is. Each mode is something that Google Sheets does, or may do; what is usual is as nasty as we
 * take Google for, and tests turn the modes one by one. What we take for true about Google stands in
 * src/script/assumptions.ts.
 */
import type { HostState } from './host-state';

export type Modes = {
  /**
   * Writes are queued: a refused one throws at the next call that waits for an answer, and what was queued behind it
   * is dropped. "lost": it never throws at all.
   */
  lateRefusals: 'no' | 'told' | 'lost';
  /** How many reads after a write still show "Loading..." where a cell function was written. */
  loadingReads: number;
  /** For how many seconds of sleep the reads count no less. */
  loadingSeconds: number;
  /** `=A1` of a blank cell is blank itself, not 0. */
  blankStaysBlank: boolean;
  /** SUMPRODUCT of a range with an error in it is that error, as in Sheets; the engine leaves the row out. */
  sumproductPassesErrors: boolean;
  /** A cell function that refers to a cell with NOW or RAND is not called and shows #ERROR!. */
  changingCellsRefused: boolean;
  /** A cell function that is given a cell with an error is not called and shows that error. */
  errorCellsRefused: boolean;
  /** A date reaches a cell function as midnight in the script's time zone, not in the spreadsheet's. */
  datesInScriptZone: boolean;
  /** `&` joins a day as it is shown, not as its number. */
  daysJoinAsShown: boolean;
  /** Functions that getFormulas gives other names than English ones. */
  namesReadBack: Readonly<Record<string, string>>;
  /** A formula that a script writes has the decimal sign of the file's country. */
  decimalsByCountry: boolean;
  /** What is read back as the number format of a cell that has none. */
  automaticFormat: string;
  /** clearFormat and clear leave number formats. */
  clearFormatKeepsNumberFormats: boolean;
  /** Chart tabs: "untold" ones say of themselves that they are grids. */
  chartTabsTell: boolean;
};

export const USUAL_MODES: Modes = {
  lateRefusals: 'told',
  loadingReads: 2,
  loadingSeconds: 0,
  blankStaysBlank: true,
  sumproductPassesErrors: true,
  changingCellsRefused: true,
  errorCellsRefused: false,
  datesInScriptZone: false,
  daysJoinAsShown: false,
  namesReadBack: {},
  decimalsByCountry: true,
  automaticFormat: '0.###############',
  clearFormatKeepsNumberFormats: true,
  chartTabsTell: true,
};

/** A refusal that a queued write may bring late. */
export class WriteRefusal extends Error {}

const LOADING = 'Loading...';

/** Cells with a cell function that were written a moment ago. */
export class LoadingCells {
  #reads = 0;
  #slept = 0;
  readonly #cells = new Set<string>();

  constructor(private readonly state: HostState) {}

  written(sheetId: string, cells: readonly { row: number; col: number; content: string }[]): void {
    const { hasCellFunction, modes } = this.state;
    const found = cells.filter(({ content }) =>
      [...content.matchAll(/([A-Z][A-Z0-9_.]*)\(/gi)].some(([, name = '']) =>
        hasCellFunction(name.toUpperCase()),
      ),
    );
    if (modes.loadingReads === 0 || found.length === 0) return;
    this.#reads = modes.loadingReads;
    this.#slept = 0;
    for (const { row, col } of found) this.#cells.add(`${sheetId} ${row} ${col}`);
  }

  /** Begins one reading: gives what stands in a cell in place of its value, or undefined. */
  reading(): (sheetId: string, row: number, col: number) => string | undefined {
    if (this.#reads <= 0) return () => undefined;
    this.#reads -= 1;
    const { book } = this.state;
    const { getters } = book.model;
    return (sheetId, row, col) => {
      const from = getters.getArrayFormulaSpreadingOn({ sheetId, row, col }) ?? { sheetId, row, col };
      const isLoading = this.#cells.has(`${from.sheetId} ${from.row} ${from.col}`);
      return isLoading && book.formula(from.sheetId, from.row, from.col) !== '' ? LOADING : undefined;
    };
  }

  /** Time passes. */
  settle(milliseconds = Number.POSITIVE_INFINITY): void {
    this.#slept += milliseconds;
    if (this.#slept < this.state.modes.loadingSeconds * 1000) return;
    if (Number.isFinite(this.#reads)) this.#reads = 0;
    if (this.#reads === 0) this.#cells.clear();
  }
}
