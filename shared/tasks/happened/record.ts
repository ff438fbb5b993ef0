import type { CellChange } from '../../contract';
import { type Port, readBook } from '../run-task';
import { farmNow } from './farm-now';
import type { Happened } from './happened';
import { typedFor } from './typed-for';
import * as words from './words';

/**
 * Types what has happened into the sheet, out of what stands there now. `seen`: the cells as they were shown; where they
 * would be others by now, nothing is written. Gives what takes it back.
 */
export async function record(
  port: Port,
  happened: Happened,
  seen?: readonly CellChange[],
): Promise<readonly CellChange[]> {
  const farm = farmNow(await readBook(port));
  if ('missing' in farm) throw nothingWritten(farm.missing.join(' '));
  const read = typedFor(farm, happened);
  if ('problem' in read) throw nothingWritten(read.problem);
  const cells = read.typed.map(({ cell }) => cell);
  if (seen && JSON.stringify(seen) !== JSON.stringify(cells)) throw new Error(words.CHANGED_SINCE);
  await port('changeCells', { cells });
  return cells;
}

function nothingWritten(why: string): Error {
  return new Error(`${why.replace(/[^.!?]$/, '$&.')} Nothing was written.`);
}

/** The same cells as they were before. Refused by the script where one has been changed since. */
export async function takeBack(port: Port, cells: readonly CellChange[]): Promise<void> {
  await port('changeCells', {
    cells: cells.map((cell) => ({ ...cell, before: cell.after, after: cell.before })),
  });
}
