/**
 * The one door through which every cell function is called.
 *
 * It tells blanks, text, errors and ranges apart, converts units, checks limits, repeats single values against
 * ranges, runs the core row by row, converts the answer back and refuses in words. A single call throws, so
 * that the cell shows the message; in a range the message stands in its own cell and the other rows answer.
 */
import type { AnyEntry, CellValue, Param } from '../catalogue/define';
import type { UnitSystem } from '../units/units';
import { columnAnswers } from './column-answers';
import type { Edge } from './edge';
import { presenterOf } from './present';
import { readArgument, readUnits } from './read-cell';
import { asRows, readCorners, readLists } from './read-list';
import { runWith } from './run-with';
import { sentenceFor } from './sentence';
import { type Cells, rangeShape } from './shape';

export type Answer = CellValue | CellValue[][];

/** An argument made ready: one value for all rows, or the cells of a range to be read row by row. */
interface Ready {
  readonly param: Param;
  readonly value: unknown;
  readonly cells: Cells | undefined;
}

/** Calls a catalogue entry with cell arguments. Throws an Error whose message is the sentence for the cell. */
export function call(entry: AnyEntry, args: readonly unknown[], edge: Edge): Answer {
  let system: UnitSystem = 'US';
  try {
    system = unitSystem(entry, args);
    const ready = makeReady(entry, args, system, edge);
    const shape = rangeShape(entry, ready);
    if (shape) return columnAnswers({ entry, ready, shape, system, edge });
    const outcome = runWith(
      entry.run,
      ready.map((arg) => arg.value),
    );
    return presenterOf(entry.result, system).whole(outcome);
  } catch (error) {
    throw new Error(sentenceFor(error, entry.name, system));
  }
}

function unitSystem(entry: AnyEntry, args: readonly unknown[]): UnitSystem {
  const at = entry.params.findIndex((param) => param.kind === 'units');
  return at < 0 ? 'US' : readUnits(unwrap(args[at]));
}

function makeReady(entry: AnyEntry, args: readonly unknown[], system: UnitSystem, edge: Edge): Ready[] {
  const lists = readLists(entry.params, args, system);
  return entry.params.map((param, i) => {
    const single = (value: unknown): Ready => ({ param, value, cells: undefined });
    if (param.kind === 'units') return single(system);
    if (param.kind === 'list') return single(lists.get(i));
    if (param.kind === 'corners') return single(readCorners(param.name, args[i]));
    const arg = unwrap(args[i]);
    if (!Array.isArray(arg)) return single(readArgument(param, arg, system, edge));
    // Rows of cells, or a plain list, which counts as one column. Anything uneven is refused with the shape.
    const cells = Array.isArray(arg[0]) ? (arg as Cells) : asRows(arg);
    return { param, value: undefined, cells };
  });
}

/** A range of one cell counts as that cell, an empty one as blank. */
function unwrap(arg: unknown): unknown {
  if (!Array.isArray(arg)) return arg;
  if (arg.length === 0) return undefined;
  if (arg.length !== 1) return arg;
  const row: unknown = arg[0];
  if (!Array.isArray(row)) return row;
  return row.length > 1 ? arg : row[0];
}
