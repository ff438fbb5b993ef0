import type { Selection } from '../../../shared/contract';
import { type SheetPort, Told } from '../port';
import * as words from '../words';

/** More cells than anybody selects on purpose for one argument. Judgement. */
const MOST_CELLS = 100_000;

/** The selected cells, cut to the used part of the tab so that a whole column costs little. */
export function readSelection(port: SheetPort): Selection {
  const active = port.active();
  if (!active) throw new Told(words.CLICK_A_CELL);
  const used = port.usedPart(active.tab);
  const rows = within(active.rows, used.rows - active.row + 1);
  const columns = within(active.columns, used.columns - active.column + 1);
  if (rows * columns > MOST_CELLS) {
    throw new Told(words.tooManyCells(active.a1, MOST_CELLS));
  }
  const { values } = port.read({ ...active, rows, columns });
  return { ...active, values };
}

function within(wanted: number, used: number): number {
  return Math.max(1, Math.min(wanted, used));
}
