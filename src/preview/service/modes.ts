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
  /** `=A1` of a blank cell is blank itself, not 0. */
  blankStaysBlank: boolean;
  /** SUMPRODUCT of a range with an error in it is that error, as in Sheets; the engine leaves the row out. */
  sumproductPassesErrors: boolean;
  /** What is read back as the number format of a cell that has none. */
  automaticFormat: string;
  /** Chart tabs: "untold" ones say of themselves that they are grids. */
  chartTabsTell: boolean;
};

export const USUAL_MODES: Modes = {
  lateRefusals: 'told',
  loadingReads: 2,
  blankStaysBlank: true,
  sumproductPassesErrors: true,
  automaticFormat: '0.###############',
  chartTabsTell: true,
};

/** A refusal that a queued write may bring late. */
export class WriteRefusal extends Error {}

const LOADING = 'Loading...';

/** Cells with a cell function that were written a moment ago. */
export class LoadingCells {
  #reads = 0;
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
  settle(): void {
    if (Number.isFinite(this.#reads)) this.#reads = 0;
    if (this.#reads === 0) this.#cells.clear();
  }
}
